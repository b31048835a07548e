import { luby } from '../../exact/luby';
import type { Chance } from '../../search/chance';
import type { CompiledService } from '../compile-service';
import type { Solution } from '../judge-work';
import type { Encoding } from './encode-service';
import { heldFlags } from './held-flags';
import { pickFree } from './pick-free';

const FIRST_RESTART = 50;
/** So many descents near a plan, unless all is tried sooner. */
const NEARBY = 120;
/** Of so many rounds one looks everywhere. */
const EVERYWHERE = 4;
/** How much of what is done is free at first; more and less by and by, and beyond the most it is as good to look everywhere. */
const FIRST_SHARE = 0.25;
const LEAST_SHARE = 0.05;
const MOST_SHARE = 0.8;
const MORE = 1.05;
const LESS = 0.96;

export interface Round {
  /** Flags that are up throughout the round. */
  held: readonly number[];
  descents: number;
  byWeight: (left: number) => boolean;
}

/**
 * Where an exact search looks from one fresh start to the next: mostly near the best plan known, with some of its work free
 * and the rest done by the same people in the same order (large neighbourhoods: Shaw 1998), and now and then everywhere, ever
 * longer. How much is free follows from whether all of it could be tried.
 */
export class Rounds {
  readonly #service: CompiledService;
  readonly #encoding: Encoding;
  readonly #chance: Chance;
  #share = FIRST_SHARE;
  #round = 0;
  #everywhere = 0;
  #isNear = false;

  constructor(service: CompiledService, encoding: Encoding, chance: Chance) {
    this.#service = service;
    this.#encoding = encoding;
    this.#chance = chance;
  }

  next(best: Solution | undefined): Round {
    this.#round += 1;
    this.#isNear = best !== undefined && this.#share < MOST_SHARE && this.#round % EVERYWHERE !== 0;
    if (best && this.#isNear) {
      const free = pickFree(this.#service, best, this.#share, this.#chance);
      return { held: heldFlags(this.#encoding, best, free), descents: NEARBY, byWeight: isOdd };
    }
    this.#everywhere += 1;
    const byWeight = this.#everywhere % 2 === 0;
    return { held: [], descents: FIRST_RESTART * luby(this.#everywhere), byWeight: () => byWeight };
  }

  /** @param isTried nothing in the last round's reach is better */
  end(isTried: boolean): void {
    if (!this.#isNear) return;
    this.#share = Math.max(LEAST_SHARE, this.#share * (isTried ? MORE : LESS));
  }
}

function isOdd(number: number): boolean {
  return number % 2 === 1;
}
