import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import type { Chance } from './chance';
import { isBetter, type Member } from './members';

const WINDOW = 0.3;
const SHORTEST_WINDOW = 0.3;
const CROSSOVER_SHARE = 0.2;
const LOOSENING = 0.2;

/**
 * The priorities of a child: those of a parent, its starts, except in one window of time. What runs there is shuffled
 * (mutation of a block, as in Palpant, Artigues & Michelon 2004), or takes the order it has in a second parent, loosened a
 * little (a crossover that keeps a stretch of time whole, after the peak crossover of Valls, Ballestín & Quintanilla 2008).
 */
export function breed(
  { size, durations }: CompiledProject,
  members: readonly Member[],
  chance: Chance,
  child: Float64Array,
): void {
  const parent = pickBetterOfTwo(members, chance);
  const second = chance.share() < CROSSOVER_SHARE ? pick(members, chance) : parent;
  const width = WINDOW * parent.makespan * (SHORTEST_WINDOW + chance.share());
  // Up to a quarter of the window may lie outside: more of it would hold nothing to change.
  const from = chance.share() * (parent.makespan - width / 2) - width / 4;
  for (let job = 0; job < size; job += 1) {
    const start = at(parent.starts, job);
    const inside = start < from + width && start + at(durations, job) > from;
    if (!inside) child[job] = start;
    else if (second === parent) child[job] = from + width * chance.share();
    else child[job] = from + width * loosened(at(second.starts, job) / second.makespan, chance);
  }
}

function loosened(share: number, chance: Chance): number {
  return (share + LOOSENING * chance.share()) / (1 + LOOSENING);
}

function pickBetterOfTwo(members: readonly Member[], chance: Chance): Member {
  const one = pick(members, chance);
  const other = pick(members, chance);
  return isBetter(other, one) ? other : one;
}

function pick(members: readonly Member[], chance: Chance): Member {
  const member = members[chance.below(members.length)];
  if (!member) throw new RangeError('breed: there is nobody to breed from.');
  return member;
}
