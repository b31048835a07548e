import { requireNumber } from '../require-number';
import { incompleteGamma } from '../special/incomplete-gamma';

export interface PoissonStock {
  /** Fewest spares that are enough at least as often as was asked. */
  spares: number;
  /** How often that many are enough. */
  chance: number;
}

/**
 * How many spares to take, when failures come by chance and their mean number over the event is known.
 *
 * Assumes independent failures and no resupply. The least s with P(N ≤ s) ≥ chance, N Poisson: the rule of MIL-HDBK-338B
 * and IEC 62550:2017. Taking the mean is not enough: 3 spares for a mean of 3 last in only 65 of 100 events.
 *
 * @param mean expected failures of all fitted pieces together: distance × pieces / mean distance between failures
 * @throws RangeError when the mean is negative or the chance is not between 0 and 1
 * @example
 * poissonStock(3, 0.9) // { spares: 5, chance: 0.9160820579686966 }
 */
export function poissonStock(mean: number, chance: number): PoissonStock {
  requireNumber('poissonStock', 'mean', mean, 'notNegative');
  requireNumber('poissonStock', 'chance', chance, 'share');
  // At most s failures by a Poisson mean m has the chance Q(s + 1, m): Abramowitz & Stegun 1964, 26.4.21.
  const enough = (spares: number) => incompleteGamma(spares + 1, mean).upper;
  let [tooFew, plenty] = [-1, 0];
  while (enough(plenty) < chance) [tooFew, plenty] = [plenty, 2 * plenty + 1];
  while (plenty - tooFew > 1) {
    const middle = Math.floor((tooFew + plenty) / 2);
    if (enough(middle) < chance) tooFew = middle;
    else plenty = middle;
  }
  return { spares: plenty, chance: enough(plenty) };
}
