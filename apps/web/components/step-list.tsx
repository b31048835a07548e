import { classNames } from '@/lib/class-names';
import { Mark } from './mark';
import styles from './step-list.module.css';
import { VisuallyHidden } from './visually-hidden';

export type StepState = 'done' | 'now' | 'later';

export interface Step {
  title: string;
  detail?: string;
  state: StepState;
}

const WORDS: Record<StepState, string> = { done: 'done: ', now: 'now: ', later: 'later: ' };

/** Steps in order; where one stands shows by the mark and the weight of the words. */
export function StepList({ steps, label }: { steps: readonly Step[]; label: string }) {
  return (
    <ol className={styles.steps} aria-label={label}>
      {steps.map((step) => (
        <li
          key={step.title}
          className={classNames(styles.step, styles[step.state])}
          aria-current={step.state === 'now' ? 'step' : undefined}
        >
          <Mark
            shape="round"
            fill={step.state === 'done' ? 'ticked' : step.state === 'now' ? 'half' : 'outlined'}
          />
          <span>
            <span className={styles.title}>
              <VisuallyHidden>{WORDS[step.state]}</VisuallyHidden>
              {step.title}
            </span>
            {step.detail ? <span className={styles.detail}>{step.detail}</span> : null}
          </span>
        </li>
      ))}
    </ol>
  );
}
