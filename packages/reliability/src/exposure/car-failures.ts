import type { UnitHistory } from '../recurrence/mean-cumulative';
import type { CarHistory, PartQuestion } from './car-history';
import type { PartFailure } from './exposure';
import { watchCar } from './watch-car';

/** Every failure of one card's parts on one car, once each, in the order in which they were seen. */
export function failuresOf(car: CarHistory, question: PartQuestion): PartFailure[] {
  return watchCar(car, question).failures;
}

/** One car's failures of one card, as `meanCumulative` asks for them. */
export interface CarRecurrence extends UnitHistory {
  carId: string;
}

/**
 * What came again on each car. Distance begins where the log of the car does, not when the car was new, and goes on
 * whatever is changed: it asks how often a car has this trouble, not how long a part lasts. A failure found at a look
 * counts where it was found.
 *
 * @example
 * meanCumulative(recurrencesOf(cars, pads))
 */
export function recurrencesOf(cars: readonly CarHistory[], question: PartQuestion): CarRecurrence[] {
  return cars.map((car) => {
    const before = car.ranBefore[question.counter] ?? 0;
    const events = failuresOf(car, question).map(({ at }) => at - before);
    return { carId: car.carId, events, end: watchedBy(car, question.counter) };
  });
}

/** "Seen 3 times in 210 stage km; last at 640." In the counter's unit. */
export interface TimesSeen {
  times: number;
  /** How far the car ran while its log was kept. */
  watched: number;
  /** What the car had run in all when it was last seen, what it ran before the log included; null when it never was. */
  lastAt: number | null;
}

/**
 * How often a failure of this card was seen on one car.
 *
 * @example
 * timesSeen(car, pads) // { times: 3, watched: 210000, lastAt: 640000 }
 */
export function timesSeen(car: CarHistory, question: PartQuestion): TimesSeen {
  const failures = failuresOf(car, question);
  return {
    times: failures.length,
    watched: watchedBy(car, question.counter),
    lastAt: failures.at(-1)?.at ?? null,
  };
}

function watchedBy({ events }: CarHistory, counter: string): number {
  return events.reduce((sum, { counted }) => sum + (counted[counter]?.at(-1) ?? 0), 0);
}
