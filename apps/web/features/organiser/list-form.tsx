import type { ItineraryProblem } from '@halfshaft/itinerary';
import { type ReactNode, useState } from 'react';
import { FileField } from '@/components/file-field';
import { TextArea } from '@/components/text-area';
import { textOfFile } from '@/lib/text-of-file';
import { RestoredNotice } from '../events/restored-notice';
import { ListEnd } from './list-end';
import styles from './list-form.module.css';
import { type ListAnswer, useListForm } from './use-list-form';

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
  save: (source: string, replaces: number | null) => Promise<ListAnswer<{ savedAt: number }> | null>;
  /** Stands between the box and the button. */
  children?: (source: string, begin: (text: string) => void) => ReactNode;
}

/** The box of an organiser's list, with what is wrong in it by row and column. What is typed is kept. */
export function ListForm(props: ListFormProps) {
  const { keptAs, label, hint, saveWords, fileWords, saved, problemsOf, children } = props;
  /** The list that was on this page when it was opened: a newer one of somebody else is not replaced unseen. */
  const [replaces, setReplaces] = useState(saved?.savedAt ?? null);
  const [fileTrouble, setFileTrouble] = useState<string | undefined>(undefined);
  const list = useListForm({
    keptAs,
    start: saved?.source ?? '',
    problemsOf,
    save: (source) => props.save(source, replaces),
    onSaved: ({ savedAt }) => setReplaces(savedAt),
  });

  async function take(file: File) {
    const read = await textOfFile(file, fileWords);
    setFileTrouble(read.ok ? undefined : read.says);
    if (read.ok) list.begin(read.text);
  }

  return (
    <form noValidate className={styles.form} onSubmit={list.submit}>
      <RestoredNotice restored={list.restored} onStartAfresh={list.startAfresh} />
      <TextArea label={label} hint={hint} rows={10} keepLines spellCheck={false} {...list.field} />
      <FileField
        label="Or a CSV file"
        accept=".csv,.txt,.tsv,text/csv,text/plain"
        error={fileTrouble}
        onPick={take}
      />
      {children?.(list.source, list.begin)}
      <ListEnd list={list} saveWords={saveWords} look="main" />
    </form>
  );
}
