/** What an argument must be. The sentences end up in a developer's log, never on a mechanic's screen. */
const KINDS = {
  positive: { says: 'a number above 0', holds: (value: number) => value > 0 && value < Infinity },
  notNegative: { says: 'a number of at least 0', holds: (value: number) => value >= 0 && value < Infinity },
  share: {
    says: 'a number between 0 and 1, both left out',
    holds: (value: number) => value > 0 && value < 1,
  },
  count: {
    says: 'a whole number of at least 0',
    holds: (value: number) => Number.isSafeInteger(value) && value >= 0,
  },
};

/**
 * Refuses a programming error early, so that a NaN never travels into a result.
 *
 * @throws RangeError with a sentence naming the function that was called
 */
export function requireNumber(
  functionName: string,
  what: string,
  value: number,
  kind: keyof typeof KINDS,
): void {
  const { says, holds } = KINDS[kind];
  if (!holds(value)) throw new RangeError(`${functionName}: ${what} must be ${says}, not ${value}.`);
}
