import type { EpochSeconds } from '@halfshaft/itinerary';
import { classNames } from '@/lib/class-names';
import { StateMark } from '../task/state-mark';
import { nameOf } from '../work/names';
import { taskInWords } from '../work/task-in-words';
import type { LoadedWork } from '../work/work-page';
import styles from './board.module.css';
import { type BoardLine, isTaken } from './board-lines';

interface BoardRowProps {
  line: BoardLine;
  work: LoadedWork;
  clock: (at: EpochSeconds) => string;
}

/** On a wall there is no "you": everyone is called by name. */
const NOBODY = '';

/** One piece of work: what has become of it and who is on it, and by when it must begin. */
export function BoardRow({ line, work, clock }: BoardRowProps) {
  const { task, title, isLate, waitsForSignature } = line;
  const words = {
    nameOf: (id: string) => nameOf(work.replica, id),
    me: NOBODY,
    confirmedSeq: work.confirmedSeq,
  };
  return (
    <li className={classNames(styles.row, isLate && styles.late)}>
      <span className={styles.what}>{title}</span>
      <span className={styles.who}>
        <StateMark
          state={task.state}
          words={waitsForSignature ? 'waits for a signature' : taskInWords(task, words)}
        />
      </span>
      <span className={styles.when}>{whenInWords(line, clock)}</span>
    </li>
  );
}

function whenInWords(
  { task, startBy, isLate, waitsForSignature }: BoardLine,
  clock: BoardRowProps['clock'],
): string {
  if (waitsForSignature) return '';
  if (isLate) return 'late';
  return startBy === null || isTaken(task) ? '' : `begin by ${clock(startBy)}`;
}
