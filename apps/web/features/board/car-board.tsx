import type { EntryReplica } from '@halfshaft/contract';
import { type EpochSeconds, formatClock } from '@halfshaft/itinerary';
import { useMemo } from 'react';
import { visitTimes } from '../control/visit-times';
import { judgeVisit } from '../service/judge-visit';
import { snagsOfCar } from '../service/snags-of-car';
import { findVisit, serviceNow, type Visit } from '../service/visit';
import { VisitClock } from '../service/visit-clock';
import { visitTitle } from '../service/visit-facts';
import { callOffSteps } from '../sheet/call-off';
import { OutNotice } from '../stopped/out-notice';
import { carNameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import styles from './board.module.css';
import { boardOf } from './board-lines';
import { BoardRow } from './board-row';

/** Nobody scrolls a wall: two cars with so many lines fit 1080 pixels, and the most urgent ones stand first. */
const MOST_LINES = 12;

interface CarBoardProps {
  work: LoadedWork;
  entry: EntryReplica;
  now: EpochSeconds;
}

/** One car: where it is, how long it has, what is to be done on it and by whom. */
export function CarBoard({ work, entry, now }: CarBoardProps) {
  const { replica, state } = work;
  const name = carNameOf(replica, entry.entryId);
  const service = serviceNow(replica, state, entry, now);
  const visit = findVisit(replica, entry.entryId, service?.id ?? null);
  return (
    <section className={styles.car} aria-label={name}>
      <h2 className={styles.name}>
        {name}
        {visit ? ` · ${visitTitle(replica, visit)}` : ''}
      </h2>
      {visit ? <AtService work={work} visit={visit} now={now} /> : <p>The itinerary has no service.</p>}
    </section>
  );
}

function AtService({ work, visit, now }: { work: LoadedWork; visit: Visit; now: EpochSeconds }) {
  const { replica, state } = work;
  const { entry, service } = visit;
  const clock = (at: EpochSeconds) => formatClock(at, replica.itinerary.timeZone);
  const times = visitTimes(replica, state, visit);
  const steps = callOffSteps(times.inAt, times.dueOut);
  const cards = useMemo(() => judgeVisit(replica, state, visit), [replica, state, visit]);
  const closes = { wheelsOnAt: steps[0]?.at ?? times.dueOut, outAt: times.dueOut };
  const snags = snagsOfCar(state, entry.entryId, service.id);
  const { lines, doneCount, ifTimeCount } = boardOf({ cards, snags, closes, now });
  return (
    <>
      <div className={styles.countdown}>
        <VisitClock work={work} visit={visit} />
        <ol className={styles.steps}>
          <li>{`${times.recordedIn ? 'In' : 'Due in'} ${clock(times.inAt)}`}</li>
          {steps.map(({ words, at }) => (
            <li key={words} className={now >= at ? styles.begun : undefined}>
              {words} {clock(at)}
            </li>
          ))}
          <li>{`${times.recordedOut ? 'Left' : 'Out'} ${clock(times.outAt)}`}</li>
        </ol>
      </div>
      <OutNotice replica={replica} state={state} visit={visit} />
      {lines.length === 0 ? <p className={styles.row}>Nothing is open here.</p> : null}
      <ul className={styles.rows}>
        {lines.slice(0, MOST_LINES).map((line) => (
          <BoardRow key={line.task.id} line={line} work={work} clock={clock} />
        ))}
      </ul>
      <p className={styles.counts}>
        {[
          ...(lines.length > MOST_LINES ? [`${lines.length - MOST_LINES} more open`] : []),
          `${doneCount} done`,
          `${ifTimeCount} if time`,
        ].join(' · ')}
      </p>
    </>
  );
}
