import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import { minutesToLose } from '@halfshaft/itinerary';
import type { WorkState } from '@halfshaft/worklog';
import { Disclosure } from '@/components/disclosure';
import styles from './control.module.css';
import { latenessQuestionOf } from './lateness-of';
import { stretchInWords } from './stretch-in-words';

interface LoseListProps {
  event: EventReplica;
  state: WorkState;
  entry: EntryReplica;
}

/** What may still be lost by a car, section by section, and where the count begins anew. */
export function LoseList({ event, state, entry }: LoseListProps) {
  const stretches = minutesToLose(latenessQuestionOf(event, state, entry));
  return (
    <Disclosure summary="Minutes still to lose, section by section">
      <ul className={styles.road}>
        {stretches.map((stretch) => {
          const { where, minutes } = stretchInWords(stretch, event.itinerary);
          return (
            <li key={stretch.fromIndex} className={styles.stretch}>
              <strong>{where}</strong> {minutes}
            </li>
          );
        })}
      </ul>
      {stretches.length === 0 ? <p>The last control is written: nothing more can be lost.</p> : null}
      <p className={styles.quiet}>
        What is lost in one is missing in the next, up to the reset. The event’s regulations decide.
      </p>
    </Disclosure>
  );
}
