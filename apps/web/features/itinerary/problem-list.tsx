import type { ItineraryProblem } from '@halfshaft/itinerary';
import { ProblemLine } from './problem-line';
import styles from './problem-list.module.css';
import { errorsFirst } from './problem-words';

/** More than anybody mends at once; mending the first ones often mends the rest. */
const MOST_SHOWN = 40;

export interface ProblemListProps {
  problems: readonly ItineraryProblem[];
  /** Puts the cursor on that row. */
  onGoToRow: (row: number) => void;
}

/** Problems that have no cell to stand beside. */
export function ProblemList({ problems, onGoToRow }: ProblemListProps) {
  const ordered = errorsFirst(problems);
  const left = ordered.length - MOST_SHOWN;
  if (ordered.length === 0) return null;
  return (
    <>
      <ol className={styles.list}>
        {ordered.slice(0, MOST_SHOWN).map((problem) => (
          <li key={`${problem.row} ${problem.column} ${problem.code} ${problem.message}`}>
            <ProblemLine problem={problem} onGoToRow={onGoToRow} />
          </li>
        ))}
      </ol>
      {left > 0 ? <p>And {left} more. Mend these first: others often go with them.</p> : null}
    </>
  );
}
