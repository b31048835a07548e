import type { CountedShare, LatenessFigures, MinutesOver } from '@halfshaft/reliability';
import { percentInWords, percentRange } from '@/lib/percent-in-words';

/**
 * How often cars left a service late, and by how much.
 *
 * @example
 * lateInWords(figures) // '12 of 40 times a car left service late: by 3 min in the middle, 16 min at worst.'
 */
export function lateInWords({ leaves, late }: LatenessFigures): string {
  if (leaves === 0) return 'No car was seen leaving a service.';
  if (late.count === 0) return `No car left a service late, in ${leaves} seen.`;
  return `${late.count} of ${leaves} times a car left service late${byInWords(late)}.`;
}

/** Why they were late: the service itself, or what happened before it. */
export function overrunInWords({ late, overran }: LatenessFigures): string | null {
  if (late.count === 0) return null;
  const sentences = [
    overran.count === 0
      ? 'No service is known to have taken too long.'
      : `In ${overran.count} of these the service itself took too long${byInWords(overran)}.`,
  ];
  const brought = late.count - overran.count - overran.notKnown;
  if (brought > 0) sentences.push(`${brought} brought all of it along from the road.`);
  if (overran.notKnown > 0)
    sentences.push(`Of ${overran.notKnown} nobody can say: the list lacks the clock at the way in or out.`);
  return sentences.join(' ');
}

/** "2 of these were over the 15 min that the event allows." */
export function beyondInWords(
  { late, beyond }: Pick<LatenessFigures, 'late' | 'beyond'>,
  maximum: number,
): string | null {
  if (late.count === 0) return null;
  const allowed = `the ${maximum} min that the event allows`;
  if (beyond.count === 0) return `None was over ${allowed}.`;
  return `${beyond.count} of these ${beyond.count === 1 ? 'was' : 'were'} over ${allowed}.`;
}

/** How often of how many times it was late. */
export interface LateShare {
  late: { count: number; share: CountedShare | null };
  of: number;
}

/** "12 of 40, 30 % (18 to 45)". */
export function lateShareInWords({ late, of }: LateShare): string {
  if (late.share === null) return 'none seen';
  const { share, bounds } = late.share;
  return `${late.count} of ${of}, ${percentInWords(share)} (${percentRange(bounds)})`;
}

/** "3 min, at worst 16", or a dash of none. */
export function minutesInWords({ medianMinutes, worstMinutes }: MinutesOver): string {
  if (medianMinutes === null || worstMinutes === null) return '–';
  return medianMinutes === worstMinutes
    ? `${worstMinutes} min`
    : `${medianMinutes} min, at worst ${worstMinutes}`;
}

/** "once, by 3 min" or "4 times, by 3 min, at worst 16", or a dash of none. */
export function timesInWords(over: MinutesOver): string {
  if (over.count === 0) return '–';
  return `${over.count === 1 ? 'once' : `${over.count} times`}, by ${minutesInWords(over)}`;
}

/** ", by 3 min" or ": by 3 min in the middle, 16 min at worst", to stand at the end of a sentence. */
export function byInWords({ medianMinutes, worstMinutes }: MinutesOver) {
  if (medianMinutes === null || worstMinutes === null) return '';
  if (medianMinutes === worstMinutes) return `, by ${worstMinutes} min`;
  return `: by ${medianMinutes} min in the middle, ${worstMinutes} min at worst`;
}
