import type { ComponentProps } from 'react';
import { classNames } from '@/lib/class-names';
import { FieldFrame, type FieldWords } from './field';
import styles from './field.module.css';

export interface NumberFieldProps
  extends FieldWords,
    Omit<ComponentProps<'input'>, 'id' | 'className' | 'type'> {
  /** Stands behind the box: km, min, mm, bar. */
  unit?: string;
  /** Whole numbers only: the phone then shows digits without a comma. */
  whole?: boolean;
}

/**
 * A number with its unit. A text box underneath, since a number box changes under a scrolling thumb and refuses the
 * decimal comma; turn the text into a number where the form is read.
 */
export function NumberField(props: NumberFieldProps) {
  const { label, hint, error, optional = false, unit, whole = false, ...input } = props;
  return (
    <FieldFrame label={unit ? `${label}, ${unit}` : label} hint={hint} error={error} optional={optional}>
      {(ties) => (
        <span className={styles.withUnit}>
          <input
            type="text"
            inputMode={whole ? 'numeric' : 'decimal'}
            autoComplete="off"
            {...input}
            {...ties}
            className={classNames(ties.className, styles.figures)}
          />
          {unit ? (
            <span className={styles.unit} aria-hidden="true">
              {unit}
            </span>
          ) : null}
        </span>
      )}
    </FieldFrame>
  );
}
