import { at } from '../../at';
import type { CompiledTask } from '../compile-service';
import type { ServicePerson } from '../service-model';
import { hasPerson } from './people-set';

/** Who is there and not busy. Their hours are only looked at for those who are not there all the time. */
export class Presence {
  readonly #people: readonly ServicePerson[];
  readonly #isAlwaysThere: Uint8Array;

  /** @param horizon nothing is planned before `earliest` or runs after it */
  constructor(people: readonly ServicePerson[], earliest: number, horizon: number) {
    this.#people = people;
    this.#isAlwaysThere = Uint8Array.from(people, ({ hours }) =>
      Number(hours.some(({ from, until }) => from <= earliest && until >= horizon)),
    );
  }

  /** Person by person in `free`: 1 for who can do the task from `start` to `finish`. What is under way asks for no hours. */
  find({ underWay }: CompiledTask, start: number, finish: number, busy: Int32Array, free: Uint8Array): void {
    for (let person = 0; person < free.length; person += 1) {
      const isFree =
        !hasPerson(busy, person) &&
        (underWay ||
          at(this.#isAlwaysThere, person) === 1 ||
          this.#people[person]?.hours.some(({ from, until }) => from <= start && finish <= until));
      free[person] = isFree ? 1 : 0;
    }
  }
}
