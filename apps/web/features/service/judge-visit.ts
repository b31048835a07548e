import type { EventReplica } from '@halfshaft/contract';
import {
  type CombinedVerdict,
  combineVerdicts,
  type JobCard,
  judgeReadings,
  judgeService,
  type LastDone,
  readGauges,
} from '@halfshaft/lifing';
import { type Task, taskOf, type WorkState } from '@halfshaft/worklog';
import { type LastRead, lastReadOf } from '../readings/last-read';
import { outAt } from '../stopped/out-at';
import { lastDoneAt } from './last-done-at';
import { readingQuestion } from './reading-question';
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
  /** What was read last at each place, by `slotKey`. */
  lastRead: ReadonlyMap<string, LastRead>;
}

/**
 * Every card of the car at this service, by its limits, by what happened and by what was read, the most urgent first. What
 * was done at this very service, or later, does not count here: a card that was due stays in its place and shows as done,
 * so that the list does not jump under a thumb. What was read or fitted here does. A car that is out asks for no work: of
 * its cards only those stay that somebody has taken or closed here.
 */
export function judgeVisit(replica: EventReplica, state: WorkState, visit: Visit): JudgedCard[] {
  const { entry, services, service, serviceIndex } = visit;
  const before = services.slice(0, serviceIndex);
  const until = { services: before, pointIndex: service.inIndex };
  const lastDone = lastDoneAt(replica, state, visit, until);
  const intervals = judgeService({ ...visitQuestion(replica, state, visit), lastDone });
  const reading = readingQuestion(replica, state, visit);
  const verdicts = combineVerdicts({
    intervals,
    triggers: triggerVerdicts(replica, state, visit),
    readings: judgeReadings(reading),
  });
  const gauges = readGauges(reading);
  const isOut = outAt(replica, state, visit) !== null;
  return verdicts.flatMap((judged) => {
    const card = entry.cards.find((each) => each.id === judged.cardId);
    if (!card) return [];
    const ref = {
      entryId: entry.entryId,
      serviceId: service.id,
      source: { kind: 'card', cardId: card.id },
    } as const;
    const task = taskOf(state, ref, card);
    if (isOut && task.state === 'open') return [];
    const lastRead = lastReadOf(card.id, gauges, visit, reading);
    return [{ card, judged, lastDone: lastDone.get(card.id) ?? null, task, lastRead }];
  });
}
