import type { EventReplica } from '@halfshaft/contract';
import { type Fact, judgeTriggers, type TriggerVerdict, triggersForCards } from '@halfshaft/lifing';
import { triggerFactsOf, type WorkState } from '@halfshaft/worklog';
import { serviceNameOf } from '../work/names';
import type { Visit } from './visit';
import { visitQuestion } from './visit-question';

/**
 * What the triggers say of the cards at this service. Work done here calls for what follows it, but a card's own work here
 * does not count against itself: what was due stays in its place and shows as done.
 */
export function triggerVerdicts(replica: EventReplica, state: WorkState, visit: Visit): TriggerVerdict[] {
  const { entry, service } = visit;
  const facts = triggerFactsOf(state, replica.itinerary, entry.entryId);
  const question = triggerQuestion(replica, state, visit);
  const doneHere = new Set(facts.flatMap((fact) => cardDoneAt(fact, service.inIndex)));
  const others = question.cards.filter(({ id }) => !doneHere.has(id));
  const own = question.cards.filter(({ id }) => doneHere.has(id));
  const before = (cardId: string) =>
    facts.filter((fact) => !cardDoneAt(fact, service.inIndex).includes(cardId));
  return [
    ...judgeTriggers({ ...question, cards: others, facts }),
    ...own.flatMap((card) => judgeTriggers({ ...question, cards: [card], facts: before(card.id) })),
  ];
}

/** All that judging triggers needs, less what has happened. */
export function triggerQuestion(replica: EventReplica, state: WorkState, visit: Visit) {
  const { cards } = visit.entry;
  return {
    ...visitQuestion(replica, state, visit),
    triggers: triggersForCards(cards),
    serviceName: (id: string) => serviceNameOf(replica, id),
  };
}

function cardDoneAt(fact: Fact, pointIndex: number): string[] {
  return fact.kind === 'done' && fact.pointIndex === pointIndex ? [fact.cardId] : [];
}
