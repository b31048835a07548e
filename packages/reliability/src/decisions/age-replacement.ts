import { requireNumber } from '../require-number';
import { lnGamma } from '../special/ln-gamma';
import { walkToRoot } from '../walk-to-root';
import { meanToReplacement } from './mean-to-replacement';

export interface ReplacementQuestion {
  /** Shape and scale of the Weibull life. */
  shape: number;
  scale: number;
  /** What it costs to replace it in good time, and when it has failed; in any one unit (money, minutes, points). */
  plannedCost: number;
  failureCost: number;
}

export type ReplacementAdvice =
  | {
      policy: 'replaceAt';
      distance: number;
      /** In the long run, for each unit of distance. */
      costPerDistance: number;
      runToFailureCost: number;
      /** Share of the cost of running to failure that is saved. */
      saving: number;
      /** Share that reaches the replacement unfailed. */
      reachesIt: number;
    }
  | {
      policy: 'runToFailure';
      costPerDistance: number;
      /**
       * A part that does not wear is as good used as new; a failure that costs no more is not worth preventing; and some
       * best distances lie so far out that hardly any part gets there.
       */
      because: 'doesNotWear' | 'failureCostsNoMore' | 'hardlyAnyReachesIt';
    };

/** Fewer than one in a million reaches the best distance: then it is no plan. */
const LARGEST_HAZARD = 14;

/**
 * At which distance to replace a part that wears, so that planned work and failures together cost the least in the long
 * run; or that it is best run to failure.
 *
 * Assumes a Weibull life known exactly (`fitWeibull` knows it only within bounds: try both ends of its shape), and a new part
 * each time. Barlow & Proschan 1965, chapter 4: the best distance T is where
 * hazard(T) × mean distance to replacement(T) − failed share(T) = planned cost / (failure cost − planned cost).
 *
 * @throws RangeError when a number is not above 0
 * @example
 * ageReplacement({ shape: 2, scale: 1000, plannedCost: 1, failureCost: 5 })
 * // replaceAt 510.66 at 0.00409 a km against 0.00564 when run to failure; 77 % reach it
 */
export function ageReplacement(question: ReplacementQuestion): ReplacementAdvice {
  const { shape, scale, plannedCost, failureCost } = question;
  for (const [name, value] of Object.entries(question))
    requireNumber('ageReplacement', name, value, 'positive');
  const runToFailureCost = failureCost / (scale * Math.exp(lnGamma(1 + 1 / shape)));
  const runToFailure = (because: 'doesNotWear' | 'failureCostsNoMore' | 'hardlyAnyReachesIt') =>
    ({ policy: 'runToFailure', costPerDistance: runToFailureCost, because }) as const;
  if (shape <= 1) return runToFailure('doesNotWear');
  if (failureCost <= plannedCost) return runToFailure('failureCostsNoMore');

  // Searched along the logarithm of the cumulative hazard (distance / scale)^shape.
  const distanceAt = (logHazard: number) => scale * Math.exp(logHazard / shape);
  const tooLate = (logHazard: number) => {
    const distance = distanceAt(logHazard);
    const hazardRate = (shape * Math.exp(logHazard)) / distance;
    const failedShare = -Math.expm1(-Math.exp(logHazard));
    const gain = hazardRate * meanToReplacement(shape, scale, distance) - failedShare;
    return gain - plannedCost / (failureCost - plannedCost);
  };
  const start = Math.log(LARGEST_HAZARD);
  if (tooLate(start) <= 0) return runToFailure('hardlyAnyReachesIt');
  const logHazard = walkToRoot(tooLate, { start, step: -1, furthest: 700, tolerance: 1e-13 });
  if (logHazard === null) throw new RangeError('ageReplacement: the two costs are too far apart to compare.');
  const distance = distanceAt(logHazard);
  const hazardRate = (shape * Math.exp(logHazard)) / distance;
  const costPerDistance = (failureCost - plannedCost) * hazardRate;
  return {
    policy: 'replaceAt',
    distance,
    costPerDistance,
    runToFailureCost,
    saving: 1 - costPerDistance / runToFailureCost,
    reachesIt: Math.exp(-Math.exp(logHazard)),
  };
}
