import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import type { Chance } from './chance';
import { isBetter, type Member } from './members';

const WINDOW = 0.4;
const SHORTEST_WINDOW = 0.3;
const CROSSOVER_SHARE = 0.5;
const SHUFFLE_SHARE = 0.5;
/** Of the window: how far chance moves a job from its place in the second parent. */
const LOOSENING = 0.05;
/** Of the makespan: how far chance moves a job either way when the window is blurred. */
const BLUR = 0.1;

/**
 * The priorities of a child: those of a parent, its starts, except in one window of time. What runs there takes the order
 * it has in a second parent, loosened a little (a crossover that keeps a stretch of time whole, after the peak crossover of
 * Valls, Ballestín & Quintanilla 2008); or without a second parent it is shuffled (mutation of a block, as in Palpant,
 * Artigues & Michelon 2004) or blurred.
 */
export function breed(
  { size, durations }: CompiledProject,
  members: readonly Member[],
  chance: Chance,
  child: Float64Array,
): void {
  const parent = pickBetterOfTwo(members, chance);
  const width = WINDOW * parent.makespan * (SHORTEST_WINDOW + chance.share());
  // Up to a quarter of the window may lie outside: more of it would hold nothing to change.
  const from = chance.share() * (parent.makespan - width / 2) - width / 4;
  const value = drawChange(parent, members, { from, width }, chance);
  for (let job = 0; job < size; job += 1) {
    const start = at(parent.starts, job);
    const inside = start < from + width && start + at(durations, job) > from;
    child[job] = inside ? value(job, start) : start;
  }
}

interface Window {
  from: number;
  width: number;
}

/** One of the three ways to change a window: the new value of a job in it. */
function drawChange(
  parent: Member,
  members: readonly Member[],
  { from, width }: Window,
  chance: Chance,
): (job: number, start: number) => number {
  const second = chance.share() < CROSSOVER_SHARE ? pick(members, chance) : parent;
  if (second !== parent) {
    return (job) => from + width * loosened(at(second.starts, job) / second.makespan, chance);
  }
  if (chance.share() < SHUFFLE_SHARE) return () => from + width * chance.share();
  return (_, start) => start + (2 * chance.share() - 1) * BLUR * parent.makespan;
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
