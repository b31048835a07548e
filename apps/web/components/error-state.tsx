import type { ReactNode } from 'react';
import { classNames } from '@/lib/class-names';
import { Button } from './button';
import { ProblemShape } from './shapes';
import styles from './state-page.module.css';

export interface ErrorStateProps {
  /** What did not work, and what is still safe. */
  sentence: string;
  onTryAgain?: (() => void) | undefined;
  /** Another way on: a link home, what to tell whom. */
  children?: ReactNode;
}

export function ErrorState({ sentence, onTryAgain, children }: ErrorStateProps) {
  return (
    <div className={classNames(styles.box, styles.problem)} role="alert">
      <p className={styles.title}>
        <ProblemShape />
        {sentence}
      </p>
      {children}
      {onTryAgain ? <Button onClick={onTryAgain}>Try again</Button> : null}
    </div>
  );
}
