import type { Arcs } from './arcs';
import { BoundsTrail } from './bounds-trail';
import { Clauses } from './clauses';
import { IntList, read } from './int-list';
import { arcReason, clauseReason, indexOf, kindOf, NO_REASON, Notes } from './reasons';

/** Something that draws conclusions from many bounds at once, when arcs and clauses have none left. */
export interface Narrowing {
  /** It has nothing new to say until one of these was raised. */
  readonly slots: Iterable<number>;
  /** Set by whoever gives it something new to look at. */
  isDue: boolean;
  /** False after a contradiction. */
  narrow: (engine: Engine) => boolean;
}

/** Draws conclusions from the bounds of some numbers until there are no more or two contradict each other. */
export class Engine {
  readonly arcs: Arcs;
  readonly trail: BoundsTrail;
  readonly clauses: Clauses;
  readonly notes = new Notes();
  /** After a contradiction: facts that cannot all hold. */
  readonly clash = new IntList();
  readonly #narrowings: readonly Narrowing[];
  /** By slot: who looks at it. */
  readonly #lookers: readonly (readonly Narrowing[])[];
  readonly #notesAt = new IntList();
  #done = 0;

  /** `values` are the first bounds, slot by slot (see {@link BoundsTrail}). */
  constructor(values: Int32Array, arcs: Arcs, narrowings: readonly Narrowing[]) {
    this.arcs = arcs;
    this.trail = new BoundsTrail(values);
    this.clauses = new Clauses(values.length);
    this.#narrowings = narrowings;
    this.#lookers = lookersOf(narrowings, values.length);
  }

