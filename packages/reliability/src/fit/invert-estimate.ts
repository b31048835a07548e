import type { Estimate } from './fitted-life';

/** The estimate of 1 / x from that of x: the bounds change places. */
export function invertEstimate({ value, wald, likelihoodRatio }: Estimate): Estimate {
  return {
    value: 1 / value,
    wald: { low: 1 / wald.high, high: 1 / wald.low },
    likelihoodRatio: {
      low: likelihoodRatio.high === null ? 0 : 1 / likelihoodRatio.high,
      high: likelihoodRatio.low === 0 ? null : 1 / likelihoodRatio.low,
    },
  };
}
