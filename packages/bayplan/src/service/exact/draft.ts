import { Arcs } from '../../exact/arcs';
import { Engine, type Narrowing } from '../../exact/engine';
import { read } from '../../exact/int-list';
import { NO_REASON } from '../../exact/reasons';
import { type TableJob, TimeTable } from '../../exact/time-table';
import { Linear, type Term } from './linear';

/** "Slot is at least value", as in {@link BoundsTrail}. */
export interface Fact {
  slot: number;
  value: number;
}

export const atLeast = (number: number, value: number): Fact => ({ slot: 2 * number, value });
export const atMost = (number: number, value: number): Fact => ({ slot: 2 * number + 1, value: -value });
export const isTrue = (number: number): Fact => atLeast(number, 1);
export const isFalse = (number: number): Fact => atMost(number, 0);
export const not = ({ slot, value }: Fact): Fact => ({ slot: slot ^ 1, value: 1 - value });

/** What is written down about some numbers before an engine can be made of it. */
export class Draft {
  readonly #values: number[] = [];
  readonly #clauses: (readonly Fact[])[] = [];
  readonly #arcs: ((arcs: Arcs) => void)[] = [];
  readonly #narrowings: Narrowing[] = [];

  get size(): number {
    return this.#values.length >> 1;
  }

  /** A new number between two bounds. */
  number(least: number, most: number): number {
    this.#values.push(least, -most);
    return this.size - 1;
  }

  /** A new number that is 0 or 1. */
  flag(): number {
    return this.number(0, 1);
  }

  /** At least one of the facts holds. */
  either(...facts: readonly Fact[]): void {
    this.#clauses.push(facts);
  }

  /** If all of the facts hold, so does one of the others. */
  whenAll(facts: readonly Fact[], ...others: readonly Fact[]): void {
    this.either(...facts.map(not), ...others);
  }

  /** `second` is at least `length` more than `first`, always or when a flag is up. */
  order(first: number, second: number, length: number, flag?: number): void {
    this.#arcs.push((arcs) => arcs.addBoth(first, second, length, flag === undefined ? -1 : 2 * flag, 1));
  }

  sumAtMost(terms: readonly Term[], most: number): Linear {
    const linear = new Linear(terms, most);
    this.#narrowings.push(linear);
    return linear;
  }

  table(jobs: readonly TableJob[], capacity: number): void {
    if (jobs.reduce((sum, { amount }) => sum + amount, 0) <= capacity) return;
    this.#narrowings.push(new TimeTable(jobs, capacity));
  }

  /** Nothing when what is written down contradicts itself at first sight. */
  open(): Engine | undefined {
    const arcs = new Arcs(this.#values.length);
    for (const add of this.#arcs) add(arcs);
    const engine = new Engine(Int32Array.from(this.#values), arcs, this.#narrowings);
    for (const clause of this.#clauses) if (!demand(engine, clause)) return undefined;
    return engine.begin() ? engine : undefined;
  }
}

/** False facts are left out: no clause may watch them. */
function demand(engine: Engine, clause: readonly Fact[]): boolean {
  const { values } = engine.trail;
  const open: Fact[] = [];
  for (const fact of clause) {
    if (read(values, fact.slot) >= fact.value) return true;
    if (read(values, fact.slot ^ 1) < 1 - fact.value) open.push(fact);
  }
  const [first] = open;
  if (!first) return false;
  if (open.length === 1) return engine.demand(first.slot, first.value, NO_REASON);
  const watched = new Int32Array(2 * open.length);
  open.forEach(({ slot, value }, place) => {
    watched[2 * place] = slot;
    watched[2 * place + 1] = value;
  });
  engine.clauses.add(watched, 0);
  return true;
}
