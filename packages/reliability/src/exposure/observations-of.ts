import type { LifeObservation } from '../fit/read-observations';
import type { Exposure } from './exposure';

/** Lives for the fits, and how many had to be left out, so that no screen can pass over it in silence. */
export interface LifeData {
  observations: LifeObservation[];
  leftOut: {
    /** Nobody knows how old the part was when the log began. */
    ageUnknown: number;
    /** It was not new when it came to be watched: had it failed before, it would not be here (left truncation). */
    enteredLate: number;
    /** It had failed before it was driven at all: not a matter of wear. */
    failedWhenNew: number;
    /** Nothing is known of how far it was good. */
    neverLooked: number;
  };
}

/**
 * The lives of parts as `fitWeibull` and its neighbours read them. Pieces of one part's watching are joined; only parts
 * watched from new are used, each up to its first failure; a design's life ends where another begins.
 *
 * Left-truncated lives are left out, since the fits have no term for a later entry; that costs data and bends nothing.
 *
 * @param exposures of one card and counter, as `exposuresOf` returns them; several cars and places may be among them
 * @example
 * observationsOf(exposures).observations // [{ kind: 'failedBetween', after: 31000, before: 42500 }, …]
 */
export function observationsOf(exposures: readonly Exposure[]): LifeData {
  const leftOut = { ageUnknown: 0, enteredLate: 0, failedWhenNew: 0, neverLooked: 0 };
  const observations = livesIn(exposures).flatMap((life) => {
    const seen = observe(life);
    if (typeof seen !== 'string') return [seen];
    leftOut[seen] += 1;
    return [];
  });
  return { observations, leftOut };
}

/** Exposures of one part of one design, in the order in which they were driven. */
function livesIn(exposures: readonly Exposure[]): Exposure[][] {
  const lives = new Map<string, Exposure[]>();
  for (const exposure of exposures) {
    const { carId, cardId, position, counter, part, design } = exposure;
    const key = JSON.stringify([carId, cardId, position, counter, part, design]);
    lives.set(key, [...(lives.get(key) ?? []), exposure]);
  }
  return [...lives.values()];
}

function observe(life: readonly Exposure[]): LifeObservation | keyof LifeData['leftOut'] {
  const [first] = life;
  const last = life.find(({ ending }) => ending === 'failed') ?? life.at(-1);
  if (!first || !last || first.entryAge === null || last.entryAge === null) return 'ageUnknown';
  if (first.entryAge > 0) return 'enteredLate';
  const age = last.entryAge + (last.to - last.from);
  const goodAge = last.entryAge + (last.goodTo - last.from);
  if (last.ending !== 'failed') return goodAge > 0 ? { kind: 'goodAt', distance: goodAge } : 'neverLooked';
  if (age === 0) return 'failedWhenNew';
  if (goodAge === age) return { kind: 'failedAt', distance: age };
  if (goodAge <= 0) return { kind: 'failedBefore', distance: age };
  return { kind: 'failedBetween', after: goodAge, before: age };
}
