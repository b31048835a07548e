import type { CarFact, RecordedFact } from './car-fact';
import type { LogEntry } from './entry';
import type { EntryId, TaskRef } from './model';
import type { WorkState } from './state';
import { taskIdOf } from './task-id-of';
import { taskRefOf } from './task-ref-of';

/** A photo as the log knows it; the picture itself may still be on the phone that took it. */
export type Photo = RecordedFact & { fact: Extract<CarFact, { kind: 'photo' }> };

/** The photos of one car that were not taken back, in the order of the log. */
export function photosOfCar(state: WorkState, entryId: EntryId): Photo[] {
  return [...state.facts.values()]
    .filter((recorded) => isPhoto(recorded))
    .filter((photo) => photo.entryId === entryId && !photo.withdrawn)
    .sort((one, other) => one.changedSeq - other.changedSeq);
}

/**
 * The photos of one piece of work. A card's belong to the one service; a snag's stay with it from service to service.
 *
 * @example
 * photosOf(state, leakAtServiceC).length // 1, taken at Service B
 */
export function photosOf(state: WorkState, ref: TaskRef): Photo[] {
  return photosOfCar(state, ref.entryId).filter(({ fact }) => isOf(ref, fact.of));
}

/** The photo an entry of the log speaks of, unless it was taken back; null when it speaks of none. */
export function photoIn(state: WorkState, { body }: Pick<LogEntry, 'body'>): Photo | null {
  const recorded = body.kind === 'factRecorded' ? state.facts.get(body.factId) : undefined;
  return recorded && isPhoto(recorded) && !recorded.withdrawn ? recorded : null;
}

function isPhoto(recorded: RecordedFact): recorded is Photo {
  return recorded.fact.kind === 'photo';
}

function isOf(ref: TaskRef, taskId: string): boolean {
  if (ref.source.kind === 'card') return taskIdOf(ref) === taskId;
  const { source } = taskRefOf(taskId);
  return source.kind === 'snag' && source.snagId === ref.source.snagId;
}
