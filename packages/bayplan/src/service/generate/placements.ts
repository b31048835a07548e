import { at } from '../../at';
import type { CompiledService, CompiledWay } from '../compile-service';
import type { Decided } from '../judge-work';
import { LEFT } from './choose-work';
import { EMPTY } from './seat-people';

/** What is decided so far of a plan that is being made, task by task. The arrays are kept from plan to plan. */
export class Placements {
  readonly service: CompiledService;
  /** The number of the way, or {@link LEFT}. */
  readonly ways: Int32Array;
  /** Of what isn't placed when it might have started. */
  readonly starts: Int32Array;
  readonly finishes: Int32Array;
  /** As many as the way has are in use. */
  readonly seats: readonly Int32Array[];
  readonly #isPlaced: Uint8Array;

  constructor(service: CompiledService) {
    const size = service.tasks.length;
    this.service = service;
    this.ways = new Int32Array(size);
    this.starts = new Int32Array(size);
    this.finishes = new Int32Array(size);
    this.seats = service.tasks.map(
      ({ ways }) => new Int32Array(Math.max(0, ...ways.map(({ heads }) => heads))),
    );
    this.#isPlaced = new Uint8Array(size);
  }

  clear(): void {
    this.#isPlaced.fill(0);
  }

  isDone(task: number): boolean {
    return at(this.ways, task) !== LEFT;
  }

  isPlaced(task: number): boolean {
    return at(this.#isPlaced, task) === 1;
  }

  /** Its start is settled beforehand. */
  isFixed(task: number): boolean {
    return this.service.tasks[task]?.start !== undefined;
  }

  wayOf(task: number): CompiledWay | undefined {
    return this.service.tasks[task]?.ways[at(this.ways, task)];
  }

  durationOf(task: number): number {
    return this.wayOf(task)?.duration ?? 0;
  }

  /** Those on a task that is placed. */
  *peopleOn(task: number): Generator<number> {
    const heads = this.wayOf(task)?.heads ?? 0;
    const seats = this.seats[task];
    for (let seat = 0; seats && seat < heads; seat += 1) {
      if (at(seats, seat) !== EMPTY) yield at(seats, seat);
    }
  }

  unseat(task: number): void {
    this.seats[task]?.fill(EMPTY);
  }

  place(task: number, start: number): void {
    this.starts[task] = start;
    this.finishes[task] = start + this.durationOf(task);
    this.#isPlaced[task] = 1;
  }

  leave(task: number): void {
    this.ways[task] = LEFT;
  }

  read(): Decided[] {
    return this.service.tasks.map(({ number }) => {
      const way = this.wayOf(number);
      if (!way) return undefined;
      const seats = this.seats[number] ?? new Int32Array();
      let first = 0;
      const people = way.crew.map(({ count }) => {
        first += count;
        return [...seats.subarray(first - count, first)].filter((person) => person !== EMPTY);
      });
      return { way: at(this.ways, number), start: at(this.starts, number), people };
    });
  }
}
