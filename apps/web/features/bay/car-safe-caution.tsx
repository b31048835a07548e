import { Notice } from '@/components/notice';
import styles from './bay.module.css';

const BEFORE_WORK = [
  'Engine off.',
  'Car on stands, the stands on boards.',
  'Wheels that stay down are chocked.',
  'Fire extinguisher out and within reach.',
  "The car's own extinguisher system is pinned.",
];

/** Said once a service instead of on every card. */
export function CarSafeCaution() {
  return (
    <Notice kind="warning" title="Before anyone touches the car">
      <ul className={styles.checks}>
        {BEFORE_WORK.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <p>
        Ask again after refuelling, an engine start, or when the car comes down. The event's regulations and
        qualified people decide.
      </p>
    </Notice>
  );
}
