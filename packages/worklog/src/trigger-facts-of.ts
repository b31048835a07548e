import type { Itinerary } from '@halfshaft/itinerary';
import type { Fact } from '@halfshaft/lifing';
import type { RecordedFact } from './car-fact';
import { closingSeqs } from './closing-seqs';
import type { EntryId } from './model';
import { type PointOf, pointFinder } from './point-of-place';
import { repairsOf } from './repairs-of';
import type { WorkState } from './state';

/**
 * What has happened to one car, as the triggers of lifing ask for it, in the order of the log: cards done, incidents, new
 * parts, temporary repairs and whether they were made good. A fact at a stage or service that the itinerary no longer has
 * is passed over, since it has no point to count from; the log still tells it.
 *
 * @param state the whole state of the event, not a slice
 * @example
 * triggerFactsOf(state, itinerary, entryId) // [{ kind: 'incident', code: 'hardLanding', pointIndex: 5 }]
 */
export function triggerFactsOf(state: WorkState, itinerary: Itinerary, entryId: EntryId): Fact[] {
  const pointOf = pointFinder(itinerary);
  const placed = [
    ...doneIn(state, entryId, pointOf),
    ...recordedIn(state, entryId, pointOf),
    ...repairsIn(state, entryId, pointOf),
  ];
  return placed.sort((one, other) => one.seq - other.seq).map(({ fact }) => fact);
}

interface PlacedFact {
  seq: number;
  fact: Fact;
}

function doneIn(state: WorkState, entryId: EntryId, pointOf: PointOf): PlacedFact[] {
  const closedAt = closingSeqs(state);
  return [...state.tasks.values()].flatMap(({ id, ref, state: now, changedSeq }) => {
    const pointIndex = pointOf({ kind: 'service', serviceId: ref.serviceId });
    if (now !== 'done' || ref.entryId !== entryId || ref.source.kind !== 'card' || pointIndex === null)
      return [];
    const fact = { kind: 'done' as const, cardId: ref.source.cardId, pointIndex };
    return [{ seq: closedAt.get(id) ?? changedSeq, fact }];
  });
}

function recordedIn(state: WorkState, entryId: EntryId, pointOf: PointOf): PlacedFact[] {
  return [...state.facts.values()].flatMap((recorded) => {
    const pointIndex = pointOf(recorded.at);
    if (recorded.entryId !== entryId || recorded.withdrawn || pointIndex === null) return [];
    const fact = factOf(recorded, pointIndex);
    return fact ? [{ seq: recorded.changedSeq, fact }] : [];
  });
}

function factOf({ fact }: RecordedFact, pointIndex: number): Fact | null {
  if (fact.kind === 'incident') return { kind: 'incident', code: fact.code, pointIndex };
  return fact.kind === 'fitted' ? { kind: 'fitted', cardId: fact.cardId, pointIndex } : null;
}

function repairsIn(state: WorkState, entryId: EntryId, pointOf: PointOf): PlacedFact[] {
  return repairsOf(state, entryId, 'all').flatMap(({ task, words, madeGood }) => {
    const { serviceId, source } = task.ref;
    const pointIndex = pointOf({ kind: 'service', serviceId });
    if (source.kind !== 'card' || pointIndex === null) return [];
    // Made good somewhere the itinerary has no longer: made good all the same, from the repair on.
    const madeGoodAt = madeGood ? (pointOf(madeGood.at) ?? pointIndex) : null;
    const fact = { kind: 'temporaryRepair' as const, cardId: source.cardId, words, pointIndex, madeGoodAt };
    return [{ seq: task.changedSeq, fact }];
  });
}
