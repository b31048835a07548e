const MOST_ROUNDS = 200;

/**
 * Where a continuous function crosses zero between two places at which its signs differ.
 *
 * Ridders' method (C. Ridders 1979, IEEE Transactions on Circuits and Systems 26:979-980): each round at least halves
 * the bracket, and near the root the number of good digits doubles, without a derivative.
 *
 * @throws RangeError when the two signs do not differ
 * @example
 * findRoot((x) => x * x - 2, 0, 2, 1e-14) // 1.41421356237
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance: number): number {
  let [left, right, atLeft, atRight] = [low, high, f(low), f(high)];
  if (atLeft === 0) return left;
  if (atRight === 0) return right;
  if (!(Math.sign(atLeft) * Math.sign(atRight) < 0)) {
    throw new RangeError(`findRoot: the signs at ${low} and ${high} must differ (${atLeft} and ${atRight}).`);
  }
  for (let round = 0; round < MOST_ROUNDS && Math.abs(right - left) > tolerance; round += 1) {
    const middle = (left + right) / 2;
    const atMiddle = f(middle);
    const stretch = Math.sqrt(atMiddle * atMiddle - atLeft * atRight);
    const guess = middle + (middle - left) * Math.sign(atLeft - atRight) * (atMiddle / stretch);
    const atGuess = f(guess);
    if (atGuess === 0 || guess === left || guess === right) return guess;
    if (Math.sign(atMiddle) !== Math.sign(atGuess)) {
      [left, right, atLeft, atRight] = [middle, guess, atMiddle, atGuess];
    } else if (Math.sign(atLeft) !== Math.sign(atGuess)) {
      [right, atRight] = [guess, atGuess];
    } else {
      [left, atLeft] = [guess, atGuess];
    }
  }
  return (left + right) / 2;
}
