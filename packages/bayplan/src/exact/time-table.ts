import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import type { Engine } from './engine';
import { read } from './int-list';

/**
 * What is certainly in use of one resource: a job runs for sure between its latest start and its earliest finish. Where
 * that is already too much there is a contradiction; where a job no longer fits beside it, its start moves (time-table
 * filtering; with an explanation for one moment at a time, after Schutt, Feydy, Stuckey & Wallace 2011).
 *
 * Everything is written for one direction of time and run in both: seen backwards, a job starts at minus its finish.
 */
export class TimeTable {
  readonly #jobs: Int32Array;
  readonly #amounts: Int32Array;
  readonly #durations: Int32Array;
  readonly #capacity: number;
  readonly #times: Int32Array;
  readonly #heights: Int32Array;
  #events = 0;

  constructor({ size, resources, needs, durations, capacities }: CompiledProject, resource: number) {
    const amounts = Int32Array.from({ length: size }, (_, job) => at(needs, job * resources + resource));
    this.#jobs = Int32Array.from(amounts.keys()).filter((job) => at(amounts, job) > 0);
    this.#amounts = amounts;
    this.#durations = durations;
    this.#capacity = at(capacities, resource);
    this.#times = new Int32Array(2 * size);
    this.#heights = new Int32Array(2 * size);
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
    for (let place = 0; place < this.#jobs.length; place += 1) {
      if (!this.#move(engine, way, read(this.#jobs, place))) return false;
    }
    return true;
  }

  /** The certain use: `heights` of an event holds from its time to the next event's. */
  #collect(values: Int32Array, way: Way): void {
    this.#events = 0;
    for (let place = 0; place < this.#jobs.length; place += 1) {
      const job = read(this.#jobs, place);
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
    engine.notes.add(2 * job + way, moment - read(this.#durations, job) + 1 + shift);
    this.#addUse(engine, way, moment, this.#capacity - read(this.#amounts, job), job, (slot, value) =>
      engine.notes.add(slot, value),
    );
    return engine.demand(2 * job + way, moment + 1 + shift, reason);
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
    for (let place = 0; place < this.#jobs.length; place += 1) {
      const job = read(this.#jobs, place);
      if (job === apart || !this.#runsAt(values, way, job, moment)) continue;
      const amount = read(this.#amounts, job);
      if (amount <= spare) {
        spare -= amount;
        continue;
      }
      const shift = this.#shift(way, job);
      add(2 * job + way, moment - read(this.#durations, job) + 1 + shift);
      add(2 * job + 1 - way, -moment - shift);
    }
  }

  #useAt(values: Int32Array, way: Way, moment: number, apart: number): number {
    let use = 0;
    for (let place = 0; place < this.#jobs.length; place += 1) {
      const job = read(this.#jobs, place);
      if (job !== apart && this.#runsAt(values, way, job, moment)) use += read(this.#amounts, job);
    }
    return use;
  }

  #runsAt(values: Int32Array, way: Way, job: number, moment: number): boolean {
    if (this.#latest(values, way, job) > moment) return false;
    return moment < this.#earliest(values, way, job) + read(this.#durations, job);
  }

  #earliest(values: Int32Array, way: Way, job: number): number {
    return read(values, 2 * job + way) - this.#shift(way, job);
  }

  #latest(values: Int32Array, way: Way, job: number): number {
    return -read(values, 2 * job + 1 - way) - this.#shift(way, job);
  }

  #shift(way: Way, job: number): number {
    return way === 0 ? 0 : read(this.#durations, job);
  }
}

/** 0 forwards, 1 backwards. */
type Way = 0 | 1;
