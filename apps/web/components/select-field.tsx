import type { ComponentProps } from 'react';
import { FieldFrame, type FieldWords } from './field';

export interface SelectOption {
  value: string;
  label: string;
  disabled?: boolean;
}

export interface SelectFieldProps
  extends FieldWords,
    Omit<ComponentProps<'select'>, 'id' | 'className' | 'children'> {
  options: readonly SelectOption[];
  /** Shown first, with the empty value, when nothing is chosen yet. */
  unchosen?: string;
}

export function SelectField(props: SelectFieldProps) {
  const { label, hint, error, optional = false, options, unchosen, ...input } = props;
  return (
    <FieldFrame label={label} hint={hint} error={error} optional={optional}>
      {(ties) => (
        <select {...input} {...ties}>
          {unchosen === undefined ? null : <option value="">{unchosen}</option>}
          {options.map((option) => (
            <option key={option.value} value={option.value} disabled={option.disabled}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </FieldFrame>
  );
}
