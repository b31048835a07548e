import { type Control, Controller, type FieldPath } from 'react-hook-form';
import { ChoiceGroup } from '@/components/choice-group';
import type { CardForm } from './card-form';

export interface TickFieldProps {
  control: Control<CardForm>;
  name: FieldPath<CardForm>;
  label: string;
  /** What a tick says. */
  words: string;
  hint?: string;
}

/** One yes or no as a single box to tick. */
export function TickField({ control, name, label, words, hint }: TickFieldProps) {
  return (
    <Controller
      control={control}
      name={name}
      render={({ field }) => (
        <ChoiceGroup
          label={label}
          pick="many"
          choices={[{ value: 'yes', label: words, ...(hint === undefined ? {} : { hint }) }]}
          chosen={field.value === true ? ['yes'] : []}
          name={field.name}
          ref={field.ref}
          onBlur={field.onBlur}
          onChange={(event) => field.onChange(event.target.checked)}
        />
      )}
    />
  );
}
