import type { ItineraryProblem } from '@halfshaft/itinerary';
import { ProblemShape, WarningShape } from '@/components/shapes';
import styles from './problem-list.module.css';
import { errorsFirst, placeInWords } from './problem-words';

/** More than anybody mends at once; mending the first ones often mends the rest. */
const MOST_SHOWN = 40;

export interface ProblemListProps {
  problems: readonly ItineraryProblem[];
  /** Puts the cursor on that row. */
  onGoToRow: (row: number) => void;
}

/** Each problem as a sentence; pressing it leads to its row. Errors and warnings are told apart by word and shape. */
export function ProblemList({ problems, onGoToRow }: ProblemListProps) {
  const ordered = errorsFirst(problems);
  const left = ordered.length - MOST_SHOWN;
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

interface ProblemLineProps {
  problem: ItineraryProblem;
  onGoToRow: (row: number) => void;
}

function ProblemLine({ problem, onGoToRow }: ProblemLineProps) {
  const { row, severity, message } = problem;
  const words = (
    <>
      {severity === 'error' ? <ProblemShape /> : <WarningShape />}
      <span>
        <span className={styles.place}>
          {severity === 'error' ? 'Error' : 'Warning'} · {placeInWords(problem)}
        </span>
        <span className={styles.message}>{message}</span>
      </span>
    </>
  );
  return row === null ? (
    <p className={styles.line}>{words}</p>
  ) : (
    <button type="button" className={styles.line} onClick={() => onGoToRow(row)}>
      {words}
    </button>
  );
}
