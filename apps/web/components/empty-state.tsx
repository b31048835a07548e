import type { ReactNode } from 'react';
import styles from './state-page.module.css';

export interface EmptyStateProps {
  /** What is missing, in a few words: "No itinerary yet". */
  title: string;
  /** What it is for and what to do. */
  children?: ReactNode;
  /** A Button or LinkButton. */
  action?: ReactNode;
}

export function EmptyState({ title, children, action }: EmptyStateProps) {
  return (
    <div className={styles.box}>
      <p className={styles.title}>{title}</p>
      {children ? <div>{children}</div> : null}
      {action}
    </div>
  );
}
