/** What an activity takes if all goes well, as a rule, and if it goes badly. */
export interface ThreePoint {
  low: number;
  likely: number;
  high: number;
}

/** An estimated duration: its mean, and its variance in squared units. */
export interface Estimate {
  mean: number;
  variance: number;
}

/**
 * Mean (low + 4 likely + high) / 6 and variance ((high − low) / 6)² of a three-point duration: the beta approximation of
 * the programme evaluation and review technique (Malcolm, Roseboom, Clark & Fazar 1959).
 *
 * @throws RangeError unless 0 ≤ low ≤ likely ≤ high
 * @example
 * estimateDuration({ low: 2, likely: 3.5, high: 8 }) // { mean: 4, variance: 1 }
 */
export function estimateDuration({ low, likely, high }: ThreePoint): Estimate {
  if (!(0 <= low && low <= likely && likely <= high && Number.isFinite(high))) {
    throw new RangeError(
      `estimateDuration: ${low}, ${likely}, ${high} must be finite, from 0, and never get smaller.`,
    );
  }
  return { mean: (low + 4 * likely + high) / 6, variance: ((high - low) / 6) ** 2 };
}

/**
 * Mean and variance of activities done one after the other, if how long one takes says nothing about another. Of the
 * critical path it is an optimistic estimate of the project: a path that is nearly critical may turn out the longer one.
 */
export function estimateChain(durations: readonly ThreePoint[]): Estimate {
  const estimates = durations.map(estimateDuration);
  return {
    mean: estimates.reduce((sum, { mean }) => sum + mean, 0),
    variance: estimates.reduce((sum, { variance }) => sum + variance, 0),
  };
}
