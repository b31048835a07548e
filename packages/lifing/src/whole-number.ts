/** Refuses a programming error early: every amount in this package is a whole number, and none is negative. */
export function requireWholeNumber(functionName: string, what: string, value: number, least = 0): void {
  if (!Number.isSafeInteger(value) || value < least) {
    throw new RangeError(
      `${functionName}: ${what} must be a whole number of at least ${least}, not ${value}.`,
    );
  }
}
