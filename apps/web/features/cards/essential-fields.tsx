import type { UseFormReturn } from 'react-hook-form';
import { ChoiceGroup } from '@/components/choice-group';
import { NumberField } from '@/components/number-field';
import { SelectField } from '@/components/select-field';
import { TextArea } from '@/components/text-area';
import { TextField } from '@/components/text-field';
import { KIND_CHOICES, PLACE_OPTIONS } from './card-choices';
import styles from './card-editor.module.css';
import type { CardForm } from './card-form';
import { LimitFields } from './limit-fields';
import { TickField } from './tick-field';

/** What every card needs. Looks stand here as soon as it is a round, which is nothing without them. */
export function EssentialFields({ form }: { form: UseFormReturn<CardForm> }) {
  const { register, control, formState, watch } = form;
  const { errors } = formState;
  const isRound = watch('kind') === 'round';
  return (
    <>
      <TextField label="Name" autoComplete="off" error={errors.name?.message} {...register('name')} />
      <ChoiceGroup
        label="Kind"
        choices={KIND_CHOICES}
        across
        error={errors.kind?.message}
        {...register('kind')}
      />
      {isRound ? (
        <TextArea
          label="Looks"
          hint="One a line, in a few words: “rims clean inside, no crack, not bent”."
          rows={8}
          error={errors.looks?.message}
          {...register('looks')}
        />
      ) : (
        <TickField
          control={control}
          name="fitsNewPart"
          label="New part"
          words="Doing this job fits a new part"
          hint="Pads, a belt, fresh oil, a rebuilt damper: a life begins again, and the log can say how long it lasts. Not where the same part goes back on, cleaned or adjusted."
        />
      )}
      <SelectField
        label="Where on the car"
        options={PLACE_OPTIONS}
        error={errors.place?.message}
        {...register('place')}
      />
      <LimitFields form={form} />
      <div className={styles.line}>
        <NumberField label="Time" unit="min" error={errors.minutes?.message} {...register('minutes')} />
        <NumberField
          label="With how many people"
          whole
          error={errors.people?.message}
          {...register('people')}
        />
      </div>
    </>
  );
}
