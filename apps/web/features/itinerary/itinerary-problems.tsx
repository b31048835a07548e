import type { ItineraryProblem } from '@halfshaft/itinerary';
import { Notice } from '@/components/notice';
import styles from './itinerary-problems.module.css';
import { errorsFirst, placeInWords } from './problem-words';

const MOST_SHOWN = 30;

/** What is wrong with an itinerary where its table is not on the page: each as a sentence with its place. */
export function ItineraryProblems({ problems }: { problems: readonly ItineraryProblem[] }) {
  if (problems.length === 0) return null;
  const errors = problems.filter((problem) => problem.severity === 'error').length;
  const more = problems.length - MOST_SHOWN;
  return (
    <Notice kind={errors > 0 ? 'problem' : 'warning'} title={titleOf(errors, problems.length)}>
      <ul className={styles.list}>
        {errorsFirst(problems)
          .slice(0, MOST_SHOWN)
          .map((problem) => (
            <li
              key={`${problem.row} ${problem.column} ${problem.code} ${problem.message}`}
              className={styles.line}
            >
              <span className={styles.place}>{placeInWords(problem)}:</span> {problem.message}
            </li>
          ))}
      </ul>
      {more > 0 ? <p>And {more} more. Mend these first.</p> : null}
    </Notice>
  );
}

function titleOf(errors: number, all: number): string {
  if (errors === 0) return all === 1 ? 'Read, with one remark' : `Read, with ${all} remarks`;
  return errors === 1 ? 'One thing to mend in the itinerary' : `${errors} things to mend in the itinerary`;
}
