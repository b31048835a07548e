import { requireNumber } from '../require-number';

export interface MinimalRepairQuestion {
  /** Shape and scale of the Weibull life. */
  shape: number;
  scale: number;
  /** A replacement or full overhaul, and a repair that only gets it running again. */
  plannedCost: number;
  repairCost: number;
}

export type MinimalRepairAdvice =
  | { policy: 'replaceAt'; distance: number; costPerDistance: number }
  | { policy: 'repairOnly'; because: 'doesNotWear' };

/**
 * At which distance to replace or overhaul a thing that is patched when it fails and then is as worn as before.
 *
 * Barlow & Hunter 1960, Operations Research 8:90-100: T = scale × (planned / (repair × (shape − 1)))^(1/shape).
 *
 * @throws RangeError when a number is not above 0
 * @example
 * minimalRepairReplacement({ shape: 2.5, scale: 1000, plannedCost: 1, repairCost: 0.2 }) // replaceAt 1618.64
 */
export function minimalRepairReplacement(question: MinimalRepairQuestion): MinimalRepairAdvice {
  for (const [name, value] of Object.entries(question)) {
    requireNumber('minimalRepairReplacement', name, value, 'positive');
  }
  const { shape, scale, plannedCost, repairCost } = question;
  if (shape <= 1) return { policy: 'repairOnly', because: 'doesNotWear' };
  const distance = scale * (plannedCost / (repairCost * (shape - 1))) ** (1 / shape);
  const costPerDistance = (plannedCost + repairCost * (distance / scale) ** shape) / distance;
  return { policy: 'replaceAt', distance, costPerDistance };
}
