import type { UseFormReturn } from 'react-hook-form';
import { Button } from '@/components/button';
import { NumberField } from '@/components/number-field';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import type { QuickDraft, QuickField } from './quick-draft';
import styles from './quick-form.module.css';

export interface QuickLoopFieldsProps {
  form: UseFormReturn<QuickDraft>;
  /** 0-based. */
  index: number;
  /** What is wrong with one of its fields. */
  wordsOf: (field: QuickField) => string | undefined;
  /** Null for the only loop. */
  onRemove: (() => void) | null;
}

export function QuickLoopFields({ form, index, wordsOf, onRemove }: QuickLoopFieldsProps) {
  const loop = index + 1;
  return (
    <fieldset className={styles.loop}>
      <legend className={styles.legend}>Loop {loop}</legend>
      <TextField
        label="Stages, km"
        hint="One figure for each stage, with a space between: 12.4 8.1"
        autoComplete="off"
        error={wordsOf('stages')}
        {...form.register(`loops.${index}.stages`)}
      />
      <NumberField
        label="Road of the whole loop"
        unit="km"
        error={wordsOf('roadKm')}
        {...form.register(`loops.${index}.roadKm`)}
      />
      <NumberField
        label="Service that ends it"
        unit="min"
        whole
        hint="0 where there is none."
        error={wordsOf('serviceMinutes')}
        {...form.register(`loops.${index}.serviceMinutes`)}
      />
      {onRemove ? (
        <Stack across>
          <Button look="quiet" onClick={onRemove}>
            Remove loop {loop}
          </Button>
        </Stack>
      ) : null}
    </fieldset>
  );
}
