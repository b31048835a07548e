import type { Chance } from '../faults/chance';

/** Activities at either end of a network, and the most that one may wait for or hold up: those of PSPLIB's sets. */
const AT_EACH_END = 3;
const MOST_NEIGHBOURS = 3;
const MOST_TRIES = 200;

/** Who waits for whom: everything comes after what it waits for. */
interface Network {
  before: Set<number>[];
  behind: Set<number>[];
}

/**
 * What each of `size` activities waits for, with so many arcs in all, none of which follows from others. The steps are
 * those of Kolisch, Sprecher & Drexl (1995): somebody to wait for, somebody that waits, then arcs by chance.
 *
 * @throws Error when so many arcs found no room in any try
 */
export function randomNetwork(size: number, arcs: number, chance: Chance): ReadonlySet<number>[] {
  for (let left = MOST_TRIES; left > 0; left -= 1) {
    const network = tryNetwork(size, arcs, chance);
    if (network) return network.before;
  }
  throw new Error(`randomNetwork: ${arcs} arcs found no room between ${size} activities.`);
}

function tryNetwork(size: number, arcs: number, chance: Chance): Network | undefined {
  const network: Network = {
    before: Array.from({ length: size }, () => new Set<number>()),
    behind: Array.from({ length: size }, () => new Set<number>()),
  };
  const numbers = Array.from({ length: size }, (_, number) => number);
  const linkOne = (pairs: readonly (readonly [number, number])[]): boolean => {
    const pair = chance.shuffled(pairs).find(([from, to]) => mayLink(network, from, to));
    if (pair) link(network, ...pair);
    return pair !== undefined;
  };
  const inner = numbers.slice(AT_EACH_END);
  if (!inner.every((to) => linkOne(numbers.slice(0, to).map((from) => [from, to])))) return undefined;
  const idle = numbers.slice(0, size - AT_EACH_END).toReversed();
  for (const from of idle) {
    if (network.behind[from]?.size) continue;
    if (!linkOne(numbers.slice(from + 1).map((to) => [from, to]))) return undefined;
  }
  let made = network.before.reduce((sum, { size: count }) => sum + count, 0);
  // One pass is enough: what may not be linked now may not be linked later, since paths only become more.
  for (const [from, to] of chance.shuffled(
    numbers.flatMap((one) => numbers.slice(one + 1).map((other) => [one, other] as const)),
  )) {
    if (made >= arcs) break;
    if (!mayLink(network, from, to)) continue;
    link(network, from, to);
    made += 1;
  }
  return made === arcs ? network : undefined;
}

/** Whether there is room at both ends and neither this arc nor one that exists would follow from the others. */
function mayLink({ before, behind }: Network, from: number, to: number): boolean {
  const size = before.length;
  if (from >= size - AT_EACH_END || to < AT_EACH_END) return false;
  if ((behind[from]?.size ?? 0) >= MOST_NEIGHBOURS || (before[to]?.size ?? 0) >= MOST_NEIGHBOURS)
    return false;
  const upTo = reach(before, from);
  const onFrom = reach(behind, to);
  if (upTo.has(to) || onFrom.has(from) || reach(behind, from).has(to)) return false;
  return ![...upTo].some((one) => [...(behind[one] ?? [])].some((other) => onFrom.has(other)));
}

function link({ before, behind }: Network, from: number, to: number): void {
  before[to]?.add(from);
  behind[from]?.add(to);
}

/** Everything that can be reached from one, itself too. */
function reach(next: readonly ReadonlySet<number>[], from: number, found = new Set<number>()): Set<number> {
  if (found.has(from)) return found;
  found.add(from);
  for (const other of next[from] ?? []) reach(next, other, found);
  return found;
}