  /** Draws the conclusions of all arcs from the first bounds. False after a contradiction. */
  begin(): boolean {
    for (let slot = 0; slot < this.trail.values.length; slot += 1) if (!this.#runArcs(slot)) return false;
    return true;
  }

  decide(slot: number, value: number): void {
    this.trail.openLevel();
    this.#notesAt.push(this.notes.length);
    this.trail.raise(slot, value, NO_REASON);
  }

  /** Nothing is decided before all is concluded from what was decided earlier, so nobody has anything new to look at. */
  backTo(level: number): void {
    if (level >= this.trail.level) return;
    for (const narrowing of this.#narrowings) narrowing.isDue = false;
    this.notes.cutTo(read(this.#notesAt.items, level));
    this.#notesAt.length = level;
    this.trail.backTo(level);
    this.#done = Math.min(this.#done, this.trail.length);
  }

  /** Forgets how the facts of level 0 came about. */
  settle(): void {
    this.trail.forgetEntries();
    this.notes.cutTo(0);
    this.#done = 0;
  }

  /** Makes a fact true. False when that contradicts what is known: then `clash` says why. */
  demand(slot: number, value: number, reason: number): boolean {
    if (value <= read(this.trail.values, slot)) return true;
    if (value > -read(this.trail.values, slot ^ 1)) {
      this.clash.length = 0;
      this.explain(reason, slot, value, this.clash);
      this.clash.push(slot ^ 1);
      this.clash.push(1 - value);
      return false;
    }
    this.trail.raise(slot, value, reason);
    return true;
  }

  /** False after a contradiction. */
  propagate(): boolean {
    for (;;) {
      while (this.#done < this.trail.length) {
        const slot = this.trail.slotOf(this.#done);
        this.#done += 1;
        for (const looker of this.#lookers[slot] ?? []) looker.isDue = true;
        if (!this.#runArcs(slot) || !this.#runClauses(slot)) return false;
      }
      for (const narrowing of this.#narrowings) {
        if (!narrowing.isDue) continue;
        narrowing.isDue = false;
        if (!narrowing.narrow(this)) return false;
      }
      if (this.#done === this.trail.length) return true;
    }
  }

  /** Adds to `facts` what made a fact true, for the given reason. */
  explain(reason: number, slot: number, value: number, facts: IntList): void {
    const kind = kindOf(reason);
    const index = indexOf(reason);
    if (kind === 'note') this.notes.copyTo(index, facts);
    if (kind === 'clause') this.#explainByClause(index, slot, facts);
    if (kind !== 'arc') return;
    facts.push(read(this.arcs.from.items, index));
    facts.push(value - read(this.arcs.lengths.items, index));
    const ifSlot = read(this.arcs.ifSlot.items, index);
    if (ifSlot < 0) return;
    facts.push(ifSlot);
    facts.push(read(this.arcs.ifValue.items, index));
  }

  #explainByClause(number: number, slot: number, facts: IntList): void {
    const clause = this.clauses.list[number];
    if (!clause) return;
    for (let place = 0; place < clause.length; place += 2) {
      if (read(clause, place) === slot) continue;
      facts.push(read(clause, place) ^ 1);
      facts.push(1 - read(clause, place + 1));
    }
  }

  #runArcs(slot: number): boolean {
    const touching = this.arcs.touching[slot];
    if (!touching) return true;
    for (let place = 0; place < touching.length; place += 1) {
      if (!this.#runArc(read(touching.items, place))) return false;
    }
    return true;
  }

  #runArc(arc: number): boolean {
    const { values } = this.trail;
    const from = read(this.arcs.from.items, arc);
    const to = read(this.arcs.to.items, arc);
    const length = read(this.arcs.lengths.items, arc);
    const reached = read(values, from) + length;
    if (reached <= read(values, to)) return true;
    const ifSlot = read(this.arcs.ifSlot.items, arc);
    const ifValue = read(this.arcs.ifValue.items, arc);
    if (ifSlot < 0 || read(values, ifSlot) >= ifValue) return this.demand(to, reached, arcReason(arc));
    const room = -read(values, to ^ 1);
    if (reached <= room || read(values, ifSlot ^ 1) >= 1 - ifValue) return true;
    const reason = this.notes.begin();
    this.notes.add(from, room + 1 - length);
    this.notes.add(to ^ 1, -room);
    return this.demand(ifSlot ^ 1, 1 - ifValue, reason);
  }

  /** Two facts of each clause are watched; when one becomes false another takes over, or the last one left must hold. */
  #runClauses(slot: number): boolean {
    const watching = this.clauses.watching[slot];
    if (!watching) return true;
    const value = read(this.trail.values, slot);
    let kept = 0;
    let fine = true;
    for (let place = 0; place < watching.length; place += 2) {
      const number = read(watching.items, place);
      const since = read(watching.items, place + 1);
      if (fine && value >= since && this.#rewatch(number, slot)) continue;
      watching.items[kept] = number;
      watching.items[kept + 1] = since;
      kept += 2;
      if (fine && value >= since) fine = this.demandByClause(number);
    }
    watching.length = kept;
    return fine;
  }

  /** Whether another fact is now watched in place of the false one. If not, the false one is second in the clause. */
  #rewatch(number: number, slot: number): boolean {
    const clause = this.clauses.list[number];
    if (!clause) return true;
    if (read(clause, 0) === (slot ^ 1)) swap(clause, 0, 2);
    if (read(this.trail.values, read(clause, 0)) >= read(clause, 1)) return false;
    for (let place = 4; place < clause.length; place += 2) {
      if (read(this.trail.values, read(clause, place) ^ 1) >= 1 - read(clause, place + 1)) continue;
      swap(clause, 2, place);
      this.clauses.watch(number, 1);
      return true;
    }
    return false;
  }

  /** The first fact of a clause must hold, since no other can. */
  demandByClause(number: number): boolean {
    const clause = this.clauses.list[number];
    return !clause || this.demand(read(clause, 0), read(clause, 1), clauseReason(number));
  }
}

function lookersOf(narrowings: readonly Narrowing[], slots: number): Narrowing[][] {
  const lookers = Array.from({ length: slots }, (): Narrowing[] => []);
  for (const narrowing of narrowings) {
    for (const slot of new Set(narrowing.slots)) lookers[slot]?.push(narrowing);
  }
  return lookers;
}

function swap(clause: Int32Array, one: number, other: number): void {
  const slot = read(clause, one);
  const value = read(clause, one + 1);
  clause[one] = read(clause, other);
  clause[one + 1] = read(clause, other + 1);
  clause[other] = slot;
  clause[other + 1] = value;
}
