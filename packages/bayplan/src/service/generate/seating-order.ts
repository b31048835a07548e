import { at } from '../../at';
import type { ServicePerson } from '../service-model';
import type { Placements } from './placements';

/** Who is asked first to do a task: who did the work before it, then who can do least else. */
export class SeatingOrder {
  readonly #placements: Placements;
  /** By task: what it follows by a link. */
  readonly #before: readonly (readonly number[])[];
  /** Who can do least else goes first. */
  readonly #usual: Int32Array;
  readonly #wasThere: Uint8Array;
  readonly #order: Int32Array;

  constructor(placements: Placements) {
    const { service, links, tasks } = placements.service;
    this.#placements = placements;
    this.#before = tasks.map(({ number }) =>
      links.filter(({ after }) => after === number).map(({ before }) => before),
    );
    this.#usual = Int32Array.from(byNumberOfSkills(service.people));
    this.#wasThere = new Uint8Array(service.people.length);
    this.#order = new Int32Array(service.people.length);
  }

  /** The same array for each task, overwritten for the next. */
  of(task: number): Int32Array {
    this.#wasThere.fill(0);
    for (const before of this.#before[task] ?? []) {
      if (!this.#placements.isPlaced(before)) continue;
      for (const person of this.#placements.peopleOn(before)) this.#wasThere[person] = 1;
    }
    let place = 0;
    for (let person = 0; person < this.#wasThere.length; person += 1) {
      if (at(this.#wasThere, person)) this.#order[place++] = person;
    }
    for (let next = 0; next < this.#usual.length; next += 1) {
      const person = at(this.#usual, next);
      if (!at(this.#wasThere, person)) this.#order[place++] = person;
    }
    return this.#order;
  }
}

function byNumberOfSkills(people: readonly ServicePerson[]): number[] {
  const skillsOf = (person: number) => people[person]?.skills.length ?? 0;
  return [...people.keys()].toSorted((one, other) => skillsOf(one) - skillsOf(other) || one - other);
}
