import type { EventReplica } from '@halfshaft/contract';
import { type Fact, judgeTriggers, type TriggerVerdict, triggersForCards } from '@halfshaft/lifing';
import { runsOf, triggerFactsOf, type WorkState } from '@halfshaft/worklog';
import { plannedOf } from '../conditions/planned-of';
import { serviceNameOf } from '../work/names';
import type { Visit } from './visit';

/**
 * What the triggers say of the cards at this service. Work done here calls for what follows it, but a card's own work here
 * does not count against itself: what was due stays in its place and shows as done.
 */
export function triggerVerdicts(replica: EventReplica, state: WorkState, visit: Visit): TriggerVerdict[] {
  const { entry, service } = visit;
  const facts = triggerFactsOf(state, replica.itinerary, entry.entryId);
  const question = triggerQuestion(replica, state, visit);
  const doneHere = new Set(facts.flatMap((fact) => cardDoneAt(fact, service.inIndex)));
  const others = judgeTriggers({ ...question, facts }).filter(({ cardId }) => !doneHere.has(cardId));
  const own = [...doneHere].flatMap((cardId) => {
    const before = facts.filter((fact) => !cardDoneAt(fact, service.inIndex).includes(cardId));
    return judgeTriggers({ ...question, facts: before }).filter((verdict) => verdict.cardId === cardId);
  });
  return [...others, ...own];
}

/** All that judging triggers needs, less what has happened. */
export function triggerQuestion(replica: EventReplica, state: WorkState, visit: Visit) {
  const { entry, services, serviceIndex } = visit;
  const { drive, surface } = entry.car;
  return {
    itinerary: replica.itinerary,
    services,
    serviceIndex,
    position: entry.startPosition,
    cards: entry.cards,
    runs: runsOf(state.stages.values(), entry.entryId),
    plannedConditions: plannedOf(replica),
    triggers: triggersForCards(entry.cards, drive, surface),
    serviceName: (id: string) => serviceNameOf(replica, id),
  };
}

function cardDoneAt(fact: Fact, pointIndex: number): string[] {
  return fact.kind === 'done' && fact.pointIndex === pointIndex ? [fact.cardId] : [];
}
