import { quickFormInWords } from '@halfshaft/itinerary';
import { type KeyboardEvent, type ReactNode, useState } from 'react';
import { useFieldArray, useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { Notice } from '@/components/notice';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import { useKeptForm } from '@/lib/keep-typed';
import {
  EMPTY_DRAFT,
  EMPTY_LOOP,
  type QuickDraft,
  type QuickProblem,
  type QuickSettings,
  quickDraftToText,
} from './quick-draft';
import styles from './quick-form.module.css';
import { QuickLoopFields } from './quick-loop-fields';

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
  const loops = useFieldArray({ control: form.control, name: 'loops' });
  const [problems, setProblems] = useState<readonly QuickProblem[]>([]);
  const [isWritten, setWritten] = useState(false);
  const wordsOf = (loop: number | null, field: QuickProblem['field']) =>
    problems.find((problem) => problem.loop === loop && problem.field === field)?.message;
  const settingsProblem = wordsOf(null, 'settings');

  function write() {
    const made = quickDraftToText(form.getValues(), readSettings());
    setProblems(made.ok ? [] : made.problems);
    setWritten(made.ok);
    if (!made.ok) return;
    onWrite(made.text);
    kept.clear();
  }

  function remove(index: number) {
    loops.remove(index);
    setProblems([]);
  }

  return (
    <Disclosure summary="No itinerary yet? Begin with loops and kilometres">
      <fieldset className={styles.form} onKeyDown={(event) => onEnter(event, write)}>
        <legend className={styles.legend}>The event in loops</legend>
        <p>{quickFormInWords({})}</p>
        {children}
        <TextField
          label="First car out of the start"
          type="time"
          error={wordsOf(null, 'firstCarAt')}
          {...form.register('firstCarAt')}
        />
        {loops.fields.map(({ id }, index) => (
          <QuickLoopFields
            key={id}
            form={form}
            index={index}
            wordsOf={(field) => wordsOf(index, field)}
            onRemove={loops.fields.length === 1 ? null : () => remove(index)}
          />
        ))}
        <Stack across>
          <Button onClick={() => loops.append({ ...(form.getValues().loops.at(-1) ?? EMPTY_LOOP) })}>
            Add a loop
          </Button>
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
