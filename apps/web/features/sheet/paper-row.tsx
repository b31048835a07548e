import type { JobCard, ReadingSpec } from '@halfshaft/lifing';
import type { PersonId } from '@halfshaft/worklog';
import { slotKey } from '../bay/read-typed';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';
import { minutesOfWork } from '../visit/time-in-words';
import styles from './sheet.module.css';
import type { SheetRow } from './sheet-rows';
import { startByInWords } from './start-by-in-words';

interface PaperRowProps {
  row: SheetRow;
  /** Names of who else is at it. */
  partners: readonly string[];
  /** Work for several stands in full with the first of them, so that a reading is written down once. */
  isFirst: boolean;
  /** The number of a row above with the same looks: they stand there. */
  looksAsIn?: string | null;
  /** Closed before the sheet was printed: by whom. */
  doneBy: string | null;
  /** So many seconds after the in-time. */
  clockAt?: (seconds: number) => string;
  nameOf?: (personId: PersonId) => string;
}

/** One row: its number, a box to tick, where to initial, and what to write down. */
export function PaperRow(props: PaperRowProps) {
  const { row, isFirst, looksAsIn = null, doneBy, clockAt = String } = props;
  const { card, planned } = row;
  return (
    <div className={styles.row}>
      <div className={styles.rowHead}>
        <span className={styles.number}>{row.number}</span>
        <span className={styles.box} aria-hidden="true" />
        <span>
          {planned ? <span className={styles.at}>{clockAt(planned.start)} </span> : null}
          <strong>{row.title}</strong> <span className={styles.light}>{factsOf(props)}</span>
        </span>
        {doneBy === null ? <span className={styles.line}>initials</span> : <span>done by {doneBy}</span>}
      </div>
      {isFirst && card ? (
        <div className={styles.details}>
          {card.looks.length > 0 ? (
            <p>{looksAsIn === null ? looksOf(card) : `the same looks as in row ${looksAsIn}`}</p>
          ) : null}
          {card.readings.length > 0 ? (
            <div className={styles.readings}>
              {card.readings.map((reading) => (
                <PaperReading key={reading.id} reading={reading} lastRead={row.lastRead} />
              ))}
            </div>
          ) : null}
          {card.caution ? (
            <p>
              <strong>Take care: </strong>
              {card.caution}
            </p>
          ) : null}
          {card.needsSignature ? <p className={styles.line}>second signature, by another person</p> : null}
        </div>
      ) : null}
    </div>
  );
}

function looksOf({ looks }: JobCard): string {
  return looks.map((look) => look.words).join(' · ');
}

function factsOf({ row, partners, clockAt = String, nameOf = String }: PaperRowProps): string {
  const { card, seconds, reason, planned, mustDo } = row;
  const minutes = seconds > 0 ? `${minutesOfWork(seconds)} min` : '';
  const place = card ? CAR_PLACE_NAMES[card.place] : '';
  const helped = partners.length > 0 ? `with ${partners.join(' and ')}` : '';
  const short = card !== null && card.people > partners.length + 1 ? `needs ${card.people} people` : '';
  const over =
    planned && planned.takesOverFrom.length > 0 ? planned.takesOverFrom.map(nameOf).join(' and ') : '';
  const takesOver = over === '' ? '' : `takes over from ${over}`;
  const startBy = planned ? startByInWords(planned, clockAt, mustDo ? '' : 'or leave it') : '';
  return [minutes, place, helped, short, takesOver, startBy, reason].filter(Boolean).join(' · ');
}

function PaperReading({ reading, lastRead }: { reading: ReadingSpec } & Pick<SheetRow, 'lastRead'>) {
  const positions = reading.positions.length > 0 ? reading.positions : [''];
  const before = (position: string) => lastRead.get(slotKey(reading.id, position || null))?.short;
  return (
    <p className={styles.reading}>
      {[reading.name, reading.unit].filter(Boolean).join(', ')}
      {positions.map((position) => (
        <span key={position} className={styles.value}>
          {position}
          <span className={styles.blank} />
          {before(position) ? <span className={styles.light}>{before(position)}</span> : null}
        </span>
      ))}
    </p>
  );
}
