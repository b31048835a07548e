import { type UseFormReturn, useFieldArray } from 'react-hook-form';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { NumberField } from '@/components/number-field';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import { EMPTY_LOOP, type QuickDraft, type QuickProblem, repeatLoop } from './quick-draft';
import styles from './quick-form.module.css';
import { QuickLoopFields } from './quick-loop-fields';

export interface QuickDayFieldsProps {
  form: UseFormReturn<QuickDraft>;
  /** 0-based. */
  day: number;
  /** "Day 2, Sat 13 Jun 2026". */
  title: string;
  problems: readonly QuickProblem[];
  onLoopsChange: () => void;
  /** Null for the only day. */
  onRemove: (() => void) | null;
}

/** One day, which is a leg: when it begins, and its loops. */
export function QuickDayFields(props: QuickDayFieldsProps) {
  const { form, day, title, problems, onLoopsChange, onRemove } = props;
  const loops = useFieldArray({ control: form.control, name: `days.${day}.loops` });
  const wordsOf = (loop: number | null, field: QuickProblem['field']) =>
    problems.find((one) => one.day === day && one.loop === loop && one.field === field)?.message;
  const last = loops.fields.length - 1;

  function repeatLast() {
    const loop = form.getValues(`days.${day}.loops`).at(-1);
    loops.append(repeatLoop(loop ?? EMPTY_LOOP));
  }

  return (
    <fieldset className={styles.day}>
      <legend className={styles.legend}>{title}</legend>
      <TextField
        label={day === 0 ? 'First car out of the start' : 'First car out of parc fermé'}
        type="time"
        error={wordsOf(null, 'firstCarAt')}
        {...form.register(`days.${day}.firstCarAt`)}
      />
      <DayMore {...props} wordsOf={(field) => wordsOf(null, field)} />
      {loops.fields.map(({ id }, index) => (
        <QuickLoopFields
          key={id}
          form={form}
          day={day}
          loop={index}
          wordsOf={(field) => wordsOf(index, field)}
          onRemove={
            last === 0
              ? null
              : () => {
                  loops.remove(index);
                  onLoopsChange();
                }
          }
        />
      ))}
      <Stack across gap="small">
        <Button onClick={repeatLast}>Repeat loop {last + 1}</Button>
        <Button onClick={() => loops.append({ ...EMPTY_LOOP })}>Another loop</Button>
        {onRemove ? (
          <Button look="quiet" onClick={onRemove}>
            Remove day {day + 1}
          </Button>
        ) : null}
      </Stack>
    </fieldset>
  );
}

interface DayMoreProps extends QuickDayFieldsProps {
  wordsOf: (field: QuickProblem['field']) => string | undefined;
}

function DayMore({ form, day, wordsOf }: DayMoreProps) {
  return (
    <Disclosure summary={day === 0 ? 'More: service first' : 'More: date, service first'}>
      {day === 0 ? null : (
        <TextField
          label="Date"
          type="date"
          optional
          hint="Only where it is not the day after."
          error={wordsOf('date')}
          {...form.register(`days.${day}.date`)}
        />
      )}
      <NumberField
        label="Service before the first stage"
        unit="min"
        whole
        optional
        error={wordsOf('serviceMinutes')}
        {...form.register(`days.${day}.serviceMinutes`)}
      />
    </Disclosure>
  );
}
