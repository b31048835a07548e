import type { Counter, Counters } from './model';

/** All counters at zero. A fresh object each time, so that it may be added to. */
export function emptyCounters(): Counters {
  return { stages: 0, stageMetres: 0, totalMetres: 0, engineSeconds: 0, services: 0, days: 0, events: 0 };
}

export const COUNTER_NAMES = Object.keys(emptyCounters()) as readonly (keyof Counters)[];

/** Amounts of two sets of counters added, one by one. */
export function addCounters(first: Counters, second: Counters): Counters {
  const sum = emptyCounters();
  for (const name of COUNTER_NAMES) sum[name] = first[name] + second[name];
  return sum;
}

/** Thousandths to whole units, cut. Wear is summed in thousandths so that per-mille multipliers stay exact. */
export function wholeUnits(thousandths: Counters): Counters {
  const whole = emptyCounters();
  for (const name of COUNTER_NAMES) whole[name] = Math.floor(thousandths[name] / 1000);
  return whole;
}

/** Stages, services, days and events come whole: no point half way along a road is a third of a service. */
export function isInPieces(counter: Counter): counter is 'stages' | 'services' | 'days' | 'events' {
  return counter === 'stages' || counter === 'services' || counter === 'days' || counter === 'events';
}
