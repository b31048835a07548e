import type { ReactNode } from 'react';
import styles from './page-header.module.css';

export interface PageHeaderProps {
  title: string;
  /** What it belongs to, above the title: the event, the car. */
  above?: ReactNode;
  /** A few printed facts in one line: "Car 14", "Service B, 20 min", "in 12:41". */
  facts?: readonly string[];
  /** One or two buttons. */
  actions?: ReactNode;
}

/** The head of a page, like the head of a time card: the title, then one ruled line of facts. */
export function PageHeader({ title, above, facts = [], actions }: PageHeaderProps) {
  return (
    <header className={styles.header}>
      <div className={styles.top}>
        <div>
          {above ? <p className={styles.above}>{above}</p> : null}
          <h1>{title}</h1>
        </div>
        {actions ? <div className={styles.actions}>{actions}</div> : null}
      </div>
      {facts.length > 0 ? (
        <ul className={styles.facts}>
          {facts.map((fact) => (
            <li key={fact} className={styles.fact}>
              {fact}
            </li>
          ))}
        </ul>
      ) : null}
    </header>
  );
}
