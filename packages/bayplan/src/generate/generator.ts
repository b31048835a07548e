import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import { Timeline } from '../timeline';
import { EligibleJobs } from './eligible-jobs';
import { UnderWay } from './under-way';

/**
 * Makes schedules of one project, in one direction of time, into arrays that the caller keeps: nothing is allocated on
 * the way. Every call gives each job a start at most once and so counts as one schedule in `schedules`.
 */
export class Generator {
  readonly project: CompiledProject;
  schedules = 0;
  readonly #timeline: Timeline;
  readonly #eligible: EligibleJobs;
  readonly #underWay: UnderWay;

  constructor(project: CompiledProject) {
    this.project = project;
    this.#timeline = new Timeline(project);
    this.#eligible = new EligibleJobs(project);
    this.#underWay = new UnderWay(project);
  }

  /**
   * Serial generation from a list: each job in turn at its earliest feasible time. The list must have every job after
   * those it waits for. Gives an active schedule: nothing can start earlier unless something else starts later.
   */
  serialInOrder(order: Int32Array, starts: Int32Array): number {
    this.schedules += 1;
    this.#timeline.clear();
    let makespan = 0;
    for (let place = 0; place < this.project.size; place += 1) {
      const job = at(order, place);
      makespan = Math.max(makespan, this.#placeEarliest(job, this.#allowedStart(job, starts), starts));
    }
    return makespan;
  }

  /** Serial generation by priority: of the jobs whose predecessors are placed, the least value, then the smallest job. */
  serialByPriority(priorities: Float64Array, starts: Int32Array): number {
    const eligible = this.#eligible;
    this.schedules += 1;
    this.#timeline.clear();
    eligible.begin();
    let makespan = 0;
    while (eligible.count > 0) {
      const place = this.#leastEligible(priorities);
      const job = at(eligible.list, place);
      const finish = this.#placeEarliest(job, at(eligible.earliest, job), starts);
      makespan = Math.max(makespan, finish);
      eligible.take(place, finish);
    }
    return makespan;
  }

  /**
   * Parallel generation by priority: at each moment, of the jobs that could start right now, the least value first, then
   * the smallest job. Gives a non-delay schedule: nothing waits that could start. The best schedule may need waiting.
   */
  parallelByPriority(priorities: Float64Array, starts: Int32Array): number {
    const eligible = this.#eligible;
    this.schedules += 1;
    this.#underWay.begin();
    eligible.begin();
    let makespan = 0;
    let now = 0;
    while (eligible.count > 0) {
      const place = this.#leastStartable(priorities, now);
      if (place < 0) {
        now = this.#nextMoment(now);
        this.#underWay.moveTo(now);
        continue;
      }
      const job = at(eligible.list, place);
      const finish = now + at(this.project.durations, job);
      starts[job] = now;
      this.#underWay.start(job, finish);
      makespan = Math.max(makespan, finish);
      eligible.take(place, finish);
    }
    return makespan;
  }

  #allowedStart(job: number, starts: Int32Array): number {
    const { before, durations } = this.project;
    let from = 0;
    for (let link = at(before.first, job); link < at(before.first, job + 1); link += 1) {
      const other = at(before.others, link);
      from = Math.max(from, at(starts, other) + at(durations, other) + at(before.lags, link));
    }
    return from;
  }

  /** Returns the finish. */
  #placeEarliest(job: number, from: number, starts: Int32Array): number {
    const start = this.#timeline.earliestFit(job, from);
    this.#timeline.book(job, start);
    starts[job] = start;
    return start + at(this.project.durations, job);
  }

  /** A place in the list of the eligible. */
  #leastEligible(priorities: Float64Array): number {
    const { list, count } = this.#eligible;
    let least = 0;
    for (let place = 1; place < count; place += 1) {
      if (goesFirst(priorities, at(list, place), at(list, least))) least = place;
    }
    return least;
  }

  /** A place in the list of the eligible, or −1 when nothing can start now. */
  #leastStartable(priorities: Float64Array, now: number): number {
    const { list, count, earliest } = this.#eligible;
    let least = -1;
    for (let place = 0; place < count; place += 1) {
      const job = at(list, place);
      if (at(earliest, job) > now) continue;
      if (least >= 0 && !goesFirst(priorities, job, at(list, least))) continue;
      if (this.#underWay.fits(job)) least = place;
    }
    return least;
  }

  /** The next moment at which anything changes: something finishes, or something eligible has waited long enough. */
  #nextMoment(now: number): number {
    const { list, count, earliest } = this.#eligible;
    let next = this.#underWay.nextFinish(now);
    for (let place = 0; place < count; place += 1) {
      const moment = at(earliest, at(list, place));
      if (moment > now && moment < next) next = moment;
    }
    return next;
  }
}

function goesFirst(priorities: Float64Array, one: number, other: number): boolean {
  const difference = at(priorities, one) - at(priorities, other);
  return difference < 0 || (difference === 0 && one < other);
}
