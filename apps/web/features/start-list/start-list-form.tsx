import { type ItineraryProblem, readStartList } from '@halfshaft/itinerary';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { TextArea } from '@/components/text-area';
import { api, problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { SaveTrouble } from '../events/trouble';
import { ProblemList } from '../itinerary/problem-list';
import { selectRow } from '../itinerary/select-row';
import styles from './start-list.module.css';

export interface StartListFormProps {
  own: { organiserId: string; publishedEventId: string };
  section: number;
  /** As it was pasted last; empty where there is no list yet. */
  saved: string;
}

/** The box of one section's list, with what is wrong in it by row and column. What is typed is kept. */
export function StartListForm({ own, section, saved }: StartListFormProps) {
  const form = useForm<{ source: string }>({ defaultValues: { source: saved } });
  const kept = useKeptForm(`startList.${own.publishedEventId}.${section}`, form);
  const [tried, setTried] = useState(false);
  /** What only the server found. */
  const [refused, setRefused] = useState<readonly ItineraryProblem[]>([]);
  const [outcome, setOutcome] = useState<string | null>(null);
  const box = useRef<HTMLTextAreaElement | null>(null);
  const queries = useQueryClient();
  const save = useMutation(api.startList.save.mutationOptions());
  const source = form.watch('source');
  // Not before it was tried: while a list is being typed its last row is never whole.
  const problems = tried ? [...readStartList(source, section).problems, ...refused] : [];
  const { ref, ...field } = form.register('source', {
    onChange: () => {
      setOutcome(null);
      setRefused([]);
    },
  });

  const submit = form.handleSubmit(async (values) => {
    setTried(true);
    setOutcome(null);
    if (readStartList(values.source, section).problems.length > 0) return;
    const answer = await save.mutateAsync({ ...own, section, source: values.source }).catch(() => null);
    if (answer && !answer.ok) setRefused(answer.problems);
    if (!answer?.ok) return;
    kept.clear();
    setTried(false);
    setOutcome(answer.cars === 1 ? '1 car is on the list.' : `${answer.cars} cars are on the list.`);
    await queries.invalidateQueries({ queryKey: api.startList.list.queryKey(own) });
  });

  return (
    <form noValidate className={styles.form} onSubmit={submit}>
      <TextArea
        label={`Cars in the order of Section ${section}`}
        hint="A row for each car: number, start position. A third column may name another section."
        rows={8}
        keepLines
        spellCheck={false}
        {...field}
        ref={(element) => {
          ref(element);
          box.current = element;
        }}
      />
      {problems.length > 0 ? (
        <Notice kind="problem" title="Not saved" spoken>
          <ProblemList problems={problems} onGoToRow={(row) => box.current && selectRow(box.current, row)} />
        </Notice>
      ) : null}
      <SaveTrouble problem={save.error ? problemOf(save.error) : null} />
      <Button type="submit" busy={save.isPending} busyWords="Saving …">
        Save the start list
      </Button>
      {outcome === null ? null : (
        <Notice title="Saved" spoken>
          {outcome}
        </Notice>
      )}
    </form>
  );
}
