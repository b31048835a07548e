import styles from './sheet.module.css';

const QUEUE = 'hits and where, brakes, steering, noise, lamps and temperatures, fuel left, tyres';

/** What closes the service, room for what was not on the list, and who decides. */
export function PaperFoot() {
  return (
    <footer className={styles.foot}>
      <p className={styles.check}>
        <strong>Wheel nuts:</strong>
        {['FL', 'FR', 'RL', 'RR'].map((wheel) => (
          <span key={wheel} className={styles.check}>
            <span className={styles.box} aria-hidden="true" />
            {wheel}
          </span>
        ))}
        <span className={styles.line}>torque, Nm</span>
        <span className={styles.line}>done by</span>
        <span className={styles.line}>second person</span>
      </p>
      <p className={styles.line}>
        <strong>While it waits outside, ask:</strong> {QUEUE}
      </p>
      <p className={styles.line}>Also found, left, or repaired to get home (row, where, what)</p>
      <p className={styles.line} aria-hidden="true" />
      <p>
        Only where the regulations allow work. This sheet never says that the car is safe: the event's
        regulations and qualified people decide.
      </p>
    </footer>
  );
}
