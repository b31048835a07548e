'use client';

import { useEffect, useState } from 'react';
import styles from './state-page.module.css';

const PATIENCE_MILLIS = 300;

interface LoadingStateProps {
  words?: string;
  /** Nothing else stands on the page: the words are then its heading. */
  wholePage?: boolean;
}

/** Says that something is on its way, but only once it has taken long enough to be noticed. */
export function LoadingState({ words = 'Fetching …', wholePage = false }: LoadingStateProps) {
  const [late, setLate] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), PATIENCE_MILLIS);
    return () => clearTimeout(timer);
  }, []);
  const Words = wholePage ? 'h1' : 'span';

  return (
    <div className={styles.words} role="status" aria-live="polite">
      {late ? (
        <>
          <svg className={styles.turning} viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
            <circle className={styles.ring} cx="12" cy="12" r="10" />
            <path className={styles.half} d="M12 5a7 7 0 0 1 0 14z" />
          </svg>
          <Words className={styles.waiting}>{words}</Words>
        </>
      ) : null}
    </div>
  );
}
