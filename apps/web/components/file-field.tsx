import type { ComponentProps } from 'react';
import { FieldFrame, type FieldWords } from './field';

export interface FileFieldProps
  extends FieldWords,
    Omit<ComponentProps<'input'>, 'id' | 'className' | 'type' | 'value' | 'onChange'> {
  onPick: (file: File) => void;
}

/** Takes one file. The same file can be picked again after it was changed. */
export function FileField(props: FileFieldProps) {
  const { label, hint, error, optional = false, onPick, ...input } = props;
  return (
    <FieldFrame label={label} hint={hint} error={error} optional={optional}>
      {(ties) => (
        <input
          {...input}
          {...ties}
          type="file"
          onChange={(event) => {
            const file = event.target.files?.[0];
            if (file) onPick(file);
            event.target.value = '';
          }}
        />
      )}
    </FieldFrame>
  );
}
