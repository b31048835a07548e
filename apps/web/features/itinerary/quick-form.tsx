import { quickFormInWords } from '@halfshaft/itinerary';
import { type KeyboardEvent, type ReactNode, useState } from 'react';
import { useFieldArray, useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { Notice } from '@/components/notice';
import { Stack } from '@/components/stack';
import { useKeptForm } from '@/lib/keep-typed';
import { QuickDayFields } from './quick-day-fields';
import {
  copyDay,
  dateInWords,
  datesOf,
  EMPTY_DAY,
  EMPTY_DRAFT,
  type QuickDraft,
  type QuickProblem,
  type QuickSettings,
} from './quick-draft';
import { quickDraftToText } from './quick-draft-to-text';
import styles from './quick-form.module.css';

export interface QuickFormProps {
  /** Names the form that it belongs to, for keeping what is typed. */
  keptAs: string;
  /** Whether the box is empty, or would be written over. */
  isEmpty: boolean;
  /** As they are in the form at this moment; null where one cannot be read. */
  readSettings: () => QuickSettings | null;
  onWrite: (text: string) => void;
  /** First day and time zone, where they do not stand beside it. */
  children?: ReactNode;
}

/** The second way in, before the itinerary is out: loops in kilometres, written into the box as if pasted. */
export function QuickForm({ keptAs, isEmpty, readSettings, onWrite, children }: QuickFormProps) {
  const form = useForm<QuickDraft>({ defaultValues: EMPTY_DRAFT });
  const kept = useKeptForm(`${keptAs}.quick`, form);
  const days = useFieldArray({ control: form.control, name: 'days' });
  const [problems, setProblems] = useState<readonly QuickProblem[]>([]);
  const [isWritten, setWritten] = useState(false);
  const settingsProblem = problems.find((problem) => problem.field === 'settings')?.message;
  const draft = form.watch();
  const dates = datesOf(draft, readSettings()?.startsOn ?? '');
  const last = days.fields.length - 1;

  function write() {
    const made = quickDraftToText(form.getValues(), readSettings());
    setProblems(made.ok ? [] : made.problems);
    setWritten(made.ok);
    if (!made.ok) return;
    onWrite(made.text);
    kept.clear();
  }

  function addDay() {
    const firstCarAt = form.getValues().days.at(-1)?.firstCarAt ?? EMPTY_DAY.firstCarAt;
    days.append({ ...copyDay(EMPTY_DAY), firstCarAt });
  }

  function copyLastDay() {
    days.append(copyDay(form.getValues().days.at(-1) ?? EMPTY_DAY));
  }

  function removeDay(index: number) {
    days.remove(index);
    setProblems([]);
  }

  return (
    <Disclosure summary="No itinerary yet? Begin with loops and kilometres">
      <fieldset className={styles.form} onKeyDown={(event) => onEnter(event, write)}>
        <legend className={styles.legend}>The event in loops</legend>
        <p>{quickFormInWords({})}</p>
        {children}
        {days.fields.map(({ id }, index) => (
          <QuickDayFields
            key={id}
            form={form}
            day={index}
            title={[`Day ${index + 1}`, dateInWords(dates[index] ?? '')].filter(Boolean).join(', ')}
            problems={problems}
            onLoopsChange={() => setProblems([])}
            onRemove={last === 0 ? null : () => removeDay(index)}
          />
        ))}
        <p className={styles.hint}>A day is a leg. Between two days the car stands in parc fermé.</p>
        <Stack across gap="small">
          <Button onClick={addDay}>Add a day</Button>
          <Button onClick={copyLastDay}>Copy day {last + 1}</Button>
        </Stack>
        <Stack across>
          <Button onClick={write}>{isEmpty ? 'Write the itinerary' : 'Write over the itinerary'}</Button>
        </Stack>
        {settingsProblem ? (
          <Notice kind="problem" title="Not written" spoken>
            {settingsProblem}
          </Notice>
        ) : null}
        {isWritten ? (
          <Notice title="Written" spoken>
            It stands in the box as if it had been pasted. Change it there where you know better.
          </Notice>
        ) : null}
      </fieldset>
    </Disclosure>
  );
}

/** Enter in a field would save the whole form. */
function onEnter(event: KeyboardEvent<HTMLElement>, write: () => void): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  event.preventDefault();
  write();
}
