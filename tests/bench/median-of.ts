/** The middle one of an odd number of measurements: one slow round, when the machine was busy elsewhere, does not count. */
export function medianOf(values: readonly number[]): number {
  const middle = [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)];
  if (middle === undefined) throw new Error('medianOf: nothing was measured');
  return middle;
}

export const ROUNDS = 5;
