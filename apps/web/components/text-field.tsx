import type { ComponentProps } from 'react';
import { FieldFrame, type FieldWords } from './field';

export interface TextFieldProps extends FieldWords, Omit<ComponentProps<'input'>, 'id' | 'className'> {}

/** One line of text. Spread `register('name')` onto it. */
export function TextField({ label, hint, error, optional = false, ...input }: TextFieldProps) {
  return (
    <FieldFrame label={label} hint={hint} error={error} optional={optional}>
      {(ties) => <input type="text" {...input} {...ties} />}
    </FieldFrame>
  );
}
