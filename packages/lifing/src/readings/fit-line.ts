export interface Line {
  intercept: number;
  slope: number;
  /** Standard deviation of the points about the line, with n − 2 degrees of freedom. */
  spread: number;
  points: number;
  meanX: number;
  /** Sum of squared distances of x from its mean. */
  sumOfSquaresX: number;
}

/**
 * The straight line through points by least squares. Null with fewer than three points, or when all stand at the
 * same x: then there is no line, or nothing to judge its spread by.
 *
 * Method: ordinary least squares in centred form (any textbook; Montgomery and Runger, Applied Statistics and
 * Probability for Engineers, chapter 11).
 *
 * @example
 * fitLine([{ x: 0, y: 1 }, { x: 1, y: 3 }, { x: 2, y: 5 }]) // { intercept: 1, slope: 2, spread: 0, … }
 */
export function fitLine(points: readonly { x: number; y: number }[]): Line | null {
  const count = points.length;
  if (count < 3) return null;
  const sum = (of: (point: { x: number; y: number }) => number) =>
    points.reduce((total, point) => total + of(point), 0);
  const meanX = sum(({ x }) => x) / count;
  const meanY = sum(({ y }) => y) / count;
  const sumOfSquaresX = sum(({ x }) => (x - meanX) * (x - meanX));
  if (sumOfSquaresX === 0) return null;
  const slope = sum(({ x, y }) => (x - meanX) * (y - meanY)) / sumOfSquaresX;
  const intercept = meanY - slope * meanX;
  const sumOfSquaresLeft = sum(({ x, y }) => {
    const left = y - intercept - slope * x;
    return left * left;
  });
  const spread = Math.sqrt(sumOfSquaresLeft / (count - 2));
  return { intercept, slope, spread, points: count, meanX, sumOfSquaresX };
}

/**
 * Where the line expects a new value at x, and how far the value may lie to either side of it: Student's t times the
 * spread times √(1 + 1/n + (x − mean)²/Sxx), the prediction interval of one new observation.
 *
 * @param t Student's t for n − 2 degrees of freedom
 * @example
 * predictAt(line, 1, studentT95(line.points - 2)) // { expected: 3, within: 0 }
 */
export function predictAt(line: Line, x: number, t: number): { expected: number; within: number } {
  const away = x - line.meanX;
  const widening = Math.sqrt(1 + 1 / line.points + (away * away) / line.sumOfSquaresX);
  return { expected: line.intercept + line.slope * x, within: t * line.spread * widening };
}
