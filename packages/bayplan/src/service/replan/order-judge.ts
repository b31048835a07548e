import { at } from '../../at';
import type { PlannedWork } from '../bay-plan';
import { lagBetween } from '../order/plan-order';
import { type OrderedWork, type OrderRules, whenAllAreThere } from '../order/push-starts';
import type { Service } from '../service-model';

/** One task of an order with other people, or left. */
export interface Change {
  place: number;
  one: OrderedWork | undefined;
}

export interface Worth {
  late: number;
  /** How far towards and past the out-times the tasks end, the last ones above all. */
  strain: number;
  value: number;
}

/** Who does each task of an order; nobody does what is left. */
export interface Seating {
  work: readonly (OrderedWork | undefined)[];
  late: number;
  worth: Worth;
}

/** So steep that what ends last counts most: where several ends are late alike, each that comes forward is a step. */
const SQUARINGS = 3;

/** Something earlier that a task waits for, whoever does the two. */
interface Tie {
  place: number;
  lag: number;
}

/**
 * What an order is worth with other people in it. Hundreds of seatings are asked about for one repair, so what two tasks have
 * to do with each other, whoever does them, is found out once, and of each person only the end of their last task is kept.
 */
export class OrderJudge {
  readonly #service: Service;
  readonly #size: number;
  /** Place by place. */
  readonly #ties: readonly (readonly Tie[])[];
  /** Of each person the end of their last task so far. */
  readonly #freeFrom = new Map<string, number>();
  readonly #cars: Int32Array;
  readonly #durations: Float64Array;
  readonly #starts: Float64Array;
  readonly #over: Float64Array;
  readonly #work: (OrderedWork | undefined)[];

  constructor(service: Service, planned: readonly OrderedWork[], { follows }: OrderRules) {
    const size = planned.length;
    this.#service = service;
    this.#size = size;
    this.#ties = tiesOf(service, planned, follows);
    this.#cars = Int32Array.from(planned, ({ task }) => service.cars.findIndex(({ id }) => id === task.car));
    this.#durations = Float64Array.from(planned, ({ work }) => work.finish - work.start);
    this.#starts = new Float64Array(size);
    this.#over = new Float64Array(service.cars.length);
    this.#work = [...planned];
  }

  seat(work: Seating['work']): Seating {
    const worth = this.#judge(work);
    return { work, late: worth.late, worth };
  }

  change({ work }: Seating, { place, one }: Change): Seating {
    return this.seat(work.with(place, one));
  }

  worthOf({ work }: Seating, { place, one }: Change): Worth {
    for (let other = 0; other < this.#size; other += 1) this.#work[other] = work[other];
    this.#work[place] = one;
    return this.#judge(this.#work);
  }

  /** The same order with these people; two tasks of one person are done one after the other. */
  planOf({ work }: Seating): PlannedWork[] {
    this.#judge(work);
    return work.flatMap((one, place) => {
      if (!one) return [];
      const start = at(this.#starts, place);
      return [{ ...one.work, start, finish: start + at(this.#durations, place) }];
    });
  }

  #judge(work: Seating['work']): Worth {
    let strain = 0;
    let value = 0;
    this.#over.fill(0);
    this.#freeFrom.clear();
    for (let place = 0; place < this.#size; place += 1) {
      const one = work[place];
      if (!one) continue;
      this.#starts[place] = one.since ?? whenAllAreThere(one.hours, this.#earliest(work, one, place));
      value += one.way?.value ?? 0;
      const car = at(this.#cars, place);
      const finish = at(this.#starts, place) + at(this.#durations, place);
      this.#occupy(one, finish);
      strain += this.#strainOf(car, finish);
      const { outTime = finish } = this.#service.cars[car] ?? {};
      this.#over[car] = Math.max(at(this.#over, car), finish - outTime);
    }
    return { late: this.#over.reduce((sum, one) => sum + one, 0), strain, value };
  }

  #earliest(work: Seating['work'], one: OrderedWork, place: number): number {
    let start = one.earliest;
    for (const { place: earlier, lag } of this.#ties[place] ?? []) {
      if (!work[earlier]) continue;
      start = Math.max(start, at(this.#starts, earlier) + at(this.#durations, earlier) + lag);
    }
    for (const { person } of one.work.people) {
      start = Math.max(start, this.#freeFrom.get(person) ?? start);
    }
    return start;
  }

  #occupy({ work }: OrderedWork, finish: number): void {
    for (const { person } of work.people) {
      this.#freeFrom.set(person, Math.max(finish, this.#freeFrom.get(person) ?? finish));
    }
  }

  #strainOf(car: number, finish: number): number {
    const { inTime = finish, outTime = finish } = this.#service.cars[car] ?? {};
    let strain = Math.max(0, (finish - inTime) / Math.max(1, outTime - inTime));
    for (let again = 0; again < SQUARINGS; again += 1) strain *= strain;
    return strain;
  }
}

function tiesOf(service: Service, planned: readonly OrderedWork[], follows: OrderRules['follows']): Tie[][] {
  const alone = planned.map((one) => ({ ...one, work: { ...one.work, people: [] } }));
  return alone.map((one, number) =>
    alone.slice(0, number).flatMap((earlier, place) => {
      const lag = follows(earlier.work, one.work) ? lagBetween(service, earlier, one) : undefined;
      return lag === undefined ? [] : [{ place, lag }];
    }),
  );
}
