import { at } from '../../at';
import { Chance } from '../../search/chance';
import type { BayPlan } from '../bay-plan';
import { type OrderedWork, orderOf, pushStarts, type WorkOrder } from '../order/push-starts';
import type { Service, ServiceCar } from '../service-model';
import { durationSource } from './draw-duration';

export interface SimulationOptions {
  /** A whole number: the same one gives the same result. */
  seed: number;
  /** How many services are played through; 1,000 tell a chance to within 3 points (two standard errors). */
  runs: number;
}

/** How one car comes out of its service, in the service's units of time. */
export interface CarOutlook {
  car: string;
  outTime: number;
  /** When it is finished, run by run, from the earliest. */
  finishes: Float64Array;
  /** Time left at the out-time: on average, and what is left at least in nine runs out of ten; below 0 it is late. */
  spare: { mean: number; likelyWorst: number };
  /** How often it is finished after its out-time, from 0 to 1, and by how much on average when it is. */
  lateChance: number;
  meanLate: number;
  /** How often it is finished after the latest it may be. */
  tooLateChance: number;
}

export interface PlanOutlook {
  runs: number;
  cars: readonly CarOutlook[];
  /** How often at least one car is late. */
  anyLateChance: number;
  /** How often something is kept waiting longer than it may after something else. */
  waitedTooLongChance: number;
}

/**
 * Plays a plan through many times, each task taking what it may take (see {@link durationSource}), one task's luck saying
 * nothing about another's. People, ways and order stay as planned, and starts are pushed (see {@link pushStarts}). What is
 * under way ends when it presumably does. Each task has its own numbers, so two plans for the same service and seed meet
 * the same luck and can be compared.
 *
 * @param plan one that {@link checkBayPlan} finds nothing wrong with
 * @throws RangeError when the seed or the runs are not whole numbers, or there are no runs
 * @example
 * simulatePlan(service, plan, { seed: 1, runs: 1000 }).cars[0]?.lateChance // 0.083
 */
export function simulatePlan(
  service: Service,
  plan: BayPlan,
  { seed, runs }: SimulationOptions,
): PlanOutlook {
  if (!Number.isSafeInteger(seed) || !Number.isSafeInteger(runs) || runs < 1) {
    throw new RangeError(`simulatePlan: seed ${seed} and runs ${runs} must be whole, the runs from 1.`);
  }
  const order = orderOf(service, plan);
  const draws = order.work.map((one) => drawsOf(service, one, seed));
  const carOf = order.work.map(({ task }) => service.cars.findIndex(({ id }) => id === task.car));
  const waits = listWaits(order);
  const durations = new Float64Array(draws.length);
  const starts = new Float64Array(draws.length);
  const finishes = service.cars.map(() => new Float64Array(runs));
  let anyLate = 0;
  let waitedTooLong = 0;
  for (let run = 0; run < runs; run += 1) {
    for (const [place, draw] of draws.entries()) durations[place] = draw();
    pushStarts(order, durations, starts);
    const ended = lastFinishes(service, carOf, durations, starts);
    for (const [car, own] of finishes.entries()) own[run] = ended[car] ?? 0;
    if (service.cars.some(({ outTime }, car) => (ended[car] ?? 0) > outTime)) anyLate += 1;
    if (waits.some((wait) => isTooLong(wait, durations, starts))) waitedTooLong += 1;
  }
  return {
    runs,
    cars: service.cars.map((car, number) => summarise(car, (finishes[number] ?? new Float64Array(0)).sort())),
    anyLateChance: anyLate / runs,
    waitedTooLongChance: waitedTooLong / runs,
  };
}

function drawsOf({ tasks }: Service, { task, way, work }: OrderedWork, seed: number): () => number {
  if (task.underWay || !way) return () => work.finish - work.start;
  const number = tasks.findIndex(({ id }) => id === task.id);
  const chance = new Chance((seed + Math.imul(number + 1, 0x9e3779b1)) >>> 0);
  const draw = durationSource(way.duration);
  return () => draw(chance);
}

/** Car by car; a car without work is finished when it comes in. */
function lastFinishes(
  { cars }: Service,
  carOf: readonly number[],
  durations: Float64Array,
  starts: Float64Array,
): number[] {
  const ended = cars.map(({ inTime }) => inTime);
  for (const [place, car] of carOf.entries()) {
    ended[car] = Math.max(ended[car] ?? 0, at(starts, place) + at(durations, place));
  }
  return ended;
}

/** Places in the order of two tasks of which the second may not wait longer than that for its turn. */
interface Wait {
  before: number;
  after: number;
  maxLag: number;
}

function listWaits({ work }: WorkOrder): Wait[] {
  return work.flatMap(({ task }, after) =>
    (task.after ?? []).flatMap(({ task: other, maxLag }) => {
      const before = work.findIndex((one) => one.task.id === other);
      return maxLag === undefined || before < 0 ? [] : [{ before, after, maxLag }];
    }),
  );
}

/** A hair's breadth that arithmetic adds is no wait. */
const ROUNDING = 1e-9;

function isTooLong({ before, after, maxLag }: Wait, durations: Float64Array, starts: Float64Array): boolean {
  return at(starts, after) - at(starts, before) - at(durations, before) > maxLag + ROUNDING;
}

const NINE_IN_TEN = 0.9;

function summarise({ id, outTime, latest = outTime }: ServiceCar, finishes: Float64Array): CarOutlook {
  const late = finishes.filter((finish) => finish > outTime);
  const nearWorst = at(finishes, Math.ceil(NINE_IN_TEN * finishes.length) - 1);
  return {
    car: id,
    outTime,
    finishes,
    spare: { mean: outTime - meanOf(finishes), likelyWorst: outTime - nearWorst },
    lateChance: late.length / finishes.length,
    meanLate: late.length === 0 ? 0 : meanOf(late) - outTime,
    tooLateChance: finishes.filter((finish) => finish > latest).length / finishes.length,
  };
}

function meanOf(numbers: Float64Array): number {
  return numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
}

/** How often it leaves so many whole minutes late: `[0.9, 0.06, 0.04]` is on time in nine of ten runs. A begun minute is not counted. */
export function lateMinutes({ finishes, outTime }: CarOutlook, unitsPerMinute: number): number[] {
  const shares: number[] = [];
  for (const finish of finishes) {
    const minutes = Math.max(0, Math.floor((finish - outTime) / unitsPerMinute));
    while (shares.length <= minutes) shares.push(0);
    shares[minutes] = (shares[minutes] ?? 0) + 1 / finishes.length;
  }
  return shares;
}
