/** What is further from the middle than so many spreads is taken to be that far. */
const FAR = 2.5;
/** The median distance from the median, times this, is the standard deviation of a normal distribution (Hampel 1974). */
const NORMAL = 1.4826;
/** Fewer numbers than that say nothing of their spread. */
const FEW = 3;

/**
 * Numbers with those that are absurdly far off brought in (winsorised; Huber & Ronchetti, Robust Statistics, 2009), so that
 * a slip of the finger is worth no more than a job that went badly. The middle is the median of the numbers and of
 * `expected`, which counts as `weight` of them; the spread is theirs, or `spread` while they are few or agree.
 */
export function holdBack(
  numbers: readonly number[],
  { expected, weight, spread }: { expected: number; weight: number; spread: number },
): number[] {
  const middle = medianOf([...numbers, ...Array.from({ length: weight }, () => expected)]);
  const distance = medianOf(numbers.map((number) => Math.abs(number - middle)));
  const far = FAR * (numbers.length < FEW ? spread : Math.max(spread, NORMAL * distance));
  return numbers.map((number) => Math.min(middle + far, Math.max(middle - far, number)));
}

function medianOf(numbers: readonly number[]): number {
  const sorted = numbers.toSorted((one, other) => one - other);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const lower = sorted[Math.ceil(sorted.length / 2) - 1] ?? upper;
  return (lower + upper) / 2;
}
