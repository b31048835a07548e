import { at } from '../../at';
import type { CompiledTask, CompiledWay } from '../compile-service';
import { type Demand, demandsOf } from './demands';
import { Moments } from './moments';
import { wordsFor } from './people-set';
import type { Placements } from './placements';
import { Presence } from './presence';
import { seatPeople } from './seat-people';
import { SeatingOrder } from './seating-order';
import { ServiceTimeline } from './service-timeline';

/** Where there still is an opening for a task beside all that is placed: people for its seats, tools, and room. */
export class Openings {
  readonly #placements: Placements;
  readonly #horizon: number;
  readonly #demands: readonly (readonly Demand[])[];
  readonly #timeline: ServiceTimeline;
  readonly #moments: Moments;
  readonly #presence: Presence;
  readonly #order: SeatingOrder;
  readonly #busy: Int32Array;
  readonly #free: Uint8Array;

  /** @param horizon everything is over by then, or the plan is broken */
  constructor(placements: Placements, horizon: number) {
    const { service, tasks, earliest } = placements.service;
    const { people } = service;
    this.#placements = placements;
    this.#horizon = horizon;
    this.#demands = demandsOf(placements.service);
    this.#timeline = new ServiceTimeline(placements.service);
    this.#moments = new Moments(
      people.flatMap(({ hours }) => hours.map(({ from }) => from)),
      tasks.length,
    );
    this.#presence = new Presence(people, earliest, 2 * horizon);
    this.#order = new SeatingOrder(placements);
    this.#busy = new Int32Array(wordsFor(people.length));
    this.#free = new Uint8Array(people.length);
  }

  /** Nothing is placed. */
  clear(): void {
    this.#timeline.clear();
    this.#moments.clear();
  }

  /**
   * The first time from `from` on at which the task fits, with people on its seats; of what is fixed no other time is tried.
   * Without an opening by `last` the next time that might be one, and infinity, with nobody on its seats, when there is none
   * at all.
   */
  find(task: CompiledTask, from: number, last: number): number {
    const { number } = task;
    const way = this.#placements.wayOf(number);
    const demand = this.#demandOf(number);
    const seats = this.#placements.seats[number];
    if (!way || !demand || !seats) return Number.POSITIVE_INFINITY;
    const wanted = { task, way, demand, seats, preference: this.#order.of(number) };
    let start = from;
    while (start <= last) {
      const next = this.#tryAt(wanted, start);
      if (next === start) return start;
      start = next > last ? this.#moments.from(last + 1) : next;
      if (start > this.#horizon || this.#placements.isFixed(number)) {
        this.#placements.unseat(number);
        return Number.POSITIVE_INFINITY;
      }
    }
    return start;
  }

  /** With those on its seats, whether it fits or not. */
  place(task: number, start: number): void {
    const demand = this.#demandOf(task);
    const seats = this.#placements.seats[task];
    if (!demand || !seats) return;
    this.#placements.place(task, start);
    this.#timeline.book(demand, start, seats);
    this.#moments.add(start + demand.duration);
  }

  /** The same moment when the task fits then, otherwise the next that may be better. */
  #tryAt({ task, way, demand, seats, preference }: Wanted, start: number): number {
    const blocked = this.#timeline.blockedUntil(demand, start, this.#busy);
    if (blocked > start) return this.#moments.from(blocked);
    this.#presence.find(task, start, start + demand.duration, this.#busy, this.#free);
    const isSeated = seatPeople(way, this.#free, task.people, preference, seats);
    return isSeated ? start : this.#moments.from(start + 1);
  }

  #demandOf(task: number): Demand | undefined {
    return this.#demands[task]?.[at(this.#placements.ways, task)];
  }
}

interface Wanted {
  task: CompiledTask;
  way: CompiledWay;
  demand: Demand;
  seats: Int32Array;
  preference: Int32Array;
}
