import type { ItineraryProblem } from '@halfshaft/itinerary';
import { useId } from 'react';
import { Notice } from '@/components/notice';
import { errorsFirst, placeInWords } from '../itinerary/problem-words';
import styles from './itinerary-problems.module.css';

export interface ItineraryProblemsProps {
  problems: readonly ItineraryProblem[];
  /** Called with the row of a problem that was pressed; left away where there is no table to jump into. */
  onRow?: (row: number) => void;
}

const MOST_SHOWN = 30;

/** What is wrong with a pasted itinerary, each as a sentence with its place; pressing one leads to its row. */
export function ItineraryProblems({ problems, onRow }: ItineraryProblemsProps) {
  const id = useId();
  if (problems.length === 0) return null;
  const errors = problems.filter((problem) => problem.severity === 'error').length;
  const more = problems.length - MOST_SHOWN;
  return (
    <Notice kind={errors > 0 ? 'problem' : 'warning'} title={titleOf(errors, problems.length)}>
      {errors > 0 && onRow ? <p id={id}>Press one to jump to its row.</p> : null}
      <ul className={styles.list}>
        {errorsFirst(problems)
          .slice(0, MOST_SHOWN)
          .map((problem) => (
            <li key={`${problem.row} ${problem.column} ${problem.code} ${problem.message}`}>
              <ProblemLine problem={problem} onRow={onRow} />
            </li>
          ))}
      </ul>
      {more > 0 ? <p>And {more} more. Mend these first.</p> : null}
    </Notice>
  );
}

function ProblemLine({
  problem,
  onRow,
}: {
  problem: ItineraryProblem;
  onRow: ItineraryProblemsProps['onRow'];
}) {
  const { row, message } = problem;
  const words = (
    <>
      <span className={styles.place}>{placeInWords(problem)}:</span> {message}
    </>
  );
  if (row === null || !onRow) return <p className={styles.line}>{words}</p>;
  return (
    <button type="button" className={styles.line} onClick={() => onRow(row)}>
      {words}
    </button>
  );
}

function titleOf(errors: number, all: number): string {
  if (errors === 0) return all === 1 ? 'Read, with one remark' : `Read, with ${all} remarks`;
  return errors === 1 ? 'One thing to mend in the itinerary' : `${errors} things to mend in the itinerary`;
}
