import { type JobCard, jobDoneTriggersForCards } from '@halfshaft/lifing';
import type { TaskId, TaskRef } from './model';
import { taskIdOf } from './task-id-of';

/** What must be known of a car to say which of its work asks for other work to be done again. */
export interface CarOfCards {
  /** In the order of the car's list, so that a phone and the server name them in the same order. */
  cards: readonly Pick<JobCard, 'id' | 'starterId'>[];
}

/**
 * The tasks of the same service that no longer hold once this one is done or opened again: nuts that were signed for
 * before a wheel came off. The triggers of the car's cards say which.
 *
 * @example
 * reopensOf({ entryId: 'e7', serviceId: 'B', source: { kind: 'card', cardId: pads } }, car) // ['e7~B~card~nuts']
 */
export function reopensOf({ entryId, serviceId, source }: TaskRef, car: CarOfCards): TaskId[] {
  if (source.kind !== 'card') return [];
  const { cardId } = source;
  const followers = jobDoneTriggersForCards(car.cards).flatMap((trigger) =>
    trigger.where === 'service' && trigger.afterCardIds.includes(cardId) ? trigger.cardIds : [],
  );
  const others = [...new Set(followers)].filter((id) => id !== cardId);
  return others.map((id) => taskIdOf({ entryId, serviceId, source: { kind: 'card', cardId: id } }));
}
