import type { ReadingSpec } from '../job-card';
import type { PositionValue } from './model';
import { figuresOf, placeOfReading, valueInWords } from './value-in-words';

export interface JudgedReading {
  worstPosition: string | null;
  worstValue: number;
  state: 'inOrder' | 'low' | 'high';
  /** False for a hint: it is shown, and nothing follows from it. */
  counts: boolean;
  words: string;
}

/**
 * A reading taken at several places: the worst place rules. Null when nothing was read.
 *
 * The worst is the place nearest to a limit, or furthest past one; at the same distance the first of the reading's own
 * positions. Without any limit it is the lowest value, and the reading is in order whatever it is. A value on a limit
 * is in order. Of two values of one place the later one in the list counts. Kinds: `wear`, `level` and `setValue` are
 * held against their limits; `passFail` is 0 for failed and anything else for passed; a `hint` has a state too, but
 * does not count.
 *
 * @throws RangeError for a place the reading does not have, or a value that is not whole
 * @example
 * judgeReading(pads, [{ position: 'FL', value: 62 }, { position: 'FR', value: 28 }])
 * // { worstPosition: 'FR', worstValue: 28, state: 'low', counts: true, words: 'Pad thickness FR: 2.8 mm, at least 3.0' }
 */
export function judgeReading(spec: ReadingSpec, values: readonly PositionValue[]): JudgedReading | null {
  const worst = worstOf(spec, lastOfEachPlace(spec, values));
  if (worst === null) return null;
  const { position, value } = worst;
  const state = stateOf(spec, value);
  return {
    worstPosition: position,
    worstValue: value,
    state,
    counts: spec.kind !== 'hint',
    words: `${placeOfReading(spec, position)}: ${inWords(spec, value, state)}`,
  };
}

function lastOfEachPlace(spec: ReadingSpec, values: readonly PositionValue[]): PositionValue[] {
  const places: (string | null)[] = spec.positions.length > 0 ? spec.positions : [null];
  for (const { position, value } of values) {
    if (!places.includes(position)) {
      throw new RangeError(`judgeReading: ${spec.name} is not read at ${position ?? 'no place'}.`);
    }
    if (!Number.isSafeInteger(value)) {
      throw new RangeError(`judgeReading: a value of ${spec.name} must be a whole number, not ${value}.`);
    }
  }
  return places.flatMap((place) => values.filter(({ position }) => position === place).slice(-1));
}

function worstOf(spec: ReadingSpec, values: readonly PositionValue[]): PositionValue | null {
  const [first, ...others] = values;
  if (first === undefined) return null;
  return others.reduce(
    (worst, each) => (roomLeft(spec, each.value) < roomLeft(spec, worst.value) ? each : worst),
    first,
  );
}

/** How far a value is from the nearest limit, negative when past it; without a limit, the value itself. */
function roomLeft({ kind, low, high }: ReadingSpec, value: number): number {
  if (kind === 'passFail' || (low === null && high === null)) return value;
  const above = low === null ? Number.POSITIVE_INFINITY : value - low;
  const below = high === null ? Number.POSITIVE_INFINITY : high - value;
  return Math.min(above, below);
}

function stateOf({ kind, low, high }: ReadingSpec, value: number): JudgedReading['state'] {
  if (kind === 'passFail') return value === 0 ? 'low' : 'inOrder';
  if (low !== null && value < low) return 'low';
  return high !== null && value > high ? 'high' : 'inOrder';
}

function inWords(spec: ReadingSpec, value: number, state: JudgedReading['state']): string {
  if (spec.kind === 'passFail') return state === 'low' ? 'failed' : 'passed';
  const read = valueInWords(spec, value);
  const hint = spec.kind === 'hint' ? ' (a hint only)' : '';
  if (state === 'low' && spec.low !== null) return `${read}, at least ${figuresOf(spec, spec.low)}${hint}`;
  if (state === 'high' && spec.high !== null) return `${read}, at most ${figuresOf(spec, spec.high)}${hint}`;
  return `${read}${hint}`;
}
