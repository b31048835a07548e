import type { Itinerary, ServiceId } from '@halfshaft/itinerary';
import type { TriggerReason } from './model';
import type { Call } from './questions';

export function reasonOf(
  { code, pointIndex, words }: Call,
  triggerId: string,
  nextChance: ServiceId | null,
  { itinerary }: { itinerary: Itinerary },
): TriggerReason {
  const point = pointIndex === null ? undefined : itinerary.points[pointIndex];
  const stageId = point?.kind === 'stage' ? point.id : null;
  return { code, triggerId, pointIndex, stageId, nextChance, words };
}
