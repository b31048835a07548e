import type { CarFact, EntryId, RecordedFact, WorkState } from '@halfshaft/worklog';

type OutFact = Extract<CarFact, { kind: 'out' }>;

/** The last word of a car being out, with its place, as the log stands; null while the car drives. */
export function lastOut(
  state: Pick<WorkState, 'facts'>,
  entryId: EntryId,
): (RecordedFact & { fact: OutFact }) | null {
  const [last] = [...state.facts.values()]
    .filter(({ fact }) => fact.kind === 'out' || fact.kind === 'restarted')
    .filter((recorded) => recorded.entryId === entryId && !recorded.withdrawn)
    .sort((one, other) => other.changedSeq - one.changedSeq);
  return last?.fact.kind === 'out' ? { ...last, fact: last.fact } : null;
}

/**
 * What was said last of a car being out, as the log stands; null while it drives.
 *
 * @example
 * outNow(state, entryId)?.forDay // true
 */
export function outNow(state: Pick<WorkState, 'facts'>, entryId: EntryId): OutFact | null {
  return lastOut(state, entryId)?.fact ?? null;
}
