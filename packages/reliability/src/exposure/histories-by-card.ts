import type { CarHistory, PartRecord, WatchedEvent } from './car-history';

/** What a record speaks of: a card, or the way of the whole car. */
function cardOf(record: PartRecord): string | null {
  return record.kind === 'out' || record.kind === 'restarted' ? null : record.cardId;
}

/**
 * One car's history cut by card, read once however many cards are asked about: of each event what is said of that card
 * and of the car's way, in the order of the log. Every answer for a card is the same from its own part of the history.
 *
 * @example
 * const historyOf = historiesByCard(car);
 * failuresOf(historyOf('pads'), pads) // as failuresOf(car, pads)
 */
export function historiesByCard(car: CarHistory): (cardId: string) => CarHistory {
  const cut = car.events.map((event) => ({ event, recordsOf: cutRecords(event) }));
  return (cardId) => ({
    ...car,
    events: cut.map(({ event, recordsOf }) => ({ ...event, records: recordsOf(cardId) })),
  });
}

function cutRecords({ records }: WatchedEvent): (cardId: string) => PartRecord[] {
  const byCard = new Map<string | null, { order: number; record: PartRecord }[]>();
  for (const [order, record] of records.entries()) {
    const cardId = cardOf(record);
    const own = byCard.get(cardId);
    if (own) own.push({ order, record });
    else byCard.set(cardId, [{ order, record }]);
  }
  const ofWay = byCard.get(null) ?? [];
  return (cardId) =>
    [...(byCard.get(cardId) ?? []), ...ofWay]
      .sort((one, other) => one.order - other.order)
      .map(({ record }) => record);
}
