import type { Counter } from '../model';

/** A counter's own units in one unit of the table (metres in a km), and the figures that still name each of them. */
export const COUNTER_SCALE: Record<Counter, { factor: number; decimals: number }> = {
  services: { factor: 1, decimals: 0 },
  stages: { factor: 1, decimals: 0 },
  stageMetres: { factor: 1000, decimals: 3 },
  totalMetres: { factor: 1000, decimals: 3 },
  engineSeconds: { factor: 3600, decimals: 4 },
  days: { factor: 1, decimals: 0 },
  events: { factor: 1, decimals: 0 },
};

export const SECONDS_IN_MINUTE = 60;
/** A hundredth of a minute is less than a second, so two figures name each second. */
export const MINUTE_DECIMALS = 2;
/** Per mille in one percent. */
export const PER_MILLE_IN_PERCENT = 10;
