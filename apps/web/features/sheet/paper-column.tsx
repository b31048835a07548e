import type { PersonId } from '@halfshaft/worklog';
import { minutesOfWork } from '../visit/time-in-words';
import { PaperRow } from './paper-row';
import styles from './sheet.module.css';
import { type PersonShare, partnersAt, type SheetRow } from './sheet-rows';

interface PaperColumnProps {
  share: PersonShare;
  shares: readonly PersonShare[];
  /** By row: the number of the row above whose looks are the same. */
  looksAsIn: ReadonlyMap<SheetRow, string>;
  nameOf: (personId: PersonId) => string;
}

/** What one person does, do now first. */
export function PaperColumn({ share, shares, looksAsIn, nameOf }: PaperColumnProps) {
  const groups = [
    { title: 'Do now', rows: share.work.filter((row) => row.mustDo) },
    { title: 'If time', rows: share.work.filter((row) => !row.mustDo) },
  ].filter(({ rows }) => rows.length > 0);
  const order = shares.map(({ personId }) => personId);
  const isFirst = (row: SheetRow) =>
    partnersAt(row, share.personId, shares).every(
      (partner) => order.indexOf(partner) > order.indexOf(share.personId),
    );
  return (
    <section className={styles.column} aria-label={nameOf(share.personId)}>
      <h3 className={styles.name}>
        {nameOf(share.personId)} <span className={styles.light}>{minutesOfWork(share.seconds)} min</span>
      </h3>
      {groups.length === 0 ? <p>Nothing left for this person: pass tools, watch the clock.</p> : null}
      {groups.map(({ title, rows }) => (
        <div key={title}>
          <h4 className={styles.when}>{title}</h4>
          {rows.map((row) => (
            <PaperRow
              key={row.task.id}
              row={row}
              partners={partnersAt(row, share.personId, shares).map(nameOf)}
              isFirst={isFirst(row)}
              looksAsIn={looksAsIn.get(row) ?? null}
              doneBy={row.task.state === 'done' && row.task.doneBy ? nameOf(row.task.doneBy) : null}
            />
          ))}
        </div>
      ))}
    </section>
  );
}
