import type { LoggedEvent } from './logged-event';
import { partIdOf, partOfId, type WatchedPart } from './part-of';

/**
 * The parts of a car of which the log says anywhere that they failed, each once, in the order in which that was said
 * first. Whether it was a failure after all is for the rules to say.
 *
 * @example
 * failedPartsOf(events) // [{ cardId: 'belt', lookId: null }, { cardId: 'corner', lookId: 'hose' }]
 */
export function failedPartsOf(events: readonly Pick<LoggedEvent, 'done' | 'facts'>[]): WatchedPart[] {
  const found = events.flatMap(({ done, facts }) => [...foundIn(done), ...toldIn(facts)]);
  return [...new Set(found.map(partIdOf))].map(partOfId);
}

function foundIn(done: LoggedEvent['done']): WatchedPart[] {
  return done.flatMap(({ cardId, findings }) =>
    findings
      .filter(({ grade }) => grade === 'needsWork' || grade === 'temporaryRepair')
      .map(({ lookId }) => ({ cardId, lookId })),
  );
}

function toldIn(facts: LoggedEvent['facts']): WatchedPart[] {
  return facts.flatMap(({ fact }) => {
    if (fact.kind === 'incident' && fact.brokenCardId !== undefined) {
      return [{ cardId: fact.brokenCardId, lookId: null }];
    }
    if (fact.kind === 'out' && fact.cardId !== null) return [{ cardId: fact.cardId, lookId: null }];
    const failed = fact.kind === 'fitted' && (fact.because === 'wornOut' || fact.because === 'broke');
    return failed ? [{ cardId: fact.cardId, lookId: null }] : [];
  });
}
