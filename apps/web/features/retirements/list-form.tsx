import { type Itinerary, type ItineraryProblem, readRetirementList } from '@halfshaft/itinerary';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { TextArea } from '@/components/text-area';
import { api, problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { RestoredNotice } from '../events/restored-notice';
import { SaveTrouble } from '../events/trouble';
import { ProblemList } from '../itinerary/problem-list';
import { selectRow } from '../itinerary/select-row';
import { BeginFromStartList } from './begin-from-start-list';
import styles from './retirements.module.css';

export interface ListFormProps {
  own: { organiserId: string; publishedEventId: string };
  itinerary: Itinerary;
  /** As it was pasted last; null while there is none. */
  saved: { source: string; savedAt: number } | null;
}

/** The box of the list, with what is wrong in it by row and column. What is typed is kept. */
export function ListForm({ own, itinerary, saved }: ListFormProps) {
  const form = useForm<{ source: string }>({ defaultValues: { source: saved?.source ?? '' } });
  const kept = useKeptForm(`retirements.${own.publishedEventId}`, form);
  /** The list that was on this page when it was opened: a newer one of somebody else is not replaced unseen. */
  const [replaces, setReplaces] = useState(saved?.savedAt ?? null);
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<readonly ItineraryProblem[]>([]);
  const [outcome, setOutcome] = useState<string | null>(null);
  const box = useRef<HTMLTextAreaElement | null>(null);
  const queries = useQueryClient();
  const save = useMutation(api.retirement.save.mutationOptions());
  const source = form.watch('source');
  // Not before it was tried: while a list is being typed its last row is never whole.
  const problems = tried ? [...readRetirementList(source, itinerary).problems, ...refused] : [];
  const { ref, ...field } = form.register('source', {
    onChange: () => {
      setOutcome(null);
      setRefused([]);
    },
  });

  const submit = form.handleSubmit(async (values) => {
    setTried(true);
    setOutcome(null);
    if (readRetirementList(values.source, itinerary).problems.length > 0) return;
    const answer = await save.mutateAsync({ ...own, source: values.source, replaces }).catch(() => null);
    if (answer && !answer.ok) setRefused(answer.problems);
    if (!answer?.ok) return;
    kept.clear();
    setTried(false);
    setReplaces(answer.savedAt);
    setOutcome(answer.cars === 1 ? '1 car is on the list.' : `${answer.cars} cars are on the list.`);
    await queries.invalidateQueries({ queryKey: api.retirement.pathKey() });
  });

  return (
    <form noValidate className={styles.form} onSubmit={submit}>
      <RestoredNotice
        restored={kept.restored}
        onStartAfresh={() => {
          kept.clear();
          form.reset({ source: saved?.source ?? '' });
        }}
      />
      <TextArea
        label="Who started, who stopped, where and why"
        hint="Paste it from a spreadsheet: a row of headings, then a row for each car. Leave out the names of people."
        rows={10}
        keepLines
        spellCheck={false}
        {...field}
        ref={(element) => {
          ref(element);
          box.current = element;
        }}
      />
      {source === '' ? (
        <BeginFromStartList
          own={own}
          onBegin={(text) => form.setValue('source', text, { shouldDirty: true })}
        />
      ) : null}
      {problems.length > 0 ? (
        <Notice kind="problem" title="Not saved" spoken>
          <ProblemList problems={problems} onGoToRow={(row) => box.current && selectRow(box.current, row)} />
        </Notice>
      ) : null}
      <SaveTrouble problem={save.error ? problemOf(save.error) : null} />
      <Button type="submit" look="main" busy={save.isPending} busyWords="Saving …">
        Save the list
      </Button>
      {outcome === null ? null : (
        <Notice title="Saved" spoken>
          {outcome}
        </Notice>
      )}
    </form>
  );
}
