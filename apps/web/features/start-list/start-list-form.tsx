import { readStartList } from '@halfshaft/itinerary';
import { useQueryClient } from '@tanstack/react-query';
import { TextArea } from '@/components/text-area';
import { api, client } from '@/lib/api';
import { ListEnd } from '../organiser/list-end';
import { type ListAnswer, useListForm } from '../organiser/use-list-form';
import styles from './start-list.module.css';

export interface StartListFormProps {
  own: { organiserId: string; publishedEventId: string };
  section: number;
  /** As it was pasted last; empty where there is no list yet. */
  saved: string;
}

/** The box of one section's list, with what is wrong in it by row and column. What is typed is kept. */
export function StartListForm({ own, section, saved }: StartListFormProps) {
  const queries = useQueryClient();
  const list = useListForm({
    keptAs: `startList.${own.publishedEventId}.${section}`,
    start: saved,
    problemsOf: (source) => readStartList(source, section).problems,
    save,
    onSaved: () => queries.invalidateQueries({ queryKey: api.startList.list.queryKey(own) }),
  });

  async function save(source: string): Promise<ListAnswer> {
    const answer = await client.startList.save.mutate({ ...own, section, source });
    if (!answer.ok) return answer;
    const words = answer.cars === 1 ? '1 car is on the list.' : `${answer.cars} cars are on the list.`;
    return { ok: true, words };
  }

  return (
    <form noValidate className={styles.form} onSubmit={list.submit}>
      <TextArea
        label={`Cars in the order of Section ${section}`}
        hint="A row for each car: number, start position. A third column may name another section."
        rows={8}
        keepLines
        spellCheck={false}
        {...list.field}
      />
      <ListEnd list={list} saveWords="Save the start list" />
    </form>
  );
}
