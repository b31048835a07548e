import type { PersonId } from '@halfshaft/worklog';
import { minutesOfWork } from '../visit/time-in-words';
import { PaperRow } from './paper-row';
import { PaperStep } from './paper-step';
import styles from './sheet.module.css';
import { type CarStep, type PersonShare, partnersAt, type SheetRow } from './sheet-rows';

interface PaperColumnProps {
  share: PersonShare;
  shares: readonly PersonShare[];
  /** By row: the number of the row above whose looks are the same. */
  looksAsIn: ReadonlyMap<SheetRow, string>;
  /** So many seconds after the in-time. */
  clockAt: (seconds: number) => string;
  nameOf: (personId: PersonId) => string;
}

/** What one person does: in the order of the plan, without one do now first. */
export function PaperColumn({ share, shares, looksAsIn, clockAt, nameOf }: PaperColumnProps) {
  const order = shares.map(({ personId }) => personId);
  const isFirst = (row: SheetRow) =>
    partnersAt(row, share.personId, shares).every(
      (partner) => order.indexOf(partner) > order.indexOf(share.personId),
    );
  const groups = groupsOf(share);
  return (
    <section className={styles.column} aria-label={nameOf(share.personId)}>
      <h3 className={styles.name}>
        {nameOf(share.personId)} <span className={styles.light}>{minutesOfWork(share.seconds)} min</span>
      </h3>
      {groups.length === 0 ? <p>Nothing left for this person: pass tools, watch the clock.</p> : null}
      {groups.map(({ title, lines }) => (
        <div key={title}>
          <h4 className={styles.when}>{title}</h4>
          {lines.map((line) =>
            'task' in line ? (
              <PaperRow
                key={line.task.id}
                row={line}
                partners={partnersAt(line, share.personId, shares).map(nameOf)}
                isFirst={isFirst(line)}
                looksAsIn={looksAsIn.get(line) ?? null}
                doneBy={line.task.state === 'done' && line.task.doneBy ? nameOf(line.task.doneBy) : null}
                clockAt={clockAt}
                nameOf={nameOf}
              />
            ) : (
              <PaperStep
                key={line.words}
                step={line}
                own={share.personId}
                clockAt={clockAt}
                nameOf={nameOf}
              />
            ),
          )}
        </div>
      ))}
    </section>
  );
}

type Line = SheetRow | CarStep;

function groupsOf({ work, steps }: PersonShare): { title: string; lines: Line[] }[] {
  const startOf = ({ planned }: Line) => planned?.start ?? 0;
  const isPlanned = work.some(({ planned }) => planned) || steps.length > 0;
  const groups = isPlanned
    ? [
        {
          title: 'In this order',
          lines: [...work, ...steps].sort((one, other) => startOf(one) - startOf(other)),
        },
      ]
    : [
        { title: 'Do now', lines: work.filter((row) => row.mustDo) },
        { title: 'If time', lines: work.filter((row) => !row.mustDo) },
      ];
  return groups.filter(({ lines }) => lines.length > 0);
}
