import type { ItineraryProblem } from '@halfshaft/itinerary';
import { ProblemShape, WarningShape } from '@/components/shapes';
import styles from './problem-list.module.css';
import { placeInWords } from './problem-words';

export interface ProblemLineProps {
  problem: ItineraryProblem;
  /** Puts the cursor on that row of the text; left away where there is no text to go to. */
  onGoToRow?: ((row: number) => void) | undefined;
  /** What a box is described by. */
  id?: string | undefined;
  /** Its cell is a box, so the keyboard need not stop here too. */
  hasBox?: boolean;
}

/** A problem as a sentence; pressing it leads to its row. Errors and remarks are told apart by word and shape. */
export function ProblemLine({ problem, onGoToRow, id, hasBox = false }: ProblemLineProps) {
  const { row, severity, message } = problem;
  const words = (
    <>
      {severity === 'error' ? <ProblemShape /> : <WarningShape />}
      <span id={id}>
        <span className={styles.place}>
          {placeInWords(problem)}
          {severity === 'error' ? '' : ' · remark'}
        </span>{' '}
        <span className={styles.message}>{message}</span>
      </span>
    </>
  );
  return row === null || !onGoToRow ? (
    <p className={styles.line}>{words}</p>
  ) : (
    <button
      type="button"
      className={styles.line}
      tabIndex={hasBox ? -1 : undefined}
      onClick={() => onGoToRow(row)}
    >
      {words}
    </button>
  );
}
