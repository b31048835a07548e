import type { EpochSeconds } from '@halfshaft/itinerary';

const SECONDS_IN_MINUTE = 60;
/** Whole minutes before the out-time; common practice, no source. The same order of steps whoever is there. */
const STEPS = [
  { words: 'Wheels on, down', minutesBefore: 5 },
  { words: 'Torqued, signed', minutesBefore: 3 },
];

export interface CallOffStep {
  words: string;
  at: EpochSeconds;
}

/**
 * The last steps before the car must leave, with the minute each must begin; none that would begin before the car is in.
 *
 * @example
 * callOffSteps(0, 1200) // [{ words: 'Wheels on, down', at: 900 }, { words: 'Torqued, signed', at: 1020 }]
 */
export function callOffSteps(inAt: EpochSeconds, dueOut: EpochSeconds): CallOffStep[] {
  return STEPS.map(({ words, minutesBefore }) => ({
    words,
    at: dueOut - minutesBefore * SECONDS_IN_MINUTE,
  })).filter(({ at }) => at >= inAt);
}
