import type { ItineraryProblem } from '@halfshaft/itinerary';
import { useMutation } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { useForm } from 'react-hook-form';
import { useKeptForm } from '@/lib/keep-typed';

/** `words`: what was saved, in a sentence. */
export type ListAnswer<Saved extends object = object> =
  | ({ ok: true; words: string } & Saved)
  | { ok: false; problems: readonly ItineraryProblem[] };

export interface ListFormSetup<Saved extends object> {
  /** Names what is typed on this device. */
  keptAs: string;
  /** As it was saved last; empty where nothing was. */
  start: string;
  problemsOf: (source: string) => readonly ItineraryProblem[];
  /** Null: something else on the form stands in the way, and says so itself. */
  save: (source: string) => Promise<ListAnswer<Saved> | null>;
  onSaved: (answer: { words: string } & Saved) => void | Promise<void>;
}

/** A list that is pasted into a box: kept while it is typed, read before it is saved, told about by row and column. */
export function useListForm<Saved extends object = object>({
  keptAs,
  start,
  problemsOf,
  save,
  onSaved,
}: ListFormSetup<Saved>) {
  const form = useForm<{ source: string }>({ defaultValues: { source: start } });
  const kept = useKeptForm(keptAs, form);
  const [tried, setTried] = useState(false);
  /** What only the server found. */
  const [refused, setRefused] = useState<readonly ItineraryProblem[]>([]);
  const [outcome, setOutcome] = useState<string | null>(null);
  const box = useRef<HTMLTextAreaElement | null>(null);
  const saving = useMutation({ mutationFn: save });
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

  function startAfresh() {
    kept.clear();
    form.reset({ source: start });
  }

  const submit = form.handleSubmit(async (values) => {
    setTried(true);
    setOutcome(null);
    if (problemsOf(values.source).length > 0) return;
    const answer = await saving.mutateAsync(values.source).catch(() => null);
    if (answer && !answer.ok) setRefused(answer.problems);
    if (!answer?.ok) return;
    kept.clear();
    setTried(false);
    setOutcome(answer.words);
    await onSaved(answer);
  });

  function holdBox(element: HTMLTextAreaElement | null) {
    ref(element);
    box.current = element;
  }

  return {
    source,
    begin,
    startAfresh,
    restored: kept.restored,
    submit,
    box,
    field: { ...field, ref: holdBox },
    problems,
    error: saving.error,
    isSaving: saving.isPending,
    outcome,
  };
}

export type OpenListForm = ReturnType<typeof useListForm>;
