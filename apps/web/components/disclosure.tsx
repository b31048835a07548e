'use client';

import { type ReactNode, useEffect, useRef } from 'react';
import styles from './disclosure.module.css';

export interface DisclosureProps {
  /** "More", "The route as a list": what opens. */
  summary: ReactNode;
  children: ReactNode;
  startOpen?: boolean;
  /** Opens by itself on paper, where nothing can be tapped. */
  printOpen?: boolean;
}

export function Disclosure({ summary, children, startOpen = false, printOpen = false }: DisclosureProps) {
  const element = useRef<HTMLDetailsElement>(null);

  useEffect(() => {
    const details = element.current;
    if (!printOpen || details === null) return;
    let wasOpen = details.open;
    function unfold() {
      if (details === null) return;
      wasOpen = details.open;
      details.open = true;
    }
    function foldBack() {
      if (details !== null) details.open = wasOpen;
    }
    window.addEventListener('beforeprint', unfold);
    window.addEventListener('afterprint', foldBack);
    return () => {
      window.removeEventListener('beforeprint', unfold);
      window.removeEventListener('afterprint', foldBack);
    };
  }, [printOpen]);

  return (
    <details className={styles.disclosure} ref={element} open={startOpen}>
      <summary className={styles.summary}>
        <svg className={styles.sign} viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
          <path d="M10 3v14" className={styles.upright} />
          <path d="M3 10h14" />
        </svg>
        {summary}
      </summary>
      <div className={styles.body}>{children}</div>
    </details>
  );
}
