import type { ConditionName, Conditions } from '@halfshaft/itinerary';

export const CONDITION_NAMES: Record<ConditionName, string> = {
  dust: 'Dust',
  water: 'Water',
  rough: 'Rough',
  night: 'Night',
  jumps: 'Jumps',
};

/** Three words a co-driver can say in the car, and what they mean per mille. */
export const LEVELS = [
  { perMille: 0, words: 'none' },
  { perMille: 500, words: 'some' },
  { perMille: 1000, words: 'bad' },
] as const;

/**
 * What a stage was like.
 *
 * @example
 * conditionsInWords({ dust: 1000, night: 500 }) // 'dust bad, night some'
 */
export function conditionsInWords(conditions: Conditions): string {
  return Object.entries(CONDITION_NAMES)
    .flatMap(([name, words]) => {
      const level = levelInWords(conditions[name as ConditionName] ?? 0);
      return level === 'none' ? [] : [`${words.toLowerCase()} ${level}`];
    })
    .join(', ');
}

/** The nearest of the three words. */
export function levelInWords(perMille: number): string {
  if (perMille < 250) return 'none';
  return perMille < 750 ? 'some' : 'bad';
}
