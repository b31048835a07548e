import { StateMark } from '../task/state-mark';
import { nameOf } from '../work/names';
import { placeInWords } from '../work/place-in-words';
import { taskInWords } from '../work/task-in-words';
import type { LoadedWork } from '../work/work-page';
import { gravityInWords } from './gravity-in-words';
import styles from './service.module.css';
import type { CarSnag } from './snags-of-car';

export function SnagList({ snags, work }: { snags: readonly CarSnag[]; work: LoadedWork }) {
  if (snags.length === 0) return <p>No open snag on this car.</p>;
  const words = {
    nameOf: (id: string) => nameOf(work.replica, id),
    me: work.replica.me.personId,
    confirmedSeq: work.confirmedSeq,
  };
  return (
    <ul className={styles.list}>
      {snags.map(({ snag, task }) => (
        <li key={snag.id} className={styles.line}>
          <h3 className={styles.name}>
            {placeInWords(snag.place)}: {snag.words}
          </h3>
          <p className={styles.facts}>
            {[gravityInWords(snag), `raised by ${words.nameOf(snag.raisedBy)}`].filter(Boolean).join(' · ')}
          </p>
          <p>
            <StateMark state={task.state} words={taskInWords(task, words)} />
          </p>
        </li>
      ))}
    </ul>
  );
}
