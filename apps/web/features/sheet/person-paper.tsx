import { type EpochSeconds, formatClock, formatDay } from '@halfshaft/itinerary';
import type { CSSProperties } from 'react';
import { visitTimes } from '../control/visit-times';
import type { Visit } from '../service/visit';
import { visitTitle } from '../service/visit-facts';
import { carNameOf, nameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import { PaperColumn } from './paper-column';
import { PaperFoot } from './paper-foot';
import { PaperGate } from './paper-gate';
import { paperLayout } from './paper-layout';
import { PaperRow } from './paper-row';
import { PaperTimes } from './paper-times';
import { planInWords } from './plan-in-words';
import styles from './sheet.module.css';
import { rowsWithSameLooks } from './sheet-rows';
import type { PlannedSheet } from './use-sheet';

export interface PersonPaperProps {
  work: LoadedWork;
  visit: Visit;
  planned: PlannedSheet;
}

/** The sheet as it comes out of the printer: black on white, one A4 page for an ordinary service. */
export function PersonPaper({ work, visit, planned: { proposal, sheet } }: PersonPaperProps) {
  const { replica, state } = work;
  const times = visitTimes(replica, state, visit);
  const { timeZone } = replica.itinerary;
  const title = visitTitle(replica, visit);
  const { shares, snags, left, canWait } = sheet;
  const clock = (at: EpochSeconds) => formatClock(at, timeZone);
  const looksAsIn = rowsWithSameLooks(shares);
  const { columns, isDense } = paperLayout(shares, looksAsIn);
  const waiting = canWait.filter((row) => row.fallsDue);
  return (
    <article
      className={styles.paper}
      aria-label={`The printed sheet: ${title}`}
      data-own-paper
      data-dense={isDense || undefined}
    >
      <header className={styles.head}>
        <div>
          <h2 className={styles.title}>{title}</h2>
          <p>
            {carNameOf(replica, visit.entry.entryId)}, {visit.entry.car.name} · {replica.name} ·{' '}
            {formatDay(times.inAt, timeZone)}
          </p>
        </div>
        <PaperTimes visit={visit} times={times} timeZone={timeZone} />
      </header>
      <PaperGate />
      <p>
        {proposal.kind === 'plan'
          ? `${planInWords(proposal, times.dueOut, clock)} Where no other time is given, the start must not slip.`
          : 'Shared out by minutes only: settle among yourselves who waits for whom.'}
      </p>
      <div className={styles.people} style={{ '--columns': columns } as CSSProperties}>
        {shares.map((share) => (
          <PaperColumn
            key={share.personId}
            share={share}
            shares={shares}
            looksAsIn={looksAsIn}
            clockAt={(seconds) => clock(times.inAt + seconds)}
            nameOf={(personId) => nameOf(replica, personId)}
          />
        ))}
      </div>
      {left.length > 0 ? (
        <p>
          <strong>Left: </strong>
          {left.map(({ row, because }) => `${row.number} ${row.title}: ${because}`).join(' ')}
        </p>
      ) : null}
      {snags.length > 0 ? (
        <section>
          <h3 className={styles.when}>Snags: settle who</h3>
          {snags.map((row) => (
            <PaperRow key={row.task.id} row={row} partners={[]} isFirst doneBy={null} />
          ))}
        </section>
      ) : null}
      {waiting.length > 0 ? (
        <p>
          <strong>Can wait: </strong>
          {waiting.map((row) => `${row.number} ${row.title}`).join(' · ')}
        </p>
      ) : null}
      <PaperFoot />
    </article>
  );
}
