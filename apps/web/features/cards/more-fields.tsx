import type { UseFormReturn } from 'react-hook-form';
import { ChoiceGroup } from '@/components/choice-group';
import { NumberField } from '@/components/number-field';
import { TextArea } from '@/components/text-area';
import { TextField } from '@/components/text-field';
import { COMBINE_CHOICES, CONDITION_WORDS } from './card-choices';
import styles from './card-editor.module.css';
import { type CardForm, CONDITION_NAMES } from './card-form';
import { limitInWords } from './limit-in-words';
import { ReadingFields } from './reading-fields';
import { TickField } from './tick-field';

export function MoreFields({ form }: { form: UseFormReturn<CardForm> }) {
  const { register, control, formState } = form;
  const { errors } = formState;
  return (
    <>
      <ToleranceFields form={form} />
      <ConditionFields form={form} />
      <ReadingFields form={form} />
      <TickField
        control={control}
        name="needsSignature"
        label="Second signature"
        words="A second person checks and signs"
      />
      <NumberField
        label="Not in a service shorter than"
        unit="min"
        error={errors.leastServiceMinutes?.message}
        {...register('leastServiceMinutes')}
      />
      <TickField
        control={control}
        name="remoteAllowed"
        label="Remote service"
        words="Can be done in a remote service"
      />
      <TextField
        label="Due by a date at the latest"
        type="date"
        optional
        error={errors.dueDate?.message}
        {...register('dueDate')}
      />
      <TextArea
        label="Caution"
        optional
        hint="What can hurt someone here. The event’s regulations and qualified people decide."
        rows={2}
        error={errors.caution?.message}
        {...register('caution')}
      />
      <TextArea
        label="Tools"
        optional
        hint="One a line."
        error={errors.tools?.message}
        {...register('tools')}
      />
      <TextArea
        label="How to do it"
        optional
        hint="A sentence or two for someone who has not done it before."
        error={errors.instruction?.message}
        {...register('instruction')}
      />
    </>
  );
}

function ToleranceFields({ form }: { form: UseFormReturn<CardForm> }) {
  const { register, formState, watch } = form;
  return (
    <fieldset className={styles.group}>
      <legend className={styles.legend}>How far a limit may be overrun without harm</legend>
      <div className={styles.line}>
        {watch('limits').map((limit, index) => (
          <NumberField
            // Limits have no name of their own; their place in the list is what the form knows them by.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            key={index}
            label={`Beyond ${limitInWords(limit)}`}
            error={formState.errors.limits?.[index]?.tolerance?.message}
            {...register(`limits.${index}.tolerance`)}
          />
        ))}
      </div>
    </fieldset>
  );
}

function ConditionFields({ form }: { form: UseFormReturn<CardForm> }) {
  const { register, formState } = form;
  return (
    <fieldset className={styles.group}>
      <legend className={styles.legend}>Conditions that wear it faster</legend>
      <p>
        Percent faster when the condition is at its worst: 50 is half as fast again, empty is no difference.
      </p>
      <div className={styles.line}>
        {CONDITION_NAMES.map((name) => (
          <NumberField
            key={name}
            label={CONDITION_WORDS[name]}
            unit="%"
            error={formState.errors.conditions?.[name]?.message}
            {...register(`conditions.${name}`)}
          />
        ))}
      </div>
      <ChoiceGroup
        label="Several at once"
        choices={COMBINE_CHOICES}
        across
        {...register('combineConditions')}
      />
    </fieldset>
  );
}
