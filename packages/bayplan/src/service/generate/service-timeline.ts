import { at } from '../../at';
import { Cuts } from '../../cuts';
import type { CompiledService } from '../compile-service';
import { type Columns, columnsOf, type Demand } from './demands';
import { addPerson, countPeople } from './people-set';
import { EMPTY } from './seat-people';

/** No time is before. */
const BEGINNING = -(2 ** 31);

/** Who is busy and what is in use when, while a plan is being made. */
export class ServiceTimeline {
  readonly #columns: Columns;
  readonly #cuts: Cuts;
  readonly #nothing: Int32Array;
  readonly #crew: Int32Array;

  constructor(service: CompiledService) {
    this.#columns = columnsOf(service);
    this.#cuts = new Cuts(2 * service.tasks.length + 1, this.#columns.width);
    this.#nothing = new Int32Array(this.#columns.width);
    this.#crew = new Int32Array(this.#columns.words);
    this.clear();
  }

  clear(): void {
    this.#cuts.clear(BEGINNING, this.#nothing);
  }

  /**
   * Until when something at one moment is in the way of a task that starts then or later: too much in use, or too few people
   * free to fill its seats. When nothing is, no later than `start`, and `busy` is the set of those who are busy at any time
   * of the task.
   */
  blockedUntil(demand: Demand, start: number, busy: Int32Array): number {
    const cuts = this.#cuts;
    const finish = start + demand.duration;
    busy.fill(0);
    for (let row = cuts.rowAt(start); row < cuts.count && at(cuts.times, row) < finish; row += 1) {
      if (!this.#hasRoom(demand, row) || !this.#hasPeople(demand, row)) return cuts.endOf(row);
      for (let word = 0; word < busy.length; word += 1) {
        busy[word] = at(busy, word) | at(cuts.cells, row * cuts.width + word);
      }
    }
    return BEGINNING;
  }

  book({ booked, uses, duration, heads }: Demand, start: number, seats: Int32Array): void {
    const from = this.#cuts.split(start);
    const to = this.#cuts.split(start + duration);
    const { cells, width } = this.#cuts;
    this.#crew.fill(0);
    for (let seat = 0; seat < heads; seat += 1) {
      if (at(seats, seat) !== EMPTY) addPerson(this.#crew, at(seats, seat));
    }
    for (let first = from * width; first < to * width; first += width) {
      for (let word = 0; word < this.#crew.length; word += 1) {
        cells[first + word] = at(cells, first + word) | at(this.#crew, word);
      }
      for (let use = 0; use < booked.length; use += 1) {
        const cell = first + at(booked, use);
        cells[cell] = at(cells, cell) + at(uses, use);
      }
    }
  }

  #hasRoom({ checked, amounts, limits }: Demand, row: number): boolean {
    const { cells, width } = this.#cuts;
    for (let check = 0; check < checked.length; check += 1) {
      const used = at(cells, row * width + at(checked, check));
      if (used + at(amounts, check) > at(limits, check)) return false;
    }
    return true;
  }

  #hasPeople({ able, heads }: Demand, row: number): boolean {
    const { cells, width } = this.#cuts;
    let free = 0;
    for (let word = 0; word < able.length; word += 1) {
      free += countPeople(at(able, word) & ~at(cells, row * width + word));
    }
    return free >= heads;
  }
}
