import { dueAt, type EpochSeconds, type ServiceId } from '@halfshaft/itinerary';
import { nextChance } from './next-chance';
import type { CardQuestion } from './questions';

/** How far a card must last: to the next service where it can be done, or else to the end of the event. */
export interface Horizon {
  /** Null: the end of the event. */
  serviceId: ServiceId | null;
  pointIndex: number;
  at: EpochSeconds;
}

export function horizonOf(question: CardQuestion): Horizon {
  const { itinerary, position } = question;
  const next = nextChance(question.card, question.services, question.serviceIndex);
  const pointIndex = next?.inIndex ?? itinerary.points.length - 1;
  return { serviceId: next?.id ?? null, pointIndex, at: dueAt(itinerary, pointIndex, position) };
}
