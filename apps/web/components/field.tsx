import { type ReactNode, useId } from 'react';
import styles from './field.module.css';
import { ProblemShape } from './shapes';

/** What every field can say. `error` takes `errors.name?.message` as it comes. */
export interface FieldWords {
  label: string;
  /** How to fill it in, always visible. */
  hint?: string | undefined;
  /** What is wrong and what to do, as a sentence. */
  error?: string | undefined;
  /** Says so in the label, since most fields are needed. */
  optional?: boolean;
}

/** What the input inside the frame takes over. */
export interface FieldTies {
  id: string;
  'aria-describedby': string | undefined;
  'aria-invalid': true | undefined;
  className: string | undefined;
}

interface FieldFrameProps extends FieldWords {
  children: (ties: FieldTies) => ReactNode;
}

/** Label above, hint below it, then the input, then the error: all tied together for a screen reader. */
export function FieldFrame({ label, hint, error, optional = false, children }: FieldFrameProps) {
  const id = useId();
  const described = [hint && `${id}hint`, error && `${id}error`].filter(Boolean).join(' ');
  return (
    <div className={styles.field}>
      <label className={styles.label} htmlFor={id}>
        {label}
        {optional ? <span className={styles.optional}> (may stay empty)</span> : null}
      </label>
      {hint ? (
        <p className={styles.hint} id={`${id}hint`}>
          {hint}
        </p>
      ) : null}
      {children({
        id,
        'aria-describedby': described || undefined,
        'aria-invalid': error ? true : undefined,
        className: styles.input,
      })}
      <FieldError id={`${id}error`} error={error} />
    </div>
  );
}

export function FieldError({ id, error }: { id: string; error: string | undefined }) {
  if (!error) return null;
  return (
    <p className={styles.error} id={id}>
      <ProblemShape />
      <span>{error}</span>
    </p>
  );
}
