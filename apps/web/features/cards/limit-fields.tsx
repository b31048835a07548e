import { type UseFormReturn, useFieldArray } from 'react-hook-form';
import { Button } from '@/components/button';
import { FieldError } from '@/components/field';
import { NumberField } from '@/components/number-field';
import { SelectField } from '@/components/select-field';
import { Stack } from '@/components/stack';
import { COUNTER_OPTIONS } from './card-choices';
import styles from './card-editor.module.css';
import { type CardForm, NEW_LIMIT } from './card-form';

const MOST_LIMITS = 5;

/** How often: one or more limits, of which the first one passed decides. */
export function LimitFields({ form }: { form: UseFormReturn<CardForm> }) {
  const { register, control, formState } = form;
  const { fields, append, remove } = useFieldArray({ control, name: 'limits' });
  const errors = formState.errors.limits;
  return (
    <fieldset className={styles.group}>
      <legend className={styles.legend}>How often</legend>
      <Stack>
        {fields.length > 1 ? <p>The limit that is passed first decides.</p> : null}
        {fields.length === 0 ? (
          <p>No limit: only what happens, a reading, a date or one of you calls for this card.</p>
        ) : null}
        {fields.map((field, index) => (
          <div key={field.id} className={styles.line}>
            <NumberField
              label={index === 0 ? 'Every' : 'Or every'}
              error={errors?.[index]?.every?.message}
              {...register(`limits.${index}.every`)}
            />
            <SelectField
              label="What is counted"
              options={COUNTER_OPTIONS}
              error={errors?.[index]?.counter?.message}
              {...register(`limits.${index}.counter`)}
            />
            <Button look="quiet" onClick={() => remove(index)}>
              {fields.length > 1 ? 'Remove' : 'No limit'}
            </Button>
          </div>
        ))}
        <FieldError id="limits-error" error={errors?.root?.message ?? errors?.message} />
        {fields.length < MOST_LIMITS ? (
          <Stack across>
            <Button look="quiet" onClick={() => append(NEW_LIMIT)}>
              {fields.length === 0 ? 'Add a limit' : 'Add another limit'}
            </Button>
          </Stack>
        ) : null}
      </Stack>
    </fieldset>
  );
}
