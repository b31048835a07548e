import type { ConditionName, Conditions } from '@halfshaft/itinerary';
import type { LifingCard } from './model';
import { requireWholeNumber } from './whole-number';

const NO_EFFECT = 1000;
const FASTEST = 3000;
const SLOWEST = 250;
const WORST_LEVEL = 1000;

const CONDITION_NAMES: readonly ConditionName[] = ['dust', 'water', 'rough', 'night', 'jumps'];

/**
 * By how much the conditions of a stage multiply a card's wear, per mille: 1000 is ordinary wear, 2000 twice as fast.
 *
 * Each condition that is present (level above 0) and that the card names gives an excess of
 * `level × (factor − 1000) / 1000`. The card says whether the largest excess counts or their sum. The result is
 * rounded once, half up, and kept between 250 and 3000: three times is about where a factor stops being wear and
 * becomes damage (common practice, no source). It is below 1000 only where a factor is (wet stages lay the dust).
 *
 * @param card the card's factors and how it combines them; a condition without a factor has no effect
 * @param conditions levels from 0 to 1000 per mille; an absent condition is 0
 * @throws RangeError when a level is not a whole number from 0 to 1000, or a factor not a whole number from 0
 * @example
 * wearMultiplier({ conditionFactors: { dust: 2000 }, combineConditions: 'largest' }, { dust: 500 }) // 1500
 */
export function wearMultiplier(
  card: Pick<LifingCard, 'conditionFactors' | 'combineConditions'>,
  conditions: Conditions,
): number {
  const excesses = CONDITION_NAMES.flatMap((name) => excessOf(name, card.conditionFactors, conditions));
  const total =
    card.combineConditions === 'sum'
      ? excesses.reduce((sum, excess) => sum + excess, 0)
      : excesses.reduce((largest, excess) => Math.max(largest, excess), excesses[0] ?? 0);
  const rounded = NO_EFFECT + Math.floor((total + 500) / 1000);
  return Math.min(FASTEST, Math.max(SLOWEST, rounded));
}

/** The excess in thousandths of a per mille, so that rounding happens once; empty when the condition plays no part. */
function excessOf(name: ConditionName, factors: Conditions, conditions: Conditions): number[] {
  const level = conditions[name] ?? 0;
  const factor = factors[name] ?? NO_EFFECT;
  requireWholeNumber('wearMultiplier', `the level of ${name}`, level);
  requireWholeNumber('wearMultiplier', `the factor of ${name}`, factor);
  if (level > WORST_LEVEL) {
    throw new RangeError(`wearMultiplier: the level of ${name} must be at most 1000, not ${level}.`);
  }
  return level === 0 || factor === NO_EFFECT ? [] : [level * (factor - NO_EFFECT)];
}
