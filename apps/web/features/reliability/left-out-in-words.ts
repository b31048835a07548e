import type { PartOutline } from '@halfshaft/contract';

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
