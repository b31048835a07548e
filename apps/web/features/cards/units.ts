import type { Counter } from '@halfshaft/lifing';

export const SECONDS_IN_MINUTE = 60;

interface CounterUnit {
  /** As a choice behind the amount: "every 60 …". */
  label: string;
  /** How many of the counter's own units one typed unit is. */
  factor: number;
  /** Figures after the point that still name every whole unit. */
  decimals: number;
  /** A plausible amount, for the sentence that asks for one. */
  example: string;
}

/** Each counter in the unit a person types it in. */
export const COUNTER_UNITS: Record<Counter, CounterUnit> = {
  services: { label: 'services', factor: 1, decimals: 0, example: '1' },
  stages: { label: 'stages', factor: 1, decimals: 0, example: '4' },
  stageMetres: { label: 'stage km', factor: 1000, decimals: 3, example: '60' },
  totalMetres: { label: 'km, stages and road', factor: 1000, decimals: 3, example: '500' },
  engineSeconds: { label: 'engine hours', factor: 3600, decimals: 4, example: '2.5' },
  days: { label: 'days', factor: 1, decimals: 0, example: '1' },
  events: { label: 'events', factor: 1, decimals: 0, example: '3' },
};

/**
 * A whole amount in another unit, without zeros at the end.
 *
 * @example
 * writeAmount(62_500, 1000, 3) // '62.5'
 */
export function writeAmount(amount: number, factor: number, decimals: number): string {
  return String(Number((amount / factor).toFixed(decimals)));
}
