import type { Refusal } from '../model';
import { refuse } from '../refuse';

/** "Only 2 failures are known; a trend needs at least 4.", or nothing when there are enough. */
export function refuseFewFailures(
  failures: number,
  fewest: number,
  whatFor: string,
): Refusal<'tooFewFailures'> | undefined {
  if (failures >= fewest) return undefined;
  const seen = failures === 1 ? '1 failure is' : `${failures} failures are`;
  return refuse('tooFewFailures', `Only ${seen} known; ${whatFor} needs at least ${fewest}.`);
}
