import type { UseFormReturn } from 'react-hook-form';
import { Disclosure } from '@/components/disclosure';
import { NumberField } from '@/components/number-field';
import { Stack } from '@/components/stack';
import type { EntryForm } from './entry-form';
import { positionField } from './position-form';

export interface PositionFieldsProps {
  form: UseFormReturn<EntryForm>;
  sections: readonly number[];
}

/** For events that set the order anew at a regroup; nothing for those of one section. */
export function PositionFields({ form, sections }: PositionFieldsProps) {
  if (sections.length === 0) return null;
  const { errors, defaultValues } = form.formState;
  const isSet = Object.values(defaultValues?.laterPositions ?? {}).some((text) => text !== '');
  return (
    <Disclosure summary="Start position changes after a regroup" startOpen={isSet}>
      <Stack>
        <p>Leave a section empty where the car keeps the position it had before.</p>
        {sections.map((section) => {
          const field = positionField(section);
          return (
            <NumberField
              key={section}
              label={`Start position from Section ${section} on`}
              whole
              error={errors.laterPositions?.[field]?.message}
              {...form.register(`laterPositions.${field}`)}
            />
          );
        })}
      </Stack>
    </Disclosure>
  );
}
