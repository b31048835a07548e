import type { PersonId } from '@halfshaft/worklog';
import { judgeVisit } from '../service/judge-visit';
import { snagsOfCar } from '../service/snags-of-car';
import { reasonNamesOf } from '../service/time-in-words';
import type { Visit } from '../service/visit';
import type { LoadedWork } from '../work/work-page';
import { type SheetOfService, sheetRows, type VisitPlan } from './sheet-rows';

/** The rows of one service as it now stands, for these people. */
export function sheetOfVisit(
  { replica, state }: Pick<LoadedWork, 'replica' | 'state'>,
  visit: Visit,
  people: readonly PersonId[],
  plan: VisitPlan | null,
): SheetOfService {
  const { entry, service } = visit;
  const ofCar = [...state.snags.values()].filter((snag) => snag.entryId === entry.entryId);
  return sheetRows({
    cards: judgeVisit(replica, state, visit),
    cardIds: entry.cards.map((card) => card.id),
    snags: snagsOfCar(state, entry.entryId, service.id),
    snagIds: ofCar.map((snag) => snag.id),
    people,
    plan,
    names: reasonNamesOf(replica, visit.inAt),
  });
}
