/**
 * Upper 5 % points of Student's t for 1 to 30 degrees of freedom: NIST/SEMATECH e-Handbook of Statistical Methods,
 * section 1.3.6.7.2, "Critical Values of the Student's t Distribution", column 0.95.
 */
const UPPER_FIVE_PERCENT: readonly number[] = [
  6.314, 2.92, 2.353, 2.132, 2.015, 1.943, 1.895, 1.86, 1.833, 1.812, 1.796, 1.782, 1.771, 1.761, 1.753,
  1.746, 1.74, 1.734, 1.729, 1.725, 1.721, 1.717, 1.714, 1.711, 1.708, 1.706, 1.703, 1.701, 1.699, 1.697,
];

/**
 * The value that Student's t stays below in 95 of 100 cases. Beyond 30 degrees of freedom that of 30, which is a
 * little on the safe side (1.697 against 1.645 for very many).
 *
 * @throws RangeError when the degrees of freedom are not a whole number from 1
 * @example
 * studentT95(4) // 2.132
 */
export function studentT95(degreesOfFreedom: number): number {
  if (!Number.isSafeInteger(degreesOfFreedom) || degreesOfFreedom < 1) {
    throw new RangeError(
      `studentT95: degrees of freedom are a whole number from 1, not ${degreesOfFreedom}.`,
    );
  }
  const value = UPPER_FIVE_PERCENT[Math.min(degreesOfFreedom, UPPER_FIVE_PERCENT.length) - 1];
  if (value === undefined) throw new Error('studentT95: the table has a hole.');
  return value;
}
