import type { ItineraryProblem } from '@halfshaft/itinerary';
import { useMutation } from '@tanstack/react-query';
import { type ReactNode, useRef, useState } from 'react';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { FileField } from '@/components/file-field';
import { Notice } from '@/components/notice';
import { TextArea } from '@/components/text-area';
import { problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { textOfFile } from '@/lib/text-of-file';
import { RestoredNotice } from '../events/restored-notice';
import { SaveTrouble } from '../events/trouble';
import { ProblemList } from '../itinerary/problem-list';
import { selectRow } from '../itinerary/select-row';
import styles from './list-form.module.css';

/** `words`: what was saved, in a sentence. */
export type ListAnswer =
  | { ok: true; savedAt: number; words: string }
  | { ok: false; problems: readonly ItineraryProblem[] };

export interface ListFormProps {
  /** Names what is typed on this device. */
  keptAs: string;
  label: string;
  hint: string;
  saveWords: string;
  /** What a file of it holds: "a list of times". */
  fileWords: string;
  /** As it was pasted last; null while there is none. */
  saved: { source: string; savedAt: number } | null;
  problemsOf: (source: string) => readonly ItineraryProblem[];
  /** Null: something else on the form stands in the way, and says so itself. */
  save: (source: string, replaces: number | null) => Promise<ListAnswer | null>;
  /** Stands between the box and the button. */
  children?: (source: string, begin: (text: string) => void) => ReactNode;
}

/** The box of an organiser's list, with what is wrong in it by row and column. What is typed is kept. */
export function ListForm(props: ListFormProps) {
  const { keptAs, label, hint, saveWords, fileWords, saved, problemsOf, children } = props;
  const form = useForm<{ source: string }>({ defaultValues: { source: saved?.source ?? '' } });
  const kept = useKeptForm(keptAs, form);
  /** The list that was on this page when it was opened: a newer one of somebody else is not replaced unseen. */
  const [replaces, setReplaces] = useState(saved?.savedAt ?? null);
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<readonly ItineraryProblem[]>([]);
  const [outcome, setOutcome] = useState<string | null>(null);
  const [fileTrouble, setFileTrouble] = useState<string | undefined>(undefined);
  const box = useRef<HTMLTextAreaElement | null>(null);
  const save = useMutation({ mutationFn: (source: string) => props.save(source, replaces) });
  const source = form.watch('source');
  // Not before it was tried: while a list is being typed its last row is never whole.
  const problems = tried ? [...problemsOf(source), ...refused] : [];
  const { ref, ...field } = form.register('source', { onChange: forget });

  function forget() {
    setOutcome(null);
    setRefused([]);
  }

  function begin(text: string) {
    forget();
    form.setValue('source', text, { shouldDirty: true });
  }

  async function take(file: File) {
    const read = await textOfFile(file, fileWords);
    setFileTrouble(read.ok ? undefined : read.says);
    if (read.ok) begin(read.text);
  }

  const submit = form.handleSubmit(async (values) => {
    setTried(true);
    setOutcome(null);
    if (problemsOf(values.source).length > 0) return;
    const answer = await save.mutateAsync(values.source).catch(() => null);
    if (answer && !answer.ok) setRefused(answer.problems);
    if (!answer?.ok) return;
    kept.clear();
    setTried(false);
    setReplaces(answer.savedAt);
    setOutcome(answer.words);
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
        label={label}
        hint={hint}
        rows={10}
        keepLines
        spellCheck={false}
        {...field}
        ref={(element) => {
          ref(element);
          box.current = element;
        }}
      />
      <FileField
        label="Or a CSV file"
        accept=".csv,.txt,.tsv,text/csv,text/plain"
        error={fileTrouble}
        onPick={take}
      />
      {children?.(source, begin)}
      {problems.length > 0 ? (
        <Notice kind="problem" title="Not saved" spoken>
          <ProblemList problems={problems} onGoToRow={(row) => box.current && selectRow(box.current, row)} />
        </Notice>
      ) : null}
      <SaveTrouble problem={save.error ? problemOf(save.error) : null} />
      <Button type="submit" look="main" busy={save.isPending} busyWords="Saving …">
        {saveWords}
      </Button>
      {outcome === null ? null : (
        <Notice title="Saved" spoken>
          {outcome}
        </Notice>
      )}
    </form>
  );
}
