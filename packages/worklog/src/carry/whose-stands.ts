/** By name of a thing that a manager may change (a card, the itinerary …): a check sum of what it says. */
export type Sums = Readonly<Record<string, string>>;

/**
 * `same`: nothing to do. `theirs`: they changed what we both had, or we have none. `ours`: they know no better than
 * we do. `both`: changed on both sides, so a person must be told.
 */
export type WhoseStands = 'same' | 'theirs' | 'ours' | 'both';

export interface TwoSides {
  /** What we have now; absent when we have no such thing. */
  ours: string | undefined;
  /** What the file from the other server has. */
  theirs: string;
  /** What of ours they had seen when the file was made; absent when they never saw it. */
  theySaw: string | undefined;
  /** What of theirs we saw the last time; absent when we never did. */
  weSaw: string | undefined;
}

/**
 * Which of two servers' words for one thing stands, without any clock: each side remembers what it last saw of the other,
 * so a side that still has what was seen has not changed it since. Holds for files in the order they were made: an older one
 * than the last must not be asked about.
 *
 * @example
 * whoseStands({ ours: 'a', theirs: 'b', theySaw: 'a', weSaw: undefined }) // 'theirs': they had ours and changed it
 */
export function whoseStands({ ours, theirs, theySaw, weSaw }: TwoSides): WhoseStands {
  if (ours === theirs) return 'same';
  if (ours === undefined || theySaw === ours) return 'theirs';
  if (weSaw === theirs || theySaw === theirs) return 'ours';
  return weSaw === ours ? 'theirs' : 'both';
}
