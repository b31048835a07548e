import type { ComponentProps } from 'react';
import { classNames } from '@/lib/class-names';
import { FieldFrame, type FieldWords } from './field';
import styles from './field.module.css';

export interface TextAreaProps
  extends FieldWords,
    Omit<ComponentProps<'textarea'>, 'id' | 'className' | 'wrap'> {
  /** Keeps pasted table rows on one line each. */
  keepLines?: boolean;
}

export function TextArea(props: TextAreaProps) {
  const { label, hint, error, optional = false, keepLines = false, ...input } = props;
  return (
    <FieldFrame label={label} hint={hint} error={error} optional={optional}>
      {(ties) => (
        <textarea
          rows={4}
          {...input}
          {...ties}
          className={classNames(ties.className, keepLines && styles.wrapOff, keepLines && styles.figures)}
        />
      )}
    </FieldFrame>
  );
}
