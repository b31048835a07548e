import type { UseFormReturn } from 'react-hook-form';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { Disclosure } from '@/components/disclosure';
import { NumberField } from '@/components/number-field';
import { SelectField } from '@/components/select-field';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import type { QuickDraft, QuickProblem } from './quick-draft';
import styles from './quick-form.module.css';

export interface QuickLoopFieldsProps {
  form: UseFormReturn<QuickDraft>;
  /** 0-based. */
  day: number;
  loop: number;
  /** What is wrong with one of its fields. */
  wordsOf: (field: QuickProblem['field']) => string | undefined;
  /** Null for the only loop of its day. */
  onRemove: (() => void) | null;
}

const ENDS = [
  { value: 'service', label: 'Service' },
  { value: 'remoteService', label: 'Remote service' },
  { value: 'none', label: 'No service' },
];
const SPECIALS = [
  { value: 'refuel', label: 'Refuel before its first stage' },
  { value: 'superSpecial', label: 'Its last stage is a super special' },
];
const AGAIN = { value: 'again', label: 'The stages of the loop before, driven again' };

export function QuickLoopFields({ form, day, loop, wordsOf, onRemove }: QuickLoopFieldsProps) {
  const name = `days.${day}.loops.${loop}` as const;
  const end = form.watch(`${name}.end`);
  return (
    <fieldset className={styles.loop}>
      <legend className={styles.legend}>Loop {loop + 1}</legend>
      <TextField
        label="Stages, km"
        hint={day + loop === 0 ? 'One figure for each stage, with a space between: 12.4 8.1' : undefined}
        autoComplete="off"
        error={wordsOf('stages')}
        {...form.register(`${name}.stages`)}
      />
      <NumberField
        label="Road of the whole loop"
        unit="km"
        error={wordsOf('roadKm')}
        {...form.register(`${name}.roadKm`)}
      />
      <div className={styles.end}>
        <SelectField label="At its end" options={ENDS} {...form.register(`${name}.end`)} />
        {end === 'none' ? null : (
          <NumberField
            label="Time for it"
            unit="min"
            whole
            error={wordsOf('serviceMinutes')}
            {...form.register(`${name}.serviceMinutes`)}
          />
        )}
      </div>
      <Disclosure summary="More: refuel, super special, driven again">
        <ChoiceGroup
          label="In this loop"
          pick="many"
          choices={loop === 0 && day === 0 ? SPECIALS : [...SPECIALS, AGAIN]}
          {...form.register(`${name}.marks`)}
        />
      </Disclosure>
      {onRemove ? (
        <Stack across>
          <Button look="quiet" onClick={onRemove}>
            Remove loop {loop + 1}
          </Button>
        </Stack>
      ) : null}
    </fieldset>
  );
}
