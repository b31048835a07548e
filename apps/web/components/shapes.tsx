import styles from './shapes.module.css';

/** Shapes that stand for a kind of message, so that none depends on colour. Words always stand beside them. */

/** A filled eight-sided plate with a bar. */
export function ProblemShape() {
  return (
    <svg className={styles.shape} viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
      <path className={styles.solid} d="M8 1h8l7 7v8l-7 7H8l-7-7V8z" />
      <path className={styles.cut} d="M12 6v7M12 16.4v1.8" />
    </svg>
  );
}

/** A triangle, half filled. */
export function WarningShape() {
  return (
    <svg className={styles.shape} viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
      <path className={styles.solid} d="M12 2v20H1z" />
      <path className={styles.outline} d="M12 2.6 22 21.4H2z" />
    </svg>
  );
}

/** An outlined note with two lines on it. */
export function NoteShape() {
  return (
    <svg className={styles.shape} viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
      <path className={styles.outline} d="M4 2.5h11L20 8v13.5H4z" />
      <path className={styles.outline} d="M8 11.5h8M8 16h8" />
    </svg>
  );
}
