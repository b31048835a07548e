import { at } from '../../at';
import type { CompiledService, CompiledTask, CompiledWay } from '../compile-service';
import { type Decided, judgeWork, type Solution } from '../judge-work';
import { LEFT, settleWays, tiesOf } from './choose-work';
import { seatPeople } from './seat-people';
import { type Wait, waitsOf } from './waits';

/** What a plan is made from. Task by task. */
export interface Genes {
  /** The least goes first. */
  priorities: Float64Array;
  /** The number of the way, or {@link LEFT}. */
  ways: Int32Array;
  /** 0: what needs something closed comes before it is opened; 1: after it was closed. */
  sides: Uint8Array;
}

/** What was made, and by how much it breaks the rules: a plan when by nothing. */
export interface Generated extends Solution {
  broken: number;
}

/**
 * Serial generation: task by task, each at the earliest time at which its people, tools and place are free, people who
 * did the work before it first. Optional work that would make a car late is left. What is under way or pinned to a time is placed before all else. Where a longest lag or a
 * pinned start is missed, what came too early is held back and everything made again, a few times.
 */
export class ServiceGenerator {
  readonly service: CompiledService;
  readonly starts: Int32Array;
  schedules = 0;
  readonly #ties;
  readonly #waits: readonly Wait[];
  readonly #ways: Int32Array;
  readonly #finishes: Int32Array;
  readonly #seats: readonly Int32Array[];
  readonly #placed: Uint8Array;
  readonly #waiting: Int32Array;
  readonly #held: Int32Array;
  readonly #free: Uint8Array;
  readonly #preference: Int32Array;
  /** The tasks that run at some time of a stretch that is looked at. */
  readonly #beside: Int32Array;
  #besides = 0;
  readonly #moments: readonly number[];
  readonly #horizon: number;

