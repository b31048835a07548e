import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import { Timeline } from '../timeline';

/**
 * Makes schedules of one project, in one direction of time, into arrays that the caller keeps: nothing is allocated on
 * the way. Every call gives each job a start at most once and so counts as one schedule in `schedules`.
 */
export class Generator {
  readonly project: CompiledProject;
  schedules = 0;
  readonly #timeline: Timeline;
  readonly #waiting: Int32Array;
  readonly #earliest: Int32Array;

  constructor(project: CompiledProject) {
    this.project = project;
    this.#timeline = new Timeline(project);
    this.#waiting = new Int32Array(project.size);
    this.#earliest = new Int32Array(project.size);
  }

  /**
   * Serial generation from a list: each job in turn at its earliest feasible time. The list must have every job after
   * those it waits for. Gives an active schedule: nothing can start earlier unless something else starts later.
   */
  serialInOrder(order: Int32Array, starts: Int32Array): number {
    this.#begin();
    let makespan = 0;
    for (let place = 0; place < this.project.size; place += 1) {
      makespan = Math.max(makespan, this.#placeEarliest(at(order, place), starts));
    }
    return makespan;
  }

  /** Serial generation by priority: of the jobs whose predecessors are placed, the least value, then the smallest job. */
  serialByPriority(priorities: Float64Array, starts: Int32Array): number {
    this.#begin();
    let makespan = 0;
    for (let placed = 0; placed < this.project.size; placed += 1) {
      const job = this.#leastEligible(priorities);
      makespan = Math.max(makespan, this.#placeEarliest(job, starts));
      this.#release(job, at(starts, job));
    }
    return makespan;
  }

  /**
   * Parallel generation by priority: at each moment, of the jobs that could start right now, the least value first, then
   * the smallest job. Gives a non-delay schedule: nothing waits that could start. The best schedule may need waiting.
   */
  parallelByPriority(priorities: Float64Array, starts: Int32Array): number {
    this.#begin();
    let makespan = 0;
    let now = 0;
    for (let placed = 0; placed < this.project.size; ) {
      const job = this.#leastStartable(priorities, now);
      if (job === undefined) {
        now = this.#nextMoment(starts, now);
        continue;
      }
      starts[job] = now;
      this.#timeline.book(job, now);
      makespan = Math.max(makespan, now + at(this.project.durations, job));
      this.#release(job, now);
      placed += 1;
    }
    return makespan;
  }

  #begin(): void {
    const { size, before } = this.project;
    this.schedules += 1;
    this.#timeline.clear();
    this.#earliest.fill(0);
    for (let job = 0; job < size; job += 1) {
      this.#waiting[job] = at(before.first, job + 1) - at(before.first, job);
    }
  }

  #placeEarliest(job: number, starts: Int32Array): number {
    const { before, durations } = this.project;
    let from = 0;
    for (let link = at(before.first, job); link < at(before.first, job + 1); link += 1) {
      const other = at(before.others, link);
      from = Math.max(from, at(starts, other) + at(durations, other) + at(before.lags, link));
    }
    const start = this.#timeline.earliestFit(job, from);
    this.#timeline.book(job, start);
    starts[job] = start;
    return start + at(durations, job);
  }

  /** Takes the job off the list of the waiting, and tells those behind it when they may start. */
  #release(job: number, start: number): void {
    const { behind, durations } = this.project;
    this.#waiting[job] = PLACED;
    const finish = start + at(durations, job);
    for (let link = at(behind.first, job); link < at(behind.first, job + 1); link += 1) {
      const other = at(behind.others, link);
      this.#waiting[other] = at(this.#waiting, other) - 1;
      this.#earliest[other] = Math.max(at(this.#earliest, other), finish + at(behind.lags, link));
    }
  }

  #leastEligible(priorities: Float64Array): number {
    let least = -1;
    for (let job = 0; job < this.project.size; job += 1) {
      if (at(this.#waiting, job) !== 0) continue;
      if (least < 0 || at(priorities, job) < at(priorities, least)) least = job;
    }
    return least;
  }

  #leastStartable(priorities: Float64Array, now: number): number | undefined {
    let least: number | undefined;
    for (let job = 0; job < this.project.size; job += 1) {
      if (at(this.#waiting, job) !== 0 || at(this.#earliest, job) > now) continue;
      if (least !== undefined && at(priorities, job) >= at(priorities, least)) continue;
      if (this.#timeline.fitsAt(job, now)) least = job;
    }
    return least;
  }

  /** The next moment at which anything changes: something placed finishes, or something eligible has waited long enough. */
  #nextMoment(starts: Int32Array, now: number): number {
    let next = Number.POSITIVE_INFINITY;
    for (let job = 0; job < this.project.size; job += 1) {
      const waiting = at(this.#waiting, job);
      if (waiting > 0) continue;
      const moment =
        waiting === PLACED ? at(starts, job) + at(this.project.durations, job) : at(this.#earliest, job);
      if (moment > now) next = Math.min(next, moment);
    }
    return next;
  }
}

const PLACED = -1;
