import type { EventReplica } from '@halfshaft/contract';
import {
  type CombinedVerdict,
  combineVerdicts,
  type JobCard,
  judgeService,
  type LastDone,
} from '@halfshaft/lifing';
import { lastDoneOf, type Task, taskOf, type WorkState } from '@halfshaft/worklog';
import { triggerVerdicts } from './trigger-verdicts';
import type { Visit } from './visit';
import { visitQuestion } from './visit-question';

/** A card as it stands at one service. */
export interface JudgedCard {
  card: JobCard;
  judged: CombinedVerdict;
  /** Before this service; null: before the event, nothing carried. */
  lastDone: LastDone | null;
  task: Task;
}

/**
 * Every card of the car at this service, by its limits and by what happened, the most urgent first. What was done at this
 * very service, or later, does not count here: a card that was due stays in its place and shows as done, so that the list
 * does not jump under a thumb.
 */
export function judgeVisit(replica: EventReplica, state: WorkState, visit: Visit): JudgedCard[] {
  const { entry, services, service, serviceIndex } = visit;
  const before = services.slice(0, serviceIndex);
  const lastDone = lastDoneOf(state.tasks.values(), before, entry.entryId, entry.carried);
  const intervals = judgeService({ ...visitQuestion(replica, state, visit), lastDone });
  const verdicts = combineVerdicts({ intervals, triggers: triggerVerdicts(replica, state, visit) });
  return verdicts.flatMap((judged) => {
    const card = entry.cards.find((each) => each.id === judged.cardId);
    if (!card) return [];
    const ref = {
      entryId: entry.entryId,
      serviceId: service.id,
      source: { kind: 'card', cardId: card.id },
    } as const;
    return [{ card, judged, lastDone: lastDone.get(card.id) ?? null, task: taskOf(state, ref, card) }];
  });
}
