import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import type { Engine, Narrowing } from './engine';
import { read } from './int-list';

/** Work that needs some of a resource: its start is a number of the engine. It counts once the fact `ifSlot ≥ 1` holds. */
export interface TableJob {
  start: number;
  duration: number;
  amount: number;
  /** −1 for work that is always done. */
  ifSlot: number;
}

export function projectTable(
  { size, resources, needs, durations, capacities }: CompiledProject,
  resource: number,
): TimeTable {
  const jobs = Array.from({ length: size }, (_, job) => ({
    start: job,
    duration: at(durations, job),
    amount: at(needs, job * resources + resource),
    ifSlot: -1,
  }));
  return new TimeTable(jobs, at(capacities, resource));
}

/**
 * What is certainly in use of one resource: a job runs for sure between its latest start and its earliest finish. Where
 * that is already too much there is a contradiction; where a job no longer fits beside it, its start moves (time-table
 * filtering; with an explanation for one moment at a time, after Schutt, Feydy, Stuckey & Wallace 2011).
 *
 * Everything is written for one direction of time and run in both: seen backwards, a job starts at minus its finish.
 */
export class TimeTable implements Narrowing {
  readonly slots: readonly number[];
  isDue = true;
  readonly #starts: Int32Array;
  readonly #durations: Int32Array;
  readonly #amounts: Int32Array;
  readonly #ifSlots: Int32Array;
  readonly #capacity: number;
  readonly #times: Int32Array;
  readonly #heights: Int32Array;
  #events = 0;

  constructor(jobs: readonly TableJob[], capacity: number) {
    const counting = jobs.filter(({ amount }) => amount > 0);
    this.slots = counting.flatMap(({ start, ifSlot }) => [
      2 * start,
      2 * start + 1,
      ...(ifSlot < 0 ? [] : [ifSlot]),
    ]);
    this.#starts = Int32Array.from(counting, ({ start }) => start);
    this.#durations = Int32Array.from(counting, ({ duration }) => duration);
    this.#amounts = Int32Array.from(counting, ({ amount }) => amount);
    this.#ifSlots = Int32Array.from(counting, ({ ifSlot }) => ifSlot);
    this.#capacity = capacity;
    this.#times = new Int32Array(2 * counting.length);
    this.#heights = new Int32Array(2 * counting.length);
  }

  /** False after a contradiction. */
  narrow(engine: Engine): boolean {
    return this.#narrowOneWay(engine, 0) && this.#narrowOneWay(engine, 1);
  }

