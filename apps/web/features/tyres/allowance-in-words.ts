import type { TyreUse } from '@halfshaft/worklog';

/**
 * How many tyres of the event's allowance are used. A tyre counts once it has been on the car or carried as a spare:
 * common practice, no source; regulations differ in what they count.
 *
 * @example
 * allowanceInWords(tyres, 8) // '5 of 8 tyres used, 3 left. The event’s regulations say what counts.'
 */
export function allowanceInWords(tyres: readonly TyreUse[], allowance: number | null): string {
  const used = tyres.filter((tyre) => tyre.used).length;
  const decides = 'The event’s regulations say what counts.';
  if (allowance === null) return `${used === 1 ? '1 tyre' : `${used} tyres`} used; no allowance is set.`;
  const left = allowance - used;
  const rest = left >= 0 ? `${left} left` : `${-left} too many`;
  return `${used} of ${allowance} tyres used, ${rest}. ${decides}`;
}
