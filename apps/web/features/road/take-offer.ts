import type { DebriefOffer, PersonId } from '@halfshaft/worklog';
import { stagesBefore } from '../bay/stages-before';
import { factPlaceOf } from '../bay/when-field';
import type { Visit } from '../service/visit';
import { newId } from '../work/new-id';
import type { LoadedWork } from '../work/work-page';

/** Makes of an offer what it says, and returns the id of the snag or fact. */
export function takeOffer(
  offer: DebriefOffer,
  { work, visit, by }: { work: LoadedWork; visit: Visit; by: PersonId },
): string {
  const id = newId();
  const { entryId } = visit.entry;
  const serviceId = visit.service.id;
  if (offer.kind === 'incident') {
    const lastStage = stagesBefore(work.replica, work.state, visit).at(-1)?.stage.id ?? '';
    work.act('recordFact', { factId: id, entryId, at: factPlaceOf(lastStage, serviceId), fact: offer }, by);
  } else {
    const { place, words } = offer;
    work.act('raiseSnag', { snagId: id, entryId, serviceId, place, words, urgent: false }, by);
  }
  return id;
}
