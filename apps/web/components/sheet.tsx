import { type ReactNode, useId } from 'react';
import styles from './sheet.module.css';

export interface SheetProps {
  /** Heads the sheet and names it for a screen reader. */
  title?: string;
  /** Stands at the right of the title: a mark, a link. */
  aside?: ReactNode;
  children: ReactNode;
}

/** A sheet of paper on the board: what belongs together. */
export function Sheet({ title, aside, children }: SheetProps) {
  const titleId = useId();
  return (
    <section className={styles.sheet} aria-labelledby={title ? titleId : undefined}>
      {title ? (
        <div className={styles.head}>
          <h2 id={titleId}>{title}</h2>
          {aside}
        </div>
      ) : null}
      <div className={styles.body}>{children}</div>
    </section>
  );
}
