import { at } from '../../at';
import type { CompiledService, CompiledTask } from '../compile-service';
import { listForced } from './list-forced';
import { listScarce, type Scarce } from './scarce-uses';

const ROUNDS = 12;
const HALVINGS = 40;
/** What the arithmetic may take away must not cost a whole unit of value. */
const ROUNDING = 1e-6;

/** What is priced, and what is done whatever it costs. */
interface Priced {
  service: CompiledService;
  scarce: readonly Scarce[];
  forced: ReadonlySet<number>;
}

/**
 * What plans without lateness can be worth at most. Everything scarce gets a price; then each task for itself is done where
 * its value is above what it uses, and what is there is paid out: with any prices that is no less than the best plan (weak
 * duality of the Lagrangian relaxation, Geoffrion 1974). The prices are lowered in value one after the other.
 */
export function boundValue(service: CompiledService): number {
  const scarce = listScarce(service);
  const priced = { service, scarce, forced: listForced(service) };
  const prices = new Float64Array(scarce.length);
  const worth = () => worthAt(priced, prices);
  for (let round = 0; round < ROUNDS; round += 1) {
    const before = worth();
    for (let one = 0; one < scarce.length; one += 1) lowerByPrice(priced, prices, one);
    if (before - worth() < ROUNDING) break;
  }
  return Math.floor(worth() + ROUNDING);
}

/** The worth is convex in each price, so thirds that are worse fall away. */
function lowerByPrice(priced: Priced, prices: Float64Array, one: number): void {
  const worth = (price: number) => {
    prices[one] = price;
    return worthAt(priced, prices);
  };
  let [low, high] = [0, highestPrice(priced.service, priced.scarce[one])];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const third = (high - low) / 3;
    if (worth(low + third) <= worth(high - third)) high -= third;
    else low += third;
  }
  const [without, withIt] = [worth(0), worth((low + high) / 2)];
  if (without <= withIt) prices[one] = 0;
}

/** Above that nothing optional that uses any of it is done. */
function highestPrice({ tasks }: CompiledService, one: Scarce | undefined): number {
  const highest = tasks.flatMap(({ ways, number }) =>
    ways.map(({ value }, way) => value / Math.max(1, one?.uses[number]?.[way] ?? 0)),
  );
  return Math.max(1, ...highest);
}

function worthAt({ service: { tasks }, scarce, forced }: Priced, prices: Float64Array): number {
  let worth = 0;
  for (let one = 0; one < scarce.length; one += 1) {
    if (at(prices, one) > 0) worth += at(prices, one) * (scarce[one]?.capacity ?? 0);
  }
  for (const task of tasks) {
    if (task.mustNot) continue;
    let best = forced.has(task.number) ? Number.NEGATIVE_INFINITY : 0;
    for (let way = 0; way < task.ways.length; way += 1) {
      const value = task.ways[way]?.value ?? 0;
      best = Math.max(best, value - costOf(task, way, scarce, prices));
    }
    worth += best;
  }
  return worth;
}

function costOf(
  { number }: CompiledTask,
  way: number,
  scarce: readonly Scarce[],
  prices: Float64Array,
): number {
  let cost = 0;
  for (let one = 0; one < scarce.length; one += 1) {
    if (at(prices, one) > 0) cost += at(prices, one) * (scarce[one]?.uses[number]?.[way] ?? 0);
  }
  return cost;
}