  #narrowOneWay(engine: Engine, way: Way): boolean {
    this.#collect(engine.trail.values, way);
    if (this.#events === 0) return true;
    for (let event = 0; event < this.#events; event += 1) {
      if (read(this.#heights, event) <= this.#capacity) continue;
      this.#explainOverload(engine, way, read(this.#times, event));
      return false;
    }
    for (let job = 0; job < this.#starts.length; job += 1) {
      if (this.#counts(engine.trail.values, job) && !this.#move(engine, way, job)) return false;
    }
    return true;
  }

  /** The certain use: `heights` of an event holds from its time to the next event's. */
  #collect(values: Int32Array, way: Way): void {
    this.#events = 0;
    for (let job = 0; job < this.#starts.length; job += 1) {
      if (!this.#counts(values, job)) continue;
      const from = this.#latest(values, way, job);
      const to = this.#earliest(values, way, job) + read(this.#durations, job);
      if (from >= to) continue;
      this.#insert(from, read(this.#amounts, job));
      this.#insert(to, -read(this.#amounts, job));
    }
    for (let event = 1; event < this.#events; event += 1) {
      this.#heights[event] = read(this.#heights, event) + read(this.#heights, event - 1);
    }
  }

  #insert(time: number, change: number): void {
    let event = this.#events;
    while (event > 0 && read(this.#times, event - 1) > time) event -= 1;
    if (event > 0 && read(this.#times, event - 1) === time) {
      this.#heights[event - 1] = read(this.#heights, event - 1) + change;
      return;
    }
    this.#times.copyWithin(event + 1, event, this.#events);
    this.#heights.copyWithin(event + 1, event, this.#events);
    this.#times[event] = time;
    this.#heights[event] = change;
    this.#events += 1;
  }

  /** Moves a job behind every stretch in which it doesn't fit beside what is certain. */
  #move(engine: Engine, way: Way, job: number): boolean {
    const { values } = engine.trail;
    const latest = this.#latest(values, way, job);
    const room = this.#capacity - read(this.#amounts, job);
    const duration = read(this.#durations, job);
    let start = this.#earliest(values, way, job);
    for (let event = 0; event + 1 < this.#events; event += 1) {
      const from = read(this.#times, event);
      if (from >= start + duration || from >= latest) break;
      const to = read(this.#times, event + 1);
      if (read(this.#heights, event) <= room) continue;
      while (start < to) {
        const moment = Math.min(to, start + duration) - 1;
        if (!this.#moveBehind(engine, way, job, moment)) return false;
        start = moment + 1;
      }
    }
    return true;
  }

  #moveBehind(engine: Engine, way: Way, job: number, moment: number): boolean {
    const shift = this.#shift(way, job);
    const reason = engine.notes.begin();
    const slot = 2 * read(this.#starts, job) + way;
    if (read(this.#ifSlots, job) >= 0) engine.notes.add(read(this.#ifSlots, job), 1);
    engine.notes.add(slot, moment - read(this.#durations, job) + 1 + shift);
    this.#addUse(engine, way, moment, this.#capacity - read(this.#amounts, job), job, (slot, value) =>
      engine.notes.add(slot, value),
    );
    return engine.demand(slot, moment + 1 + shift, reason);
  }

  #explainOverload(engine: Engine, way: Way, moment: number): void {
    engine.clash.length = 0;
    this.#addUse(engine, way, moment, this.#capacity, -1, (slot, value) => {
      engine.clash.push(slot);
      engine.clash.push(value);
    });
  }

  /** Facts by which more than `room` is in use at a moment, leaving out what isn't needed for that. */
  #addUse(
    engine: Engine,
    way: Way,
    moment: number,
    room: number,
    apart: number,
    add: (slot: number, value: number) => void,
  ): void {
    const { values } = engine.trail;
    let spare = this.#useAt(values, way, moment, apart) - room - 1;
    for (let job = 0; job < this.#starts.length; job += 1) {
      if (job === apart || !this.#runsAt(values, way, job, moment)) continue;
      const amount = read(this.#amounts, job);
      if (amount <= spare) {
        spare -= amount;
        continue;
      }
      const shift = this.#shift(way, job);
      const slot = 2 * read(this.#starts, job) + way;
      add(slot, moment - read(this.#durations, job) + 1 + shift);
      add(slot ^ 1, -moment - shift);
      if (read(this.#ifSlots, job) >= 0) add(read(this.#ifSlots, job), 1);
    }
  }

  #useAt(values: Int32Array, way: Way, moment: number, apart: number): number {
    let use = 0;
    for (let job = 0; job < this.#starts.length; job += 1) {
      if (job !== apart && this.#runsAt(values, way, job, moment)) use += read(this.#amounts, job);
    }
    return use;
  }

  #counts(values: Int32Array, job: number): boolean {
    const slot = read(this.#ifSlots, job);
    return slot < 0 || read(values, slot) >= 1;
  }

  #runsAt(values: Int32Array, way: Way, job: number, moment: number): boolean {
    if (!this.#counts(values, job)) return false;
    if (this.#latest(values, way, job) > moment) return false;
    return moment < this.#earliest(values, way, job) + read(this.#durations, job);
  }

  #earliest(values: Int32Array, way: Way, job: number): number {
    return read(values, 2 * read(this.#starts, job) + way) - this.#shift(way, job);
  }

  #latest(values: Int32Array, way: Way, job: number): number {
    return -read(values, 2 * read(this.#starts, job) + 1 - way) - this.#shift(way, job);
  }

  #shift(way: Way, job: number): number {
    return way === 0 ? 0 : read(this.#durations, job);
  }
}

/** 0 forwards, 1 backwards. */
type Way = 0 | 1;
