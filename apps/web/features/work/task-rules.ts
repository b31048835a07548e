import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import { servicesOf } from '@halfshaft/itinerary';
import type { JobCard } from '@halfshaft/lifing';
import { type EntryId, reopensOf, type TaskRef, type TaskRules, type WorkState } from '@halfshaft/worklog';

export function findEntry(replica: EventReplica, entryId: EntryId): EntryReplica | null {
  return replica.entries.find((entry) => entry.entryId === entryId) ?? null;
}

/** What `decide` must know of a task, from the copy of the event on this device; null when it is not on it. */
export function taskRulesOf(replica: EventReplica, state: WorkState, ref: TaskRef): TaskRules | null {
  const entry = findEntry(replica, ref.entryId);
  if (!entry) return null;
  const serviceStands = servicesOf(replica.itinerary).some((service) => service.id === ref.serviceId);
  if (ref.source.kind === 'snag') {
    const known = state.snags.has(ref.source.snagId);
    return known ? { needsSignature: false, requiredReadings: [], reopens: [], serviceStands } : null;
  }
  const { cardId } = ref.source;
  const card = entry.cards.find((each) => each.id === cardId);
  const reopens = reopensOf(ref, entry);
  return card ? { ...rulesOfCard(card), reopens, serviceStands } : null;
}

function rulesOfCard(card: JobCard): Omit<TaskRules, 'serviceStands' | 'reopens'> {
  const required = card.readings.filter((reading) => reading.required);
  return {
    needsSignature: card.needsSignature,
    requiredReadings: required.flatMap(placesOf),
  };
}

function placesOf({ id, positions }: JobCard['readings'][number]): TaskRules['requiredReadings'] {
  if (positions.length === 0) return [{ readingId: id, position: null }];
  return positions.map((position) => ({ readingId: id, position }));
}
