import type { Interval } from '../model';

// Every number in this folder that is not said to come from elsewhere: common practice, no source; the car builder's
// values come first, and the event's regulations above all.

export const EVERY_EVENT: Interval = { counter: 'events', every: 1, tolerance: 0 };

/** For work that only a trigger, a reading or a person calls for (night lamps, wet tyres, a look after an off): no limit. */
export const ONLY_WHEN_CALLED: Interval[] = [];

/** A limit of so many stage kilometres, and how far it may be overrun. */
export function everyStageKilometres(every: number, tolerance: number): Interval {
  return { counter: 'stageMetres', every: every * 1000, tolerance: tolerance * 1000 };
}

export function everyEngineHours(hours: number): Interval {
  return { counter: 'engineSeconds', every: hours * 3600, tolerance: 0 };
}

export const FOUR_WHEELS = ['FL', 'FR', 'RL', 'RR'];
export const QUARTER_OF_AN_HOUR = 900;
export const TWENTY_MINUTES = 1200;
/** Work nobody begins in less than this: the long halt at the end of a day. */
export const THREE_QUARTERS_OF_AN_HOUR = 2700;
/** No service is this long: the work belongs in the workshop. */
export const WORKSHOP_ONLY = 36_000;

export const UNDER_CAR = 'Nobody under the car until it stands on stands.';
export const HOT_OIL = 'Hot oil.';
