import { incompleteGammaQuantile } from './incomplete-gamma-quantile';

/**
 * The value a chi-square variable stays below with the given chance. Twice the gamma quantile at half the degrees of
 * freedom (Abramowitz & Stegun 1964, 26.4.19).
 *
 * @throws RangeError when the chance is not between 0 and 1 or the degrees of freedom are not above 0
 * @example
 * chiSquareQuantile(0.95, 10) // 18.3070380533
 */
export function chiSquareQuantile(chance: number, degreesOfFreedom: number): number {
  return 2 * incompleteGammaQuantile(degreesOfFreedom / 2, chance, 'lower');
}
