import type { JobCard, ReadingSpec } from '@halfshaft/lifing';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';
import { cardTitle } from '../cards/card-title';
import styles from './service-paper.module.css';
import type { SheetTask } from './sheet';
import { minutesOfWork } from './time-in-words';

interface PaperTaskProps {
  task: SheetTask;
  /** Who else is at it. */
  partners: readonly number[];
  isFirst: boolean;
}

/**
 * One round or job with its boxes and lines. Work for several people stands in full with the first of them; the others
 * are told where it is, so that a reading is written down once.
 */
export function PaperTask({ task, partners, isFirst }: PaperTaskProps) {
  const { card } = task;
  return (
    <div className={styles.task}>
      <div className={styles.taskHead}>
        <h6 className={styles.taskName}>
          <span className={styles.box} aria-hidden="true" />
          <span>
            {cardTitle(card)}
            <span className={styles.facts}> {factsOf(task, partners)}</span>
          </span>
        </h6>
        <span className={styles.line}>initials</span>
        {card.needsSignature ? <span className={styles.line}>checked by another person</span> : null}
      </div>
      {isFirst ? <PaperDetails card={card} /> : <p>Readings and cautions stand with person {partners[0]}.</p>}
    </div>
  );
}

function PaperDetails({ card }: { card: JobCard }) {
  const { instruction, looks, readings, caution } = card;
  return (
    <>
      {looks.length > 0 ? (
        <ul className={styles.looks}>
          {looks.map((look) => (
            <li key={look.id} className={styles.check}>
              <span className={styles.box} aria-hidden="true" />
              {look.words}
            </li>
          ))}
        </ul>
      ) : null}
      <div className={styles.notes}>
        {readings.length > 0 ? (
          <ul className={styles.readings}>
            {readings.map((reading) => (
              <PaperReading key={reading.id} reading={reading} />
            ))}
          </ul>
        ) : null}
        {instruction || caution ? (
          <p>
            {instruction} {caution ? <strong>Take care: </strong> : null}
            {caution}
          </p>
        ) : null}
      </div>
    </>
  );
}

function factsOf({ card, reason, people }: SheetTask, partners: readonly number[]): string {
  const minutes = `${minutesOfWork(card.seconds)} min`;
  const facts = [minutes, CAR_PLACE_NAMES[card.place], reason, partnersInWords(partners, people)];
  return facts.filter(Boolean).join(' · ');
}

function PaperReading({ reading }: { reading: ReadingSpec }) {
  const positions = reading.positions.length > 0 ? reading.positions : [''];
  return (
    <li className={styles.reading}>
      <span>
        {reading.name}, {reading.unit}
      </span>
      {positions.map((position) => (
        <span key={position} className={styles.value}>
          {position} <span className={styles.blank} />
        </span>
      ))}
    </li>
  );
}

function partnersInWords(partners: readonly number[], people: number): string {
  if (people === 1) return '';
  if (partners.length + 1 < people) return `needs ${people} people: find help`;
  return `with person ${partners.join(' and ')}`;
}