  constructor(service: CompiledService) {
    const size = service.tasks.length;
    const most = (task: CompiledTask) => Math.max(0, ...task.ways.map(({ heads }) => heads));
    this.service = service;
    this.#ties = tiesOf(service);
    this.#waits = waitsOf(service);
    this.starts = new Int32Array(size);
    this.#ways = new Int32Array(size);
    this.#finishes = new Int32Array(size);
    this.#seats = service.tasks.map((task) => new Int32Array(most(task)));
    this.#placed = new Uint8Array(size);
    this.#waiting = new Int32Array(size);
    this.#held = new Int32Array(size);
    this.#free = new Uint8Array(service.service.people.length);
    this.#preference = new Int32Array(service.service.people.length);
    this.#beside = new Int32Array(size);
    this.#moments = [
      ...new Set(service.service.people.flatMap(({ hours }) => hours.map(({ from }) => from))),
    ];
    this.#horizon = service.latest + service.tasks.reduce((sum, { ways }) => sum + longest(ways), 0);
  }

  /** Leaves the starts of what is done in `starts`. Nothing when the ways asked for can't go together. */
  generate(genes: Genes): Generated | undefined {
    this.#ways.set(genes.ways);
    this.#held.fill(Number.MIN_SAFE_INTEGER);
    for (const task of this.service.tasks) this.#held[task.number] = task.earliest;
    if (!settleWays(this.service, this.#ties, this.#ways)) {
      this.schedules += 1;
      return undefined;
    }
    let broken = this.#placeAll(genes);
    for (let again = 0; again < MOST_REPAIRS && broken > 0 && this.#holdBack(); again += 1) {
      broken = this.#placeAll(genes);
    }
    return { ...judgeWork(this.service, this.#read()), broken };
  }

  /** Returns by how much the rules are broken. */
  #placeAll(genes: Genes): number {
    this.schedules += 1;
    this.#placed.fill(0);
    this.#countWaits(genes);
    let broken = 0;
    const fixed = this.service.tasks.filter((task) => task.start !== undefined && this.#isDone(task.number));
    for (const task of fixed) broken += this.#place(task, task.start ?? 0, true);
    for (;;) {
      const task = this.#next(genes.priorities);
      if (!task) break;
      const over = this.#place(task, this.#earliest(task, genes), false);
      this.#release(task.number, genes);
      if (this.#isLate(task) && this.#canLeave(task)) this.#leave(task);
      else broken += over;
    }
    const forgotten = this.service.tasks.filter(
      ({ number }) => this.#isDone(number) && !at(this.#placed, number),
    );
    return broken + forgotten.length * this.#horizon + this.#countBrokenWaits(genes);
  }

  #isDone(task: number): boolean {
    return at(this.#ways, task) !== LEFT;
  }

  #counts({ from, to, chooser, side, onlyWith }: Wait, { sides }: Genes): boolean {
    if (!this.#isDone(from) || !this.#isDone(to)) return false;
    if (chooser >= 0 && at(sides, chooser) !== side) return false;
    return onlyWith < 0 || this.#isDone(onlyWith);
  }

  #countWaits(genes: Genes): void {
    this.#waiting.fill(0);
    for (const wait of this.#waits) {
      if (this.#counts(wait, genes) && !this.#isFixed(wait.from))
        this.#waiting[wait.to] = at(this.#waiting, wait.to) + 1;
    }
  }

  #isFixed(task: number): boolean {
    return this.service.tasks[task]?.start !== undefined;
  }

  #release(task: number, genes: Genes): void {
    for (const wait of this.#waits) {
      if (wait.from === task && this.#counts(wait, genes))
        this.#waiting[wait.to] = at(this.#waiting, wait.to) - 1;
    }
  }

  #next(priorities: Float64Array): CompiledTask | undefined {
    let next = -1;
    for (let task = 0; task < priorities.length; task += 1) {
      if (!this.#isDone(task) || at(this.#placed, task) || at(this.#waiting, task) > 0) continue;
      if (next < 0 || at(priorities, task) < at(priorities, next)) next = task;
    }
    return this.service.tasks[next];
  }

  #earliest({ number }: CompiledTask, genes: Genes): number {
    let earliest = at(this.#held, number);
    for (const wait of this.#waits) {
      if (wait.to !== number || !this.#counts(wait, genes)) continue;
      earliest = Math.max(earliest, at(this.#finishes, wait.from) + wait.lag);
    }
    return earliest;
  }

  /** Returns by how much that is too late; by the whole horizon when it fits nowhere, or not at its fixed time. */
  #place(task: CompiledTask, from: number, fixed: boolean): number {
    const way = task.ways[at(this.#ways, task.number)];
    if (!way) return this.#horizon;
    let start = from;
    this.#prefer(task);
    while (!this.#fits(task, way, start)) {
      const next = fixed ? Number.POSITIVE_INFINITY : this.#nextMoment(start);
      if (next > this.#horizon) {
        this.#book(task, way, from);
        return this.#horizon;
      }
      start = next;
    }
    this.#book(task, way, start);
    const early = Math.max(0, task.earliest - start);
    return early + Math.max(0, start + way.duration - task.latest);
  }

  #isLate({ number, car }: CompiledTask): boolean {
    return at(this.#finishes, number) > (this.service.cars[car]?.outTime ?? 0);
  }

  /** Nothing that must be done, or that something else hangs on. */
  #canLeave({ number, must }: CompiledTask): boolean {
    if (must || this.#ties.together.some(([one, other]) => one === number || other === number)) return false;
    return this.#ties.ends.every(
      ({ end, users }) =>
        end !== number &&
        (!users.includes(number) || users.some((user) => user !== number && at(this.#placed, user) === 1)),
    );
  }

  /** Its start stays, as a hint when it was tried. */
  #leave({ number }: CompiledTask): void {
    this.#ways[number] = LEFT;
    this.#placed[number] = 0;
  }

  #book(task: CompiledTask, way: CompiledWay, start: number): void {
    this.starts[task.number] = start;
    this.#finishes[task.number] = start + way.duration;
    this.#placed[task.number] = 1;
  }

  #nextMoment(start: number): number {
    let next = Number.POSITIVE_INFINITY;
    for (let task = 0; task < this.#placed.length; task += 1) {
      if (!at(this.#placed, task)) continue;
      const finish = at(this.#finishes, task);
      if (finish > start && finish < next) next = finish;
    }
    for (const moment of this.#moments) if (moment > start && moment < next) next = moment;
    return next;
  }

  #fits(task: CompiledTask, way: CompiledWay, start: number): boolean {
    const finish = start + way.duration;
    this.#markFree(task, start, finish);
    this.#besides = 0;
    for (const other of this.service.tasks) {
      if (!this.#runsWithin(other.number, start, finish)) continue;
      if (other.car === task.car && (other.fuelOpen || task.fuelOpen)) return false;
      for (const person of this.#seatsOf(other)) this.#free[person] = 0;
      this.#beside[this.#besides] = other.number;
      this.#besides += 1;
    }
    const seats = this.#seats[task.number];
    if (!seats || !this.#hasRoom(way, start)) return false;
    return seatPeople(way, this.#free, task.people, this.#preference, seats);
  }

  #runsWithin(task: number, start: number, finish: number): boolean {
    return at(this.#placed, task) === 1 && at(this.starts, task) < finish && start < at(this.#finishes, task);
  }

  #seatsOf({ number, ways }: CompiledTask): Int32Array {
    const seats = this.#seats[number] ?? new Int32Array();
    return seats.subarray(0, ways[at(this.#ways, number)]?.heads ?? 0);
  }

  #markFree({ underWay }: CompiledTask, start: number, finish: number): void {
    this.service.service.people.forEach(({ hours }, person) => {
      const there = underWay || hours.some(({ from, until }) => from <= start && finish <= until);
      this.#free[person] = there ? 1 : 0;
    });
  }

  /** Who did the work before it, then who can do least else. */
  #prefer({ number }: CompiledTask): void {
    const { links, service, tasks } = this.service;
    const before = new Set<number>();
    for (const link of links) {
      const other = link.after === number ? tasks[link.before] : undefined;
      if (other && at(this.#placed, other.number))
        for (const person of this.#seatsOf(other)) before.add(person);
    }
    const cost = (person: number) => (before.has(person) ? -1 : (service.people[person]?.skills.length ?? 0));
    const order = [...service.people.keys()].toSorted((one, other) => cost(one) - cost(other) || one - other);
    this.#preference.set(order);
  }

  /** Use only rises where something starts. */
  #hasRoom(way: CompiledWay, start: number): boolean {
    const { tools, places } = this.service.service;
    for (const [tool, { count }] of tools.entries()) {
      const wanted = way.tools[tool] ?? 0;
      if (wanted > 0 && wanted + this.#mostUsed(start, (other) => other.tools[tool] ?? 0) > count)
        return false;
    }
    const room = places[way.place ?? -1]?.room;
    if (room === undefined || way.heads === 0) return true;
    return (
      way.heads + this.#mostUsed(start, (other) => (other.place === way.place ? other.heads : 0)) <= room
    );
  }

  #mostUsed(start: number, amountOf: (way: CompiledWay) => number): number {
    let most = this.#useAt(start, amountOf);
    for (let place = 0; place < this.#besides; place += 1) {
      const moment = at(this.starts, at(this.#beside, place));
      if (moment > start) most = Math.max(most, this.#useAt(moment, amountOf));
    }
    return most;
  }

  #useAt(moment: number, amountOf: (way: CompiledWay) => number): number {
    let use = 0;
    for (let place = 0; place < this.#besides; place += 1) {
      const task = at(this.#beside, place);
      if (moment < at(this.starts, task) || moment >= at(this.#finishes, task)) continue;
      const way = this.service.tasks[task]?.ways[at(this.#ways, task)];
      if (way) use += amountOf(way);
    }
    return use;
  }

  #countBrokenWaits(genes: Genes): number {
    let broken = 0;
    for (const wait of this.#waits) {
      if (!this.#counts(wait, genes)) continue;
      broken += Math.max(0, at(this.#finishes, wait.from) + wait.lag - at(this.starts, wait.to));
    }
    for (const { before, after, maxLag } of this.service.links) {
      if (maxLag === undefined || !this.#isDone(before) || !this.#isDone(after)) continue;
      broken += Math.max(0, at(this.starts, after) - at(this.#finishes, before) - maxLag);
    }
    for (const { number } of this.service.tasks) if (this.#lacksSide(number)) broken += this.#horizon;
    return broken;
  }

  /** What needs closed that is open already and is never closed, or that opens and never closes: no side is left. */
  #lacksSide(task: number): boolean {
    if (!this.#isDone(task)) return false;
    const { accesses, tasks } = this.service.service;
    return accesses.some(
      ({ id, opening, closing }) =>
        opening === undefined && closing === undefined && tasks[task]?.closed?.includes(id),
    );
  }

  /** What was done too early for a longest lag starts so much later next time. False when there is no such thing. */
  #holdBack(): boolean {
    let held = false;
    for (const { before, after, maxLag } of this.service.links) {
      if (maxLag === undefined || !this.#isDone(before) || !this.#isDone(after) || this.#isFixed(before))
        continue;
      const over = at(this.starts, after) - at(this.#finishes, before) - maxLag;
      if (over <= 0) continue;
      this.#held[before] = Math.max(at(this.#held, before), at(this.starts, before) + over);
      held = true;
    }
    return held;
  }

  #read(): Decided[] {
    return this.service.tasks.map(({ number, ways }) => {
      const way = ways[at(this.#ways, number)];
      if (!way) return undefined;
      const seats = this.#seats[number] ?? new Int32Array();
      let first = 0;
      const people = way.crew.map(({ count }) => {
        first += count;
        return [...seats.subarray(first - count, first)];
      });
      return { way: at(this.#ways, number), start: at(this.starts, number), people };
    });
  }
}

const MOST_REPAIRS = 6;

function longest(ways: readonly CompiledWay[]): number {
  return Math.max(0, ...ways.map(({ duration }) => duration));
}
