import { type Itinerary, readRetirementList } from '@halfshaft/itinerary';
import { useQueryClient } from '@tanstack/react-query';
import { api, client } from '@/lib/api';
import { ListForm } from '../organiser/list-form';
import type { OwnEvent } from '../organiser/list-page';
import { BeginFromStartList } from './begin-from-start-list';

export interface RetirementFormProps {
  own: OwnEvent;
  itinerary: Itinerary;
  /** As it was pasted last; null while there is none. */
  saved: { source: string; savedAt: number } | null;
}

/** Who started, who stopped, where and why: pasted, or begun from the start list. */
export function RetirementForm({ own, itinerary, saved }: RetirementFormProps) {
  const queries = useQueryClient();
  async function save(source: string, replaces: number | null) {
    const answer = await client.retirement.save.mutate({ ...own, source, replaces });
    if (!answer.ok) return answer;
    await queries.invalidateQueries({ queryKey: api.retirement.pathKey() });
    const { cars, savedAt } = answer;
    const words = cars === 1 ? '1 car is on the list.' : `${cars} cars are on the list.`;
    return { ok: true as const, savedAt, words };
  }
  return (
    <ListForm
      keptAs={`retirements.${own.publishedEventId}`}
      label="Who started, who stopped, where and why"
      hint="Paste it from a spreadsheet: a row of headings, then a row for each car. Leave out the names of people."
      saveWords="Save the list"
      fileWords="a list of cars"
      saved={saved}
      problemsOf={(source) => readRetirementList(source, itinerary).problems}
      save={save}
    >
      {(source, begin) => (source === '' ? <BeginFromStartList own={own} onBegin={begin} /> : null)}
    </ListForm>
  );
}
