import type { Bounds, LevelOption } from '../model';
import { distanceBetweenFailures } from '../recurrence/distance-between-failures';
import { distanceDriven, type FieldStretch } from './field-stretch';

const THOUSAND = 1000;

export interface StopRate {
  stops: number;
  /** Of these, how many of whose cause nobody is sure. */
  unsure: number;
  /** Null where nothing was driven. */
  perThousand: { rate: number; bounds: Bounds } | null;
}

export interface StopRates {
  distance: number;
  all: StopRate;
  causes: (StopRate & { cause: string })[];
}

/**
 * Stops of each cause for every thousand of distance that the whole field drove, with exact bounds.
 *
 * A stop that the team chose is in none of the counts, and its distance is in all of them. A cause that nobody is sure of
 * counts as it was stated. Assumes that stops come by chance along the distance, so that a hundred cars over 10 tell as
 * much as ten cars over 100. Bounds: those of `distanceBetweenFailures`, turned over (chi-square; NIST/SEMATECH
 * e-Handbook 8.4.5.1), two-sided; with no stop the lower one is 0.
 *
 * @param causes in the order of the answer; every cause of the stretches must be among them
 * @throws RangeError when a stretch has another cause, or goes backwards
 * @example
 * stopRates([{ from: 0, to: 800, cause: 'off', unsure: false }], ['off']).all.perThousand?.rate // 1.25
 */
export function stopRates(
  stretches: readonly FieldStretch[],
  causes: readonly string[],
  options: LevelOption = {},
): StopRates {
  for (const { cause } of stretches) {
    if (cause !== null && !causes.includes(cause))
      throw new RangeError(`stopRates: “${cause}” is not among the causes.`);
  }
  const distance = distanceDriven(stretches);
  const stopped = stretches.filter(({ cause }) => cause !== null);
  const rateOf = (some: readonly FieldStretch[]): StopRate => ({
    stops: some.length,
    unsure: some.filter(({ unsure }) => unsure).length,
    perThousand: perThousand(some.length, distance, options),
  });
  return {
    distance,
    all: rateOf(stopped),
    causes: causes.map((cause) => ({ cause, ...rateOf(stopped.filter((one) => one.cause === cause)) })),
  };
}

function perThousand(failures: number, distance: number, options: LevelOption): StopRate['perThousand'] {
  const between = distanceBetweenFailures(
    { distance, failures, stoppedAt: 'distance' },
    { ...options, sided: 'two' },
  );
  if (!between.ok) return null;
  const { low, high } = between.bounds;
  const rate = (THOUSAND * failures) / distance;
  return { rate, bounds: { low: high === null ? 0 : THOUSAND / high, high: THOUSAND / low } };
}
