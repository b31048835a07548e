import { amountInWords } from '@halfshaft/lifing';
import type { LifeCounter } from '@halfshaft/worklog';

/** Closer than this nobody knows where a part failed. */
const STEPS: Record<LifeCounter, readonly { from: number; step: number }[]> = {
  stageMetres: [
    { from: 10_000, step: 1000 },
    { from: 0, step: 100 },
  ],
  totalMetres: [
    { from: 10_000, step: 1000 },
    { from: 0, step: 100 },
  ],
  engineSeconds: [{ from: 0, step: 360 }],
  stages: [{ from: 0, step: 1 }],
};

/** An amount to no more figures than are known, and never nothing: at least one step. */
export function roundDriven(counter: LifeCounter, amount: number): number {
  const step = STEPS[counter].find(({ from }) => amount >= from)?.step ?? 1;
  return Math.max(step, Math.round(amount / step) * step);
}

/**
 * How far something ran, as it is said.
 *
 * @example
 * drivenInWords('stageMetres', 37_300) // '37 stage km'
 */
export function drivenInWords(counter: LifeCounter, amount: number): string {
  return amountInWords(counter, amount === 0 ? 0 : roundDriven(counter, amount));
}

/**
 * The same without its unit, for a place where the unit stands already.
 *
 * @example
 * drivenInFigures('stageMetres', 37_300) // '37'
 */
export function drivenInFigures(counter: LifeCounter, amount: number): string {
  return drivenInWords(counter, amount).split(' ')[0] ?? '';
}
