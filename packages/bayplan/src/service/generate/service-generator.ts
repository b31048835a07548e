import { at } from '../../at';
import type { CompiledService, CompiledTask, CompiledWay } from '../compile-service';
import { type Decided, judgeWork, type Solution } from '../judge-work';
import type { ServicePerson } from '../service-model';
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
  /** By task: what it waits for, and what waits for it. */
  readonly #waitsTo: readonly (readonly Wait[])[];
  readonly #waitsFrom: readonly (readonly Wait[])[];
  readonly #ways: Int32Array;
  readonly #finishes: Int32Array;
  readonly #seats: readonly Int32Array[];
  /** How many seats of each are taken. */
  readonly #heads: Int32Array;
  readonly #placed: Uint8Array;
  /** What is placed, in the order of placing. */
  readonly #order: Int32Array;
  #placings = 0;
  readonly #waiting: Int32Array;
  readonly #held: Int32Array;
  readonly #free: Uint8Array;
  readonly #preference: Int32Array;
  /** Who can do least else goes first. */
  readonly #usual: Int32Array;
  readonly #wasThere: Uint8Array;
  readonly #alwaysThere: Uint8Array;
  readonly #isEnd: Uint8Array;
  readonly #isTied: Uint8Array;
  /** By task: who else needs what is opened for it. */
  readonly #sharers: readonly (readonly (readonly number[])[])[];
  /** By when each must be finished for what can't be left to be finished by the out-time after it. */
  readonly #latest: Float64Array;
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
    this.#latest = new Float64Array(size);
    this.#isTied = Uint8Array.from(service.tasks, ({ number }) =>
      Number(
        this.#ties.ends.some(({ end }) => end === number) ||
          this.#ties.together.some((pair) => pair.includes(number)),
      ),
    );
    this.#sharers = service.tasks.map(({ number }) =>
      this.#ties.ends.flatMap(({ users }) => (users.includes(number) ? [users] : [])),
    );
    this.#isEnd = Uint8Array.from(service.tasks, ({ number }) =>
      Number(this.#ties.ends.some(({ end }) => end === number)),
    );
    this.#waits = waitsOf(service);
    this.#waitsTo = service.tasks.map(({ number }) => this.#waits.filter(({ to }) => to === number));
    this.#waitsFrom = service.tasks.map(({ number }) => this.#waits.filter(({ from }) => from === number));
    this.starts = new Int32Array(size);
    this.#ways = new Int32Array(size);
    this.#finishes = new Int32Array(size);
    this.#seats = service.tasks.map((task) => new Int32Array(most(task)));
    this.#heads = new Int32Array(size);
    this.#placed = new Uint8Array(size);
    this.#order = new Int32Array(size);
    this.#waiting = new Int32Array(size);
    this.#held = new Int32Array(size);
    this.#free = new Uint8Array(service.service.people.length);
    this.#preference = new Int32Array(service.service.people.length);
    this.#beside = new Int32Array(size);
    this.#moments = [
      ...new Set(service.service.people.flatMap(({ hours }) => hours.map(({ from }) => from))),
    ];
    this.#horizon = service.latest + service.tasks.reduce((sum, { ways }) => sum + longest(ways), 0);
    const { people } = service.service;
    this.#usual = Int32Array.from(
      [...people.keys()].toSorted(
        (one, other) => skillsOf(people[one]) - skillsOf(people[other]) || one - other,
      ),
    );
    this.#wasThere = new Uint8Array(people.length);
    this.#alwaysThere = Uint8Array.from(people, ({ hours }) =>
      Number(hours.some(({ from, until }) => from <= service.earliest && until >= 2 * this.#horizon)),
    );
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
    this.#placings = 0;
    this.#countWaits(genes);
    this.#setLatest(genes);
    let broken = 0;
    const fixed = this.service.tasks.filter((task) => task.start !== undefined && this.#isDone(task.number));
    for (const task of fixed) broken += this.#place(task, task.start ?? 0, task.start) ?? 0;
    for (;;) {
      const task = this.#next(genes.priorities);
      if (!task) break;
      const over = this.#place(task, this.#earliest(task, genes), this.#lastChance(task));
      this.#release(task.number, genes);
      if (over === undefined) this.#ways[task.number] = LEFT;
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
    for (const wait of this.#waitsFrom[task] ?? []) {
      if (this.#counts(wait, genes)) this.#waiting[wait.to] = at(this.#waiting, wait.to) - 1;
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
    for (const wait of this.#waitsTo[number] ?? []) {
      if (!this.#counts(wait, genes)) continue;
      earliest = Math.max(earliest, at(this.#finishes, wait.from) + wait.lag);
    }
    return earliest;
  }

  /**
   * Returns by how much that is too late; by the whole horizon when it fits nowhere, or not at its fixed time. Nothing, and
   * it is not placed, when it would start after `last`: its start stays as a hint when it was tried.
   */
  #place(task: CompiledTask, from: number, last: number | undefined): number | undefined {
    const way = task.ways[at(this.#ways, task.number)];
    if (!way) return this.#horizon;
    let start = from;
    this.#prefer(task);
    for (;;) {
      if (last !== undefined && start > last && !this.#isFixed(task.number)) {
        this.starts[task.number] = start;
        return undefined;
      }
      if (this.#fits(task, way, start)) break;
      const next = this.#isFixed(task.number) ? Number.POSITIVE_INFINITY : this.#nextMoment(start);
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

  #setLatest(genes: Genes): void {
    for (const { number, car } of this.service.tasks) {
      this.#latest[number] = this.service.cars[car]?.outTime ?? 0;
    }
    let isSettled = false;
    // Each round carries a time one wait further; a circle stops there too.
    for (let round = 0; round < this.service.tasks.length && !isSettled; round += 1) {
      isSettled = true;
      for (const wait of this.#waits) {
        if (!this.#stays(wait.to) || !this.#counts(wait, genes)) continue;
        const latest = at(this.#latest, wait.to) - this.#durationOf(wait.to) - wait.lag;
        if (latest >= at(this.#latest, wait.from)) continue;
        this.#latest[wait.from] = latest;
        isSettled = false;
      }
    }
  }

  #stays(task: number): boolean {
    return this.service.tasks[task]?.must === true || at(this.#isEnd, task) === 1;
  }

  #durationOf(task: number): number {
    return this.service.tasks[task]?.ways[at(this.#ways, task)]?.duration ?? 0;
  }

  /** When what can be left must start, for what must still come after it to be finished by the out-time. */
  #lastChance(task: CompiledTask): number | undefined {
    return this.#canLeave(task) ? at(this.#latest, task.number) - this.#durationOf(task.number) : undefined;
  }

  /** Nothing that must be done, or that something else hangs on. */
  #canLeave({ number, must }: CompiledTask): boolean {
    if (must || at(this.#isTied, number)) return false;
    return (this.#sharers[number] ?? []).every((users) =>
      users.some((user) => user !== number && at(this.#placed, user) === 1),
    );
  }

  #book(task: CompiledTask, way: CompiledWay, start: number): void {
    this.starts[task.number] = start;
    this.#finishes[task.number] = start + way.duration;
    this.#heads[task.number] = way.heads;
    this.#placed[task.number] = 1;
    this.#order[this.#placings] = task.number;
    this.#placings += 1;
  }

  #nextMoment(start: number): number {
    let next = Number.POSITIVE_INFINITY;
    for (let place = 0; place < this.#placings; place += 1) {
      const finish = at(this.#finishes, at(this.#order, place));
      if (finish > start && finish < next) next = finish;
    }
    for (const moment of this.#moments) if (moment > start && moment < next) next = moment;
    return next;
  }

  #fits(task: CompiledTask, way: CompiledWay, start: number): boolean {
    const finish = start + way.duration;
    this.#markFree(task, start, finish);
    this.#besides = 0;
    for (let place = 0; place < this.#placings; place += 1) {
      const other = at(this.#order, place);
      if (at(this.starts, other) >= finish || start >= at(this.#finishes, other)) continue;
      if (this.#keepsAway(task, other)) return false;
      this.#markSeats(other, this.#free, 0);
      this.#beside[this.#besides] = other;
      this.#besides += 1;
    }
    const seats = this.#seats[task.number];
    if (!seats || !this.#hasRoom(way, start)) return false;
    return seatPeople(way, this.#free, task.people, this.#preference, seats);
  }

  #keepsAway(task: CompiledTask, number: number): boolean {
    const other = this.service.tasks[number];
    return other?.car === task.car && (other.fuelOpen || task.fuelOpen);
  }

  /** Everyone on a task that is placed. */
  #markSeats(task: number, people: Uint8Array, mark: number): void {
    const seats = this.#seats[task];
    const heads = at(this.#heads, task);
    for (let seat = 0; seats && seat < heads; seat += 1) people[at(seats, seat)] = mark;
  }

  #markFree({ underWay }: CompiledTask, start: number, finish: number): void {
    const { people } = this.service.service;
    for (let person = 0; person < people.length; person += 1) {
      const there =
        underWay ||
        at(this.#alwaysThere, person) === 1 ||
        people[person]?.hours.some(({ from, until }) => from <= start && finish <= until);
      this.#free[person] = there ? 1 : 0;
    }
  }

  /** Who did the work before it, then who can do least else. */
  #prefer({ number }: CompiledTask): void {
    this.#wasThere.fill(0);
    for (const { before, after } of this.service.links) {
      if (after === number && at(this.#placed, before)) this.#markSeats(before, this.#wasThere, 1);
    }
    let place = 0;
    for (let person = 0; person < this.#wasThere.length; person += 1) {
      if (at(this.#wasThere, person)) this.#preference[place++] = person;
    }
    for (let next = 0; next < this.#usual.length; next += 1) {
      const person = at(this.#usual, next);
      if (!at(this.#wasThere, person)) this.#preference[place++] = person;
    }
  }

  #hasRoom(way: CompiledWay, start: number): boolean {
    const { tools, places } = this.service.service;
    for (let tool = 0; tool < tools.length; tool += 1) {
      const wanted = way.tools[tool] ?? 0;
      const limit = tools[tool]?.count ?? 0;
      if (wanted > 0 && !this.#isEnough(start, wanted, limit, (other) => other.tools[tool] ?? 0))
        return false;
    }
    const room = places[way.place ?? -1]?.room;
    if (room === undefined || way.heads === 0) return true;
    return this.#isEnough(start, way.heads, room, (other) => (other.place === way.place ? other.heads : 0));
  }

  /** All uses beside it at a time are the most there can be, the largest is the least; rarely it takes a closer look. */
  #isEnough(start: number, wanted: number, limit: number, amountOf: (way: CompiledWay) => number): boolean {
    let [sum, largest] = [0, 0];
    for (let place = 0; place < this.#besides; place += 1) {
      const task = at(this.#beside, place);
      const way = this.service.tasks[task]?.ways[at(this.#ways, task)];
      const amount = way ? amountOf(way) : 0;
      sum += amount;
      largest = Math.max(largest, amount);
    }
    if (wanted + sum <= limit) return true;
    return wanted + largest <= limit && wanted + this.#mostUsed(start, amountOf) <= limit;
  }

  /** Use only rises where something starts. */
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

function skillsOf(person: ServicePerson | undefined): number {
  return person?.skills.length ?? 0;
}

function longest(ways: readonly CompiledWay[]): number {
  return Math.max(0, ...ways.map(({ duration }) => duration));
}
