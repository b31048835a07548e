import type { CompiledService, CompiledTask } from '../compile-service';
import { judgeWork, type Solution } from '../judge-work';
import { settleWays, type Ties, tiesOf } from './choose-work';
import { Dispensable } from './dispensable';
import { LastChances } from './last-chances';
import { LongestLags } from './longest-lags';
import { Openings } from './openings';
import { Placements } from './placements';
import { Queue } from './queue';
import { Urgency } from './urgency';
import { Waiting } from './waiting';
import { sidelessOf } from './waits';

/** What a plan is made from. Task by task. */
export interface Genes {
  /** The least goes first, see {@link Urgency}. */
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

const MOST_REPAIRS = 6;

/**
 * Serial generation: task by task, each at the earliest time at which its people, tools and place are free, people who
 * did the work before it first. Optional work that would make a car late is left, and so is what waits for itself, as far as
 * that is needed. What is under way or pinned to a time is placed before all else. Where a longest lag is missed, what came
 * too early is held back and everything made again, a few times.
 */
export class ServiceGenerator {
  readonly service: CompiledService;
  readonly starts: Int32Array;
  schedules = 0;
  readonly #ties: Ties;
  readonly #placements: Placements;
  readonly #waiting: Waiting;
  readonly #urgency: Urgency;
  readonly #dispensable: Dispensable;
  readonly #chances: LastChances;
  readonly #lags: LongestLags;
  readonly #openings: Openings;
  readonly #queue: Queue;
  readonly #fixed: readonly CompiledTask[];
  readonly #sideless: readonly number[];
  readonly #horizon: number;

  constructor(service: CompiledService) {
    this.service = service;
    this.#ties = tiesOf(service);
    this.#placements = new Placements(service);
    this.starts = this.#placements.starts;
    this.#waiting = new Waiting(this.#placements);
    this.#urgency = new Urgency(this.#placements, this.#waiting);
    this.#dispensable = new Dispensable(this.#placements, this.#ties);
    this.#chances = new LastChances(this.#placements, this.#waiting, this.#ties, this.#dispensable);
    this.#lags = new LongestLags(this.#placements);
    this.#horizon = service.latest + service.tasks.reduce((sum, task) => sum + longestOf(task), 0);
    this.#openings = new Openings(this.#placements, this.#horizon);
    this.#queue = new Queue(service.tasks.length);
    this.#fixed = service.tasks.filter(({ start }) => start !== undefined);
    this.#sideless = sidelessOf(service);
  }

  /** Leaves the starts of what is done in `starts`. Nothing when the ways asked for can't go together. */
  generate({ priorities, ways, sides }: Genes): Generated | undefined {
    this.#placements.ways.set(ways);
    if (!settleWays(this.service, this.#ties, this.#placements.ways)) {
      this.schedules += 1;
      return undefined;
    }
    this.#lags.begin();
    this.#waiting.choose(sides);
    this.#queue.sort(this.#urgency.of(priorities));
    let broken = this.#placeAll();
    for (let again = 0; again < MOST_REPAIRS && broken > 0 && this.#lags.holdBack(); again += 1) {
      broken = this.#placeAll();
    }
    return { ...judgeWork(this.service, this.#placements.read()), broken };
  }

  /** Returns by how much the rules are broken. */
  #placeAll(): number {
    this.schedules += 1;
    this.#begin();
    let broken = 0;
    for (const task of this.#fixed) {
      if (this.#placements.isDone(task.number)) broken += this.#place(task, task.start ?? 0);
    }
    for (let task = this.#next(); task; task = this.#next()) {
      const from = this.#waiting.overBy(task.number, this.#lags.heldUntil(task.number));
      broken += this.#place(task, from, this.#chances.of(task));
    }
    const impossible =
      this.#placeRest() + this.#sideless.filter((task) => this.#placements.isDone(task)).length;
    return broken + impossible * this.#horizon + this.#waiting.countBroken() + this.#lags.countBroken();
  }

  /** What waits for itself is never ready: it gets its earliest start and nobody. Returns how much there is of it. */
  #placeRest(): number {
    const rest = this.#queue.takeAll();
    for (const task of rest) {
      this.#placements.unseat(task);
      this.#placements.place(task, this.#lags.heldUntil(task));
    }
    return rest.length;
  }

  #begin(): void {
    this.#placements.clear();
    this.#openings.clear();
    this.#waiting.begin();
    this.#chances.begin();
    this.#queue.fill((task) => this.#placements.isDone(task) && !this.#placements.isFixed(task));
  }

  #next(): CompiledTask | undefined {
    for (;;) {
      const next = this.#queue.takeFirst((task) => this.#waiting.isReady(task));
      if (next !== undefined) return this.service.tasks[next];
      if (!this.#breakCircle()) return undefined;
    }
  }

  /** When nothing is ready: leaves the least urgent that can be left of what waits for itself. False when there is nothing. */
  #breakCircle(): boolean {
    const task = this.#queue.takeLast((one) => this.#canBreak(one));
    if (task === undefined) return false;
    this.starts[task] = this.#lags.heldUntil(task);
    this.#leave(task);
    return true;
  }

  #canBreak(number: number): boolean {
    const task = this.service.tasks[number];
    return task !== undefined && this.#dispensable.has(task) && this.#waiting.isOnCircle(number);
  }

  #leave(task: number): void {
    this.#waiting.release(task);
    this.#placements.leave(task);
  }

  /**
   * Returns by how much that is too late; by the whole horizon when it fits nowhere, or not at its fixed time. What would
   * start after `last` is left, and its start stays as a hint when it was tried.
   */
  #place(task: CompiledTask, from: number, last = Number.POSITIVE_INFINITY): number {
    const { number, earliest, latest } = task;
    const start = this.#openings.find(task, from, last);
    if (start > last && Number.isFinite(start)) {
      this.starts[number] = start;
      this.#leave(number);
      return 0;
    }
    const fits = Number.isFinite(start);
    this.#openings.place(number, fits ? start : from);
    this.#waiting.release(number);
    const finish = start + this.#placements.durationOf(number);
    return fits ? Math.max(0, earliest - start) + Math.max(0, finish - latest) : this.#horizon;
  }
}

function longestOf({ ways }: CompiledTask): number {
  return Math.max(0, ...ways.map(({ duration }) => duration));
}
