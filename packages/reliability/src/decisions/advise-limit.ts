import { fitWeibull } from '../fit/fit-weibull';
import type { FitOptions, FitRefusal, WeibullFit } from '../fit/fitted-life';
import { ratioQuantile } from '../fit/ratio-quantile';
import type { LifeObservation } from '../fit/read-observations';
import type { OpenBounds, Refusal } from '../model';
import { refuse } from '../refuse';

export interface LimitAdvice {
  ok: true;
  /** Where this share of the parts has failed. */
  failedShare: number;
  distance: number;
  bounds: OpenBounds;
  /** Whether the lives show that it wears out; else a shorter limit may change nothing. */
  wears: boolean;
  fit: WeibullFit;
}

/** One part in ten may fail before it is changed: the B10 life, the usual base of a replacement interval. */
export const ADVISED_SHARE = 0.1;

/**
 * After what distance to put on a new part, so that a given share at most fails before. Asks for no costs, unlike
 * `ageReplacement`, so it may be said of any part whose lives are known.
 *
 * The quantile of the fitted Weibull life with its bounds by the likelihood ratio (`ratioQuantile`). `wears` is whether the
 * bounds of the shape lie above 1 altogether.
 *
 * Refuses what `fitWeibull` refuses, and `notByWear` when the shape is not above 1: such a part is as good used as new.
 *
 * @throws RangeError when a distance makes no sense or an option is out of range
 * @example
 * adviseLimit(lives) // { distance: 45_200, bounds: { low: 32_100, high: 58_400 }, wears: true, … }
 */
export function adviseLimit(
  observations: readonly LifeObservation[],
  { failedShare = ADVISED_SHARE, ...options }: FitOptions & { failedShare?: number } = {},
): LimitAdvice | FitRefusal | Refusal<'notByWear'> {
  const fit = fitWeibull(observations, options);
  if (!fit.ok) return fit;
  if (fit.shape.value <= 1) {
    return refuse(
      'notByWear',
      'It fails by chance and not by wear, so changing it sooner would not make it fail less.',
    );
  }
  const { distance, bounds } = ratioQuantile(observations, fit, failedShare, options);
  return { ok: true, failedShare, distance, bounds, wears: fit.shape.likelihoodRatio.low > 1, fit };
}
