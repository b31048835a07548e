import type { ReactNode } from 'react';
import { classNames } from '@/lib/class-names';
import { Button } from './button';
import { ProblemShape } from './shapes';
import styles from './state-page.module.css';

export interface ErrorStateProps {
  /** What did not work, and what is still safe. */
  sentence: string;
  onTryAgain?: (() => void) | undefined;
  /** Nothing else stands on the page: the sentence is then its heading. */
  wholePage?: boolean;
  /** Another way on: a link home, what to tell whom. */
  children?: ReactNode;
}

export function ErrorState({ sentence, onTryAgain, wholePage = false, children }: ErrorStateProps) {
  const Title = wholePage ? 'h1' : 'p';
  return (
    <div className={classNames(styles.box, styles.problem)} role="alert">
      <Title className={styles.title}>
        <ProblemShape />
        {sentence}
      </Title>
      {children}
      {onTryAgain ? <Button onClick={onTryAgain}>Try again</Button> : null}
    </div>
  );
}
