'use client';

import { eventName, type ItineraryText, itineraryText, type Problem } from '@halfshaft/contract';
import type { ItineraryProblem } from '@halfshaft/itinerary';
import { type ReactNode, useRef, useState } from 'react';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import * as z from '@/lib/zod';
import { contractResolver } from '../events/contract-resolver';
import { RestoredNotice } from '../events/restored-notice';
import { setFieldProblems } from '../events/set-field-problems';
import { SaveTrouble } from '../events/trouble';
import { useFirstProblemFocus } from '../events/use-first-problem-focus';
import { type CheckedText, checkText } from './check-text';
import styles from './itinerary-editor.module.css';
import { ItineraryFields } from './itinerary-fields';
import { formToItinerary, type ItineraryForm, isSameForm } from './itinerary-form';
import { LiveCheck } from './live-check';
import { QUICK_TIMING } from './quick-draft';
import { QuickForm } from './quick-form';
import { selectRow } from './select-row';
import { useCheckedText } from './use-checked-text';
import { useFollowedStart } from './use-followed-start';
import { useMending } from './use-mending';

const savedForm = z.object({ name: eventName, itinerary: itineraryText });

export interface ItineraryEditorProps {
  /** Names the form and what it is about, for keeping what is typed. */
  keptAs: string;
  start: ItineraryForm;
  /** False where the name is settled already; `start.name` is then handed back. */
  withName: boolean;
  /** Offers loops and kilometres as the second way in: where there is no itinerary yet. */
  withQuickForm?: boolean;
  saveWords: string;
  /** Sends it. Errors that only the server found come back as values, all others are thrown. */
  onSave: (
    name: string,
    itinerary: ItineraryText,
  ) => Promise<{ ok: true } | { ok: false; problems: ItineraryProblem[] }>;
  /** Below the button: what the last save did. */
  outcome?: ReactNode;
}

/**
 * Paste, check while typing, see what was understood, save. Used wherever an itinerary is written: a new event, a new
 * version, an organiser's event. Errors stop the saving, warnings do not. Give it a `key` naming the event.
 */
export function ItineraryEditor(props: ItineraryEditorProps) {
  const { keptAs, start, withName, withQuickForm = false, saveWords, onSave, outcome } = props;
  const form = useForm<ItineraryForm>({
    defaultValues: start,
    shouldFocusError: false,
    resolver: contractResolver<ItineraryForm>(savedForm, toBody),
  });
  const kept = useKeptForm(keptAs, form);
  useFollowedStart(form, start, kept.clear);
  const written = formToItinerary(form.watch());
  const { checked, checkNow } = useCheckedText(written);
  const readNow = () => formToItinerary(form.getValues());
  const mending = useMending({ source: written.source, read: readNow, write: writeSource });
  const box = useRef<HTMLTextAreaElement>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [refused, setRefused] = useState<{ written: string; checked: CheckedText } | null>(null);
  const { errors, submitCount, isSubmitting } = form.formState;
  const element = useFirstProblemFocus(submitCount, Object.keys(errors).length > 0);
  // A refusal counts for the text it was said of, and is gone with the next letter.
  const stopped = refused?.written === JSON.stringify(written) ? refused.checked : null;

  function writeSource(source: string) {
    form.setValue('itinerary.source', source, { shouldDirty: true });
    checkNow(readNow());
  }

  function writeQuickForm(source: string) {
    form.setValue('itinerary.roadTimedFrom', QUICK_TIMING.roadTimedFrom, { shouldDirty: true });
    form.setValue('itinerary.printedFor', QUICK_TIMING.printedFor, { shouldDirty: true });
    writeSource(source);
  }

  const save = form.handleSubmit(async (values) => {
    const body = toBody(values);
    const refuse = (why: CheckedText) =>
      setRefused({ written: JSON.stringify(body.itinerary), checked: why });
    setProblem(null);
    // Typing may not have paused since the last letter, so it is read once more.
    const read = checkText(body.itinerary);
    if (read.state !== 'good') return refuse(read);
    try {
      const answer = await onSave(body.name, body.itinerary);
      if (answer.ok) {
        // What was typed while it was being sent stays, and stays kept.
        if (isSameForm(form.getValues(), values)) kept.clear();
      } else refuse({ state: 'bad', problems: answer.problems, table: null });
    } catch (error) {
      setProblem(problemOf(error));
      setFieldProblems(form, problemOf(error));
    }
  });

  return (
    <form noValidate onSubmit={save} ref={element}>
      <div className={styles.halves}>
        <Sheet>
          <RestoredNotice
            restored={kept.restored}
            onStartAfresh={() => {
              form.reset(start);
              kept.clear();
            }}
          />
          <ItineraryFields form={form} withName={withName} boxRef={box}>
            {withQuickForm ? (
              <QuickForm
                keptAs={keptAs}
                isEmpty={written.source.trim() === ''}
                readSettings={readNow}
                onWrite={writeQuickForm}
              />
            ) : null}
          </ItineraryFields>
          {stopped === null ? null : (
            <Notice kind="problem" title="Not saved" spoken>
              {stopped.state === 'empty'
                ? 'There is no itinerary yet. Paste it above.'
                : 'The itinerary has errors. They stand under “As it was read”; mend them there and save again.'}
            </Notice>
          )}
          <SaveTrouble problem={problem} />
          <Stack across>
            <Button type="submit" look="main" busy={isSubmitting} busyWords="Saving …">
              {saveWords}
            </Button>
          </Stack>
          {outcome}
        </Sheet>
        <LiveCheck
          checked={stopped ?? checked}
          mending={mending}
          onGoToRow={(row) => box.current && selectRow(box.current, row)}
        />
      </div>
    </form>
  );
}

function toBody(values: ItineraryForm) {
  return { name: values.name, itinerary: formToItinerary(values) };
}
