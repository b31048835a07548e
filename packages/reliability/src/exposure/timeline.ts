import { requireNumber } from '../require-number';
import type { CarHistory, PartRecord, WatchedEvent } from './car-history';
import type { Spot } from './exposure';

export type Happening = PartRecord | { kind: 'eventEnded'; finished: boolean };

/** One thing that happened, with what the car had run in all by then and at the point before. */
export interface Step {
  happening: Happening;
  total: number;
  totalBefore: number;
  spot: Spot;
}

/**
 * All that stands of one car's history in the order in which it came about, by one counter.
 *
 * @throws RangeError when amounts fall, a record lies at no point, or the car is driven on while it is out
 */
export function timelineOf(car: CarHistory, counter: string): Step[] {
  let base = car.ranBefore[counter] ?? 0;
  return car.events.flatMap((event) => {
    const counted = readCounted(event, counter);
    const steps = stepsOf(event, counted, base);
    base += counted.at(-1) ?? 0;
    requireStandstill(steps);
    return steps;
  });
}

function readCounted({ eventId, counted }: WatchedEvent, counter: string): readonly number[] {
  const amounts = counted[counter];
  if (!amounts?.length) throw new RangeError(`exposuresOf: nothing counts ${counter} at event ${eventId}.`);
  let before = 0;
  for (const amount of amounts) {
    requireNumber('exposuresOf', `an amount of ${counter}`, amount, 'notNegative');
    if (amount < before) throw new RangeError(`exposuresOf: ${counter} falls at event ${eventId}.`);
    before = amount;
  }
  return amounts;
}

function stepsOf(event: WatchedEvent, counted: readonly number[], base: number): Step[] {
  const stepAt = (happening: Happening, point: number): Step => {
    const amount = counted[point];
    if (amount === undefined)
      throw new RangeError(`exposuresOf: event ${event.eventId} has no point ${point}.`);
    const totalBefore = base + (counted[point - 1] ?? 0);
    return { happening, total: base + amount, totalBefore, spot: { eventId: event.eventId, point } };
  };
  const steps = event.records
    .filter(({ withdrawn }) => !withdrawn)
    .toSorted((one, other) => one.point - other.point)
    .map((record) => stepAt(record, record.point));
  return [...steps, stepAt({ kind: 'eventEnded', finished: event.finished }, counted.length - 1)];
}

/** Distance driven by a car that is out is a mistake of whoever counted: it would be given to parts that did not run it. */
function requireStandstill(steps: readonly Step[]): void {
  let outAt: number | null = null;
  for (const { happening, total, spot } of steps) {
    if (outAt !== null && total > outAt) {
      throw new RangeError(`exposuresOf: the car is driven on while it is out at event ${spot.eventId}.`);
    }
    if (happening.kind === 'out') outAt = total;
    if (happening.kind === 'restarted') outAt = null;
  }
}
