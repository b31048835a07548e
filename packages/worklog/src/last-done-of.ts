import type { ServiceWindow } from '@halfshaft/itinerary';
import type { Counters, LastDone } from '@halfshaft/lifing';
import type { FittedAt } from './fitted-at';
import type { CardId, EntryId, Task } from './model';

/**
 * When each card of one car was last done at this event: at the latest service whose task for it is done, or where new
 * parts went on all round if that was later. A card with neither keeps the wear it carried in. A task of a service the
 * itinerary no longer has is passed over.
 *
 * @param carried by card id: wear brought along from before the event
 * @param fitted of `fittedAt`; left out, new parts without the card done count for nothing
 * @example
 * lastDoneOf(state.tasks.values(), servicesOf(itinerary), entryId, carried).get('nuts') // { pointIndex: 9, carried: null }
 */
export function lastDoneOf(
  tasks: Iterable<Task>,
  services: readonly ServiceWindow[],
  entryId: EntryId,
  carried: Readonly<Record<CardId, Partial<Counters>>>,
  fitted: readonly FittedAt[] = [],
): Map<CardId, LastDone> {
  const lastDone = new Map<CardId, LastDone>(
    Object.entries(carried).map(([cardId, wear]) => [cardId, { pointIndex: null, carried: wear }]),
  );
  const inIndexOf = new Map(services.map((service) => [service.id, service.inIndex]));
  for (const { ref, state } of tasks) {
    if (state !== 'done' || ref.entryId !== entryId || ref.source.kind !== 'card') continue;
    const pointIndex = inIndexOf.get(ref.serviceId);
    if (pointIndex === undefined) continue;
    note(lastDone, ref.source.cardId, pointIndex);
  }
  for (const { cardId, pointIndex } of fitted) note(lastDone, cardId, pointIndex);
  return lastDone;
}

function note(lastDone: Map<CardId, LastDone>, cardId: CardId, pointIndex: number): void {
  const known = lastDone.get(cardId)?.pointIndex ?? -1;
  if (pointIndex > known) lastDone.set(cardId, { pointIndex, carried: null });
}
