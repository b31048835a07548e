/** How many, and by how many minutes; both minutes are null of none. */
export interface MinutesOver {
  count: number;
  medianMinutes: number | null;
  worstMinutes: number | null;
}

/**
 * How many there are, the middle one and the worst.
 *
 * @param minutes of those that are counted, all above 0
 * @example
 * minutesOver([3, 16, 4]) // { count: 3, medianMinutes: 4, worstMinutes: 16 }
 */
export function minutesOver(minutes: readonly number[]): MinutesOver {
  const sorted = minutes.toSorted((one, other) => one - other);
  const half = sorted.length / 2;
  const middle = sorted.slice(Math.ceil(half) - 1, Math.floor(half) + 1);
  const medianMinutes =
    middle.length === 0 ? null : middle.reduce((sum, each) => sum + each, 0) / middle.length;
  return { count: sorted.length, medianMinutes, worstMinutes: sorted.at(-1) ?? null };
}
