import type { PersonId } from '@halfshaft/worklog';
import styles from './sheet.module.css';
import type { CarStep } from './sheet-rows';
import { startByInWords } from './start-by-in-words';

interface PaperStepProps {
  step: CarStep;
  own: PersonId;
  clockAt: (seconds: number) => string;
  nameOf: (personId: PersonId) => string;
}

/** What the whole car waits for: a line between the rows, with nothing to tick or record. */
export function PaperStep({ step: { words, planned }, own, clockAt, nameOf }: PaperStepProps) {
  const others = planned.people.filter((person) => person !== own).map(nameOf);
  return (
    <p className={styles.step}>
      <span className={styles.at}>{clockAt(planned.start)}</span> <strong>{words}</strong>{' '}
      <span className={styles.light}>
        {[others.length > 0 ? `with ${others.join(' and ')}` : '', startByInWords(planned, clockAt, '')]
          .filter(Boolean)
          .join(' · ')}
      </span>
    </p>
  );
}
