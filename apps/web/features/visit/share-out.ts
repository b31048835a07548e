export interface Shareable {
  /** Clock seconds with everybody it needs at it. */
  seconds: number;
  /** How many work at it together. */
  people: number;
  /** Do now; the rest is shared out afterwards, so that it never pushes such work aside. */
  mustDo: boolean;
}

export interface Share<Work> {
  /** In the order the work was given. */
  work: Work[];
  /** Clock seconds of all of it. */
  seconds: number;
}

/**
 * A first sharing out among equal people, by minutes only: do now first, the longest piece first, each to whoever has
 * the least so far (at a tie the one named first). Work for several people goes to as many, or to all where there are
 * too few. It knows nothing of skills, of places with room for one, of tools, or of what must wait for what; nobody
 * waits for anybody in it. It is for a sheet of paper that people then settle among themselves.
 *
 * Longest first is the usual rule for even shares: nobody ends with more than about a third above the best possible
 * (R. L. Graham, Bounds on Multiprocessing Timing Anomalies, 1969), as long as each piece needs one person and all is
 * equally pressing.
 *
 * Throws when `people` is not a whole number from 1, or a piece has no whole number of seconds and people.
 *
 * @example
 * shareOut([{ seconds: 240, people: 1, mustDo: true }, { seconds: 180, people: 2, mustDo: true }], 2).map((share) => share.seconds)
 * // [420, 180]
 */
export function shareOut<Work extends Shareable>(work: readonly Work[], people: number): Share<Work>[] {
  requireFrom('people', people, 1);
  const shares = Array.from({ length: people }, () => ({ pieces: new Set<number>(), seconds: 0 }));
  for (const index of longestFirst(work)) {
    const piece = work[index];
    if (!piece) continue;
    requireFrom('seconds', piece.seconds, 0);
    requireFrom('people of a piece', piece.people, 1);
    const least = [...shares].sort((one, other) => one.seconds - other.seconds).slice(0, piece.people);
    for (const share of least) {
      share.pieces.add(index);
      share.seconds += piece.seconds;
    }
  }
  return shares.map(({ pieces, seconds }) => ({
    work: work.filter((_, index) => pieces.has(index)),
    seconds,
  }));
}

function longestFirst(work: readonly Shareable[]): number[] {
  const order = work.map((piece, index) => ({ ...piece, index }));
  order.sort((one, other) => Number(other.mustDo) - Number(one.mustDo) || other.seconds - one.seconds);
  return order.map(({ index }) => index);
}

function requireFrom(name: string, value: number, least: number): void {
  if (!Number.isSafeInteger(value) || value < least) {
    throw new RangeError(`shareOut: ${name} must be a whole number from ${least}, not ${value}`);
  }
}
