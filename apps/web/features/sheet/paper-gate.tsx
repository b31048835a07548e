import styles from './sheet.module.css';

const GATE = [
  'on stands, on boards',
  'wheels chocked',
  'engine off',
  'extinguisher by it, pin out',
  'nobody under it on a jack alone',
];

/** Once for the whole car, by a named person, instead of a warning at each line. */
export function PaperGate() {
  return (
    <p className={styles.gate}>
      <strong>Before anyone goes under:</strong>
      {GATE.map((words) => (
        <span key={words} className={styles.check}>
          <span className={styles.box} aria-hidden="true" />
          {words}
        </span>
      ))}
      <span className={styles.line}>checked by</span>
    </p>
  );
}
