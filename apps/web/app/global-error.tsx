'use client';

import './globals.css';
import { ErrorState } from '@/components/error-state';
import styles from './global-error.module.css';

/** Stands in when even the frame of the page failed, so it leans on as little as it can. */
export default function GlobalError({ retry }: { error: unknown; retry: () => void }) {
  return (
    <html lang="en">
      <body>
        <title>Fault · Halfshaft</title>
        <main className={styles.page} id="content">
          <ErrorState
            sentence="Halfshaft stopped because of a fault in the program, not because of anything you did."
            onTryAgain={retry}
          >
            <p>What you entered is kept on this device.</p>
          </ErrorState>
        </main>
      </body>
    </html>
  );
}
