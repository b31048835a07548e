import styles from './bay.module.css';
import type { BayTask } from './bay-task';
import { TaskCard, type TaskCardProps } from './task-card';

export interface TaskListProps extends Omit<TaskCardProps, 'bayTask'> {
  tasks: readonly BayTask[];
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
