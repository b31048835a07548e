import type { PersonId } from '@halfshaft/worklog';
import type { LoadedWork } from '../work/work-page';
import styles from './bay.module.css';
import type { OpenDialog } from './bay-dialog';
import type { BayTask } from './bay-task';
import { TaskCard } from './task-card';

export interface TaskListProps {
  tasks: readonly BayTask[];
  work: LoadedWork;
  by: PersonId;
  onOpen: (dialog: OpenDialog) => void;
  /** Said when there are none. */
  empty?: string;
}

export function TaskList({ tasks, empty, ...rest }: TaskListProps) {
  if (tasks.length === 0) return <p>{empty}</p>;
  return (
    <ul className={styles.list}>
      {tasks.map((bayTask) => (
        <TaskCard key={bayTask.task.id} bayTask={bayTask} {...rest} />
      ))}
    </ul>
  );
}
