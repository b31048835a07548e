import type { ReadingSpec } from '@halfshaft/lifing';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';
import styles from './service-paper.module.css';
import type { SheetTask } from './sheet';
import { minutesOfWork } from './time-in-words';

interface PaperTaskProps {
  task: SheetTask;
  /** Who else is at it. */
  partners: readonly number[];
}

/** One round or job with its boxes and lines. */
export function PaperTask({ task, partners }: PaperTaskProps) {
  const { card, reason } = task;
  return (
    <div className={styles.task}>
      <h6 className={styles.taskName}>
        <span className={styles.box} aria-hidden="true" />
        <span>
          {card.kind === 'round' ? `Round: ${card.name}` : card.name}
          <span className={styles.facts}>
            {' '}
            {[
              `${minutesOfWork(card.seconds)} min`,
              CAR_PLACE_NAMES[card.place],
              reason,
              partnersInWords(partners, task.people),
            ]
              .filter(Boolean)
              .join(' · ')}
          </span>
        </span>
      </h6>
      {card.instruction ? <p>{card.instruction}</p> : null}
      {card.looks.length > 0 ? (
        <ul className={styles.looks}>
          {card.looks.map((look) => (
            <li key={look.id} className={styles.check}>
              <span className={styles.box} aria-hidden="true" />
              {look.words}
            </li>
          ))}
        </ul>
      ) : null}
      {card.readings.map((reading) => (
        <PaperReading key={reading.id} reading={reading} />
      ))}
      {card.caution ? (
        <p>
          <strong>Take care: </strong>
          {card.caution}
        </p>
      ) : null}
      <p className={styles.ends}>
        <span className={styles.line}>initials</span>
        {card.needsSignature ? <span className={styles.line}>a second person signs</span> : null}
      </p>
    </div>
  );
}

function PaperReading({ reading }: { reading: ReadingSpec }) {
  const positions = reading.positions.length > 0 ? reading.positions : [''];
  return (
    <p className={styles.reading}>
      <span>
        {reading.name}, {reading.unit}
      </span>
      {positions.map((position) => (
        <span key={position} className={styles.value}>
          {position} <span className={styles.blank} />
        </span>
      ))}
    </p>
  );
}

function partnersInWords(partners: readonly number[], people: number): string {
  if (people === 1) return '';
  if (partners.length + 1 < people) return `needs ${people} people: find help`;
  return `with person ${partners.join(' and ')}`;
}
