import type { EventReplica } from '@halfshaft/contract';
import {
  type CrewJob,
  combinedReasonInWords,
  crewCardIds,
  crewListOutside,
  type JobCard,
} from '@halfshaft/lifing';
import { triggerFactsOf, type WorkState } from '@halfshaft/worklog';
import { lastDoneAt } from './last-done-at';
import { reasonNamesOf } from './time-in-words';
import { triggerQuestion } from './trigger-verdicts';
import type { Visit } from './visit';

export interface CrewLine {
  card: JobCard;
  /** Sentences without a full stop. */
  why: string[];
}

/**
 * What the crew must look at at the first halt after this service. Null when another service or the end of the event
 * comes before any halt.
 */
export function crewJobsAfter(replica: EventReplica, state: WorkState, visit: Visit): CrewLine[] | null {
  const { entry, services, service, serviceIndex } = visit;
  const pointIndex = service.outIndex + 1;
  const isInService = services.some((each) => each.inIndex <= pointIndex && pointIndex < each.outIndex);
  if (pointIndex >= replica.itinerary.points.length || isInService) return null;
  const { serviceIndex: _, ...question } = triggerQuestion(replica, state, visit);
  const soFar = services.slice(0, serviceIndex + 1);
  const jobs = crewListOutside({
    ...question,
    pointIndex,
    lastDone: lastDoneAt(replica, state, visit, { services: soFar, pointIndex }),
    facts: triggerFactsOf(state, replica.itinerary, entry.entryId),
    doableIds: crewCardIds(entry.cards),
  });
  return jobs.flatMap((job) => lineOf(job, replica, visit));
}

function lineOf(job: CrewJob, replica: EventReplica, visit: Visit): CrewLine[] {
  const card = visit.entry.cards.find(({ id }) => id === job.cardId);
  const names = reasonNamesOf(replica, visit.inAt);
  const asks = job.reasons.filter(({ reason }) => reason.code !== 'reaches' && reason.code !== 'lasts');
  return card ? [{ card, why: asks.map((reason) => combinedReasonInWords(reason, names)) }] : [];
}
