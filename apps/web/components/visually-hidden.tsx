import type { ReactNode } from 'react';
import styles from './visually-hidden.module.css';

/** Words for a screen reader where shape and place already tell the eye. */
export function VisuallyHidden({ children }: { children: ReactNode }) {
  return <span className={styles.hidden}>{children}</span>;
}
