import type { PersonId } from '@halfshaft/worklog';
import * as z from '@/lib/zod';
import { useDraft } from '../bay/use-draft';
import { recordablePeople } from '../bay/use-record-for';
import type { Visit } from '../service/visit';
import type { LoadedWork } from '../work/work-page';

const chosenPeople = z.array(z.string());

/**
 * Who works on the car at this service, in the order of the team's list: as ticked on this phone, and until then as
 * many as the entry says. Never nobody: a sheet needs a column.
 */
export function useSheetPeople(
  { replica }: LoadedWork,
  visit: Visit,
): [PersonId[], (people: PersonId[]) => void] {
  const { entry, service } = visit;
  const key = `sheetPeople.${entry.entryId}.${service.id}`;
  const known = recordablePeople(replica.people).map(({ personId }) => personId);
  const usual = known.slice(0, Math.max(1, entry.people));
  const [ticked, setTicked] = useDraft(key, chosenPeople, []);
  const chosen = known.filter((personId) => ticked.includes(personId));
  return [chosen.length === 0 ? usual : chosen, setTicked];
}
