import type { Engine } from '../../exact/engine';
import { read } from '../../exact/int-list';
import { Involvement, isOpen } from '../../exact/involvement';
import type { Solution } from '../judge-work';
import type { Encoding, TaskNumbers } from './encode-service';

/**
 * What to decide next. One way: the open flag that lately had most part in contradictions, as in the best plan known. The
 * other way, and when no flag is open that had any: which way each task is done, then of the open starts the earliest, as
 * early as it can be, with its people at once. In the end everything as small as it can be.
 */
export class ServiceChooser {
  readonly #encoding: Encoding;
  readonly #size: number;
  readonly #flags: Int32Array;
  readonly involvement: Involvement;

  constructor(encoding: Encoding, engine: Engine) {
    this.#encoding = encoding;
    const { values } = engine.trail;
    this.#size = values.length >> 1;
    this.involvement = new Involvement(this.#size);
    this.#flags = Int32Array.from({ length: this.#size }, (_, number) => number).filter(
      (number) => read(values, 2 * number) >= 0 && read(values, 2 * number + 1) >= -1,
    );
  }

  /** False when there is nothing left to decide. */
  decide(engine: Engine, hints: Int32Array, byWeight: boolean): boolean {
    const { values } = engine.trail;
    const flag = byWeight ? this.involvement.heaviestOpen(values, this.#flags, 0) : -1;
    if (flag >= 0) return raise(engine, flag, read(hints, flag) >= 1);
    const open = this.#openWay(values) ?? this.#openCrew(values, hints);
    if (open !== undefined) return raise(engine, open, true);
    const task = this.#earliestOpen(values);
    if (task) return raise(engine, task.start, false);
    for (let number = 0; number < this.#size; number += 1) {
      if (isOpen(values, number)) return raise(engine, number, false);
    }
    return false;
  }

  /** Of a task not yet ruled out, the open way of most value, of two the quicker. */
  #openWay(values: Int32Array): number | undefined {
    for (const { done, ways } of this.#encoding.tasks) {
      const open = ways.filter(({ taken }) => isOpen(values, taken));
      const best = open.toSorted(
        ({ way: one }, { way: other }) => other.value - one.value || one.duration - other.duration,
      )[0];
      if (best && (best.way.value > 0 || read(values, 2 * done) >= 1)) return best.taken;
    }
    return undefined;
  }

  /** Somebody for a task whose start is known: as in the best plan, otherwise the first who may. */
  #openCrew(values: Int32Array, hints: Int32Array): number | undefined {
    for (const { start, ways } of this.#encoding.tasks) {
      if (isOpen(values, start)) continue;
      for (const { taken, crews } of ways) {
        if (read(values, 2 * taken) < 1) continue;
        for (const crew of crews) {
          const open = [...crew.values()].filter((flag) => isOpen(values, flag));
          const chosen = open.find((flag) => read(hints, flag) >= 1) ?? open[0];
          if (chosen !== undefined) return chosen;
        }
      }
    }
    return undefined;
  }

  #earliestOpen(values: Int32Array): TaskNumbers | undefined {
    let earliest: TaskNumbers | undefined;
    for (const one of this.#encoding.tasks) {
      if (read(values, 2 * one.done) < 1 || !isOpen(values, one.start)) continue;
      if (!earliest || read(values, 2 * one.start) < read(values, 2 * earliest.start)) earliest = one;
    }
    return earliest;
  }
}

/** A flag up or down; of any other number only down: as small as it can be. */
function raise(engine: Engine, number: number, up: boolean): true {
  if (up) engine.decide(2 * number, 1);
  else engine.decide(2 * number + 1, -read(engine.trail.values, 2 * number));
  return true;
}

/** What the flags of ways, people, doing and orders are in a plan; all others 0. */
export function hintsOf({ tasks, orders }: Encoding, { decided }: Solution, hints: Int32Array): void {
  hints.fill(0);
  for (const { first, second, flag } of orders)
    hints[flag] = comesFirst(tasks, decided, first, second) ? 1 : 0;
  for (const { task, done, ways, works } of tasks) {
    const one = decided[task.number];
    const way = one && ways[one.way];
    if (!way) continue;
    hints[done] = 1;
    hints[way.taken] = 1;
    one.people.forEach((people, crew) => {
      for (const person of people) {
        hints[way.crews[crew]?.get(person) ?? done] = 1;
        hints[works.get(person) ?? done] = 1;
      }
    });
  }
}

/** Whether both are done, and one is finished when the other starts. */
export function comesFirst(
  tasks: Encoding['tasks'],
  decided: Solution['decided'],
  first: number,
  second: number,
): boolean {
  const [one, other] = [decided[first], decided[second]];
  const way = one && tasks[first]?.ways[one.way]?.way;
  if (!one || !other || !way) return false;
  return one.start + way.duration <= other.start;
}
