import type { PartOutline } from '@halfshaft/contract';
import type { adviseLimit } from '@halfshaft/reliability';

/**
 * The parts whose life could not be counted, and why, so that nobody passes over it; empty when there are none.
 *
 * @example
 * leftOutInWords(part) // '4 parts are left out: nobody knows how old they were when the log began.'
 */
export function leftOutInWords({ lives: { leftOut } }: Pick<PartOutline, 'lives'>): string {
  const reasons: [number, string][] = [
    [leftOut.ageUnknown, 'nobody knows how old they were when the log began'],
    [leftOut.enteredLate, 'they were not new when the log began'],
    [leftOut.failedWhenNew, 'they failed before they were driven'],
    [leftOut.neverLooked, 'nobody has looked at them yet'],
  ];
  const told = reasons.filter(([count]) => count > 0).map(([count, why]) => `${count} because ${why}`);
  return told.length === 0 ? '' : `Parts left out: ${told.join('; ')}.`;
}

type Unfit = Extract<ReturnType<typeof adviseLimit>, { ok: false }>;

/**
 * Why nothing is said of how long a part lasts.
 *
 * @example
 * unfitInWords(part, refusal) // 'How long it lasts can’t be said yet: of those watched from new 2 failed, and 3 are needed.'
 */
export function unfitInWords(
  { lives, renews }: Pick<PartOutline, 'lives' | 'renews'>,
  { reason, says }: Unfit,
): string {
  if (reason !== 'tooFewFailures') return `How long it lasts: ${says}`;
  const failed = lives.observations.filter(({ kind }) => kind !== 'goodAt').length;
  const count = failed === 0 ? 'none' : String(failed);
  const yet = `How long it lasts can’t be said yet: of those watched from new ${count} failed, and ${FEWEST} are needed.`;
  return renews || lives.observations.length > 0 ? yet : `${yet} ${HOW_NEW}`;
}

/** Of a part no card fits: how the log comes to know of new ones. */
const HOW_NEW = 'A new one counts from where a finding says that it went on.';

/** What `fitWeibull` asks for unless told otherwise. */
const FEWEST = 3;
