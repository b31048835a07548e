import { GATE_CHECKS, gateCheckInWords } from '@halfshaft/worklog';
import styles from './sheet.module.css';

/** Once for the whole car, by a named person, instead of a warning at each line. */
export function PaperGate() {
  return (
    <p className={styles.gate}>
      <strong>Before anyone goes under:</strong>
      {GATE_CHECKS.map(gateCheckInWords).map((words) => (
        <span key={words} className={styles.check}>
          <span className={styles.box} aria-hidden="true" />
          {words}
        </span>
      ))}
      <span>Nobody under it on a jack alone.</span>
      <span className={styles.line}>looked at by</span>
    </p>
  );
}
