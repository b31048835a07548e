import type { CarFact } from '../car-fact';
import type { CardId } from '../model';
import { taskRefOf } from '../task-ref-of';
import type { LoggedEvent } from './logged-event';

/** The cards of which a fact says something of a part's life. */
function cardIdsIn(fact: CarFact): readonly CardId[] {
  switch (fact.kind) {
    case 'incident':
      return fact.brokenCardId === undefined ? [] : [fact.brokenCardId];
    case 'fitted':
    case 'modified':
      return [fact.cardId];
    case 'prepared':
      return fact.cardIds;
    case 'madeGood': {
      const { source } = taskRefOf(fact.of);
      return source.kind === 'card' ? [source.cardId] : [];
    }
    default:
      return [];
  }
}

/**
 * One event's log cut by card, read once however many cards are asked about: the work on the card and the facts that
 * speak of it, each in the order of the log.
 *
 * @example
 * partRecordsOf(loggedByCard(logged)('belt'), { cardId: 'belt', lookId: null }) // as partRecordsOf(logged, …)
 */
export function loggedByCard(logged: LoggedEvent): (cardId: CardId) => LoggedEvent {
  const done = groupsOf(logged.done, ({ cardId }) => [cardId]);
  const facts = groupsOf(logged.facts, ({ fact }) => cardIdsIn(fact));
  return (cardId) => ({ ...logged, done: done.get(cardId) ?? [], facts: facts.get(cardId) ?? [] });
}

function groupsOf<Row>(rows: readonly Row[], keysOf: (row: Row) => readonly CardId[]): Map<CardId, Row[]> {
  const groups = new Map<CardId, Row[]>();
  for (const row of rows) {
    for (const key of new Set(keysOf(row))) {
      const group = groups.get(key);
      if (group) group.push(row);
      else groups.set(key, [row]);
    }
  }
  return groups;
}
