import { IntList, read } from './int-list';

/** What was learned, or demanded from the start: at least one fact of each clause holds. A clause is slot, value, slot, value, … */
export class Clauses {
  readonly list: Int32Array[] = [];
  /** How many decisions each clause ties together: fewer, more useful; 0 for what was demanded. */
  readonly #spreads: number[] = [];
  /** Per slot: clause, and from which value of the slot on the watched fact is false. */
  readonly watching: readonly IntList[];

  constructor(slots: number) {
    this.watching = Array.from({ length: slots }, () => new IntList());
  }

  /** Its first two facts must be the last to become false. Returns its number. */
  add(clause: Int32Array, spread: number): number {
    this.list.push(clause);
    this.#spreads.push(spread);
    const number = this.list.length - 1;
    this.watch(number, 0);
    this.watch(number, 1);
    return number;
  }

  watch(number: number, place: number): void {
    const clause = this.list[number];
    if (!clause) return;
    const list = this.watching[read(clause, 2 * place) ^ 1];
    list?.push(number);
    list?.push(1 - read(clause, 2 * place + 1));
  }

  /**
   * Keeps the more useful half of what was learned, if that is more than so many. Only at level 0, where no clause is a
   * reason.
   */
  thin(most: number): void {
    const demanded = this.#spreads.filter((spread) => spread === 0).length;
    if (this.list.length - demanded <= most) return;
    const kept = this.list
      .map((clause, number) => ({ clause, number, spread: this.#spreads[number] ?? 0 }))
      .toSorted((one, other) => one.spread - other.spread || other.number - one.number)
      .slice(0, demanded + (most >> 1))
      .toSorted((one, other) => one.number - other.number);
    this.list.length = 0;
    this.#spreads.length = 0;
    for (const list of this.watching) list.length = 0;
    for (const { clause, spread } of kept) this.add(clause, spread);
  }
}
