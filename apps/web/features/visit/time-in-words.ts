const SECONDS_IN_MINUTE = 60;

/** Work is rounded up and time is cut: the sheet never promises a minute that is not there. */
export const minutesOfWork = (seconds: number) => Math.ceil(seconds / SECONDS_IN_MINUTE);
export const minutesOfTime = (seconds: number) => Math.floor(seconds / SECONDS_IN_MINUTE);

/**
 * What must be done against what the people have, as a sentence.
 *
 * @example
 * needInWords(1440, 1920) // 'Do now needs 24 of 32 person-minutes.'
 */
export function needInWords(neededSeconds: number, usableSeconds: number): string {
  const [needed, usable] = [minutesOfWork(neededSeconds), minutesOfTime(usableSeconds)];
  if (needed === 0) return `Nothing must be done now; there are ${usable} person-minutes.`;
  if (needed <= usable) return `Do now needs ${needed} of ${usable} person-minutes.`;
  return `Do now needs ${needed} of ${usable} person-minutes: ${needed - usable} too many. Find more hands, or decide what waits.`;
}
