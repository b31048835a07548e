import { type UseFormReturn, useFieldArray } from 'react-hook-form';
import { Button } from '@/components/button';
import { NumberField } from '@/components/number-field';
import { SelectField } from '@/components/select-field';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import { DECIMAL_OPTIONS, READING_KIND_OPTIONS } from './card-choices';
import styles from './card-editor.module.css';
import { type CardForm, NEW_READING } from './card-form';
import { TickField } from './tick-field';

const MOST_READINGS = 12;

/** The readings a card asks for when it is closed. */
export function ReadingFields({ form }: { form: UseFormReturn<CardForm> }) {
  const { fields, append, remove } = useFieldArray({ control: form.control, name: 'readings' });
  return (
    <fieldset className={styles.group}>
      <legend className={styles.legend}>Readings</legend>
      <Stack>
        <p>What is measured and written down when the card is closed.</p>
        {fields.map((field, index) => (
          <OneReading key={field.id} form={form} index={index} onRemove={() => remove(index)} />
        ))}
        {fields.length < MOST_READINGS ? (
          <Stack across>
            <Button look="quiet" onClick={() => append(NEW_READING)}>
              Add a reading
            </Button>
          </Stack>
        ) : null}
      </Stack>
    </fieldset>
  );
}

interface OneReadingProps {
  form: UseFormReturn<CardForm>;
  index: number;
  onRemove: () => void;
}

function OneReading({ form, index, onRemove }: OneReadingProps) {
  const { register, control, formState } = form;
  const errors = formState.errors.readings?.[index];
  const at = `readings.${index}` as const;
  return (
    <fieldset className={styles.item}>
      <legend className={styles.itemLegend}>Reading {index + 1}</legend>
      <Stack>
        <TextField label="Name" error={errors?.name?.message} {...register(`${at}.name`)} />
        <SelectField label="Kind" options={READING_KIND_OPTIONS} {...register(`${at}.kind`)} />
        <div className={styles.line}>
          <TextField label="Unit" optional error={errors?.unit?.message} {...register(`${at}.unit`)} />
          <SelectField label="Written" options={DECIMAL_OPTIONS} {...register(`${at}.decimals`)} />
        </div>
        <TextField
          label="Positions"
          optional
          hint="One value for each, parted by spaces: FL FR RL RR. Empty for a single value."
          autoCapitalize="characters"
          error={errors?.positions?.message}
          {...register(`${at}.positions`)}
        />
        <div className={styles.line}>
          <NumberField
            label="Out of order below"
            optional
            error={errors?.low?.message}
            {...register(`${at}.low`)}
          />
          <NumberField
            label="Out of order above"
            optional
            error={errors?.high?.message}
            {...register(`${at}.high`)}
          />
        </div>
        <TickField
          control={control}
          name={`${at}.required`}
          label="Needed?"
          words="The card cannot be closed without it"
        />
        <Stack across>
          <Button look="quiet" onClick={onRemove}>
            Remove reading {index + 1}
          </Button>
        </Stack>
      </Stack>
    </fieldset>
  );
}
