import type { ControlFigures } from '@halfshaft/reliability';
import { byInWords, minutesInWords, timesInWords } from './lateness-words';

/**
 * How often cars came late to the controls that are no way out of service, and by how much.
 *
 * @example
 * comesLateInWords(figures) // '12 of 40 times a car came late: by 3 min in the middle, 16 min at worst.'
 */
export function comesLateInWords({ arrivals, late }: ControlFigures): string {
  if (arrivals === 0) return 'No car was seen at any other control.';
  if (late.count === 0) return `No car came late, in ${arrivals} times seen.`;
  return `${late.count} of ${arrivals} times a car came late${byInWords(late)}.`;
}

/** Where these minutes were lost: on the way to the control, or before. */
export function lostInWords({ late, lost, total }: ControlFigures): string | null {
  if (late.count === 0) return null;
  const sentences = [
    lost.count === 0
      ? 'None is known to have lost minutes on the way there.'
      : `In ${lost.count} of these minutes were lost on the way there${byInWords(lost)}.`,
  ];
  const brought = late.count - lost.count - lost.notKnown;
  if (brought > 0) sentences.push(`${brought} brought all of it along from before.`);
  if (lost.notKnown > 0)
    sentences.push(
      `Of ${lost.notKnown} nobody can say: the list lacks the clock there or at the control before.`,
    );
  if (total.worstMinutes !== null)
    sentences.push(`On reaching one of them a car had lost at most ${total.worstMinutes} min in all.`);
  return sentences.join(' ');
}

/** "4 of 18 late: 3 min, at worst 6". */
export function atControlInWords({ arrivals, late }: ControlFigures): string {
  return `${late.count} of ${arrivals} late: ${minutesInWords(late)}`;
}

/** "4 times, by 3 min, at worst 6; of 2 not known". */
export function knownTimesInWords(over: ControlFigures['lost']): string {
  if (over.notKnown === 0) return timesInWords(over);
  return over.count === 0 ? 'not known' : `${timesInWords(over)}; of ${over.notKnown} not known`;
}

/** "Nobody came late to TC1, TC3."; null where there is no such control. */
export function inTimeInWords(controlIds: readonly string[]): string | null {
  return controlIds.length === 0 ? null : `Nobody came late to ${controlIds.join(', ')}.`;
}
