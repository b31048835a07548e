import type { Engine } from './engine';
import { IntList, read } from './int-list';
import { NO_REASON } from './reasons';

/**
 * Learns from a contradiction: follows it back to the one fact of the last decision's consequences that, with facts of
 * earlier decisions, is enough for it (first unique implication point; Marques-Silva & Sakallah 1999), and forbids that
 * they come together again. Facts about the same slot are one: the larger value.
 */
export class Learner {
  readonly #engine: Engine;
  readonly #needed: Int32Array;
  readonly #slots = new IntList();
  readonly #facts = new IntList();
  readonly #touched: (slot: number) => void;
  #open = 0;

  /** `touched` hears of every slot that had a part in the contradiction. */
  constructor(engine: Engine, touched: (slot: number) => void) {
    this.#engine = engine;
    this.#needed = new Int32Array(engine.trail.values.length).fill(NOTHING);
    this.#touched = touched;
  }

  /** Goes back as far as what was learned has a consequence, and draws it. False when nothing is possible any more. */
  learn(): boolean {
    const engine = this.#engine;
    engine.backTo(this.#levelOfClash());
    if (engine.trail.level === 0) return false;
    this.#follow();
    const clause = this.#readClause();
    const level = clause.length > 2 ? this.#levelOfOpposite(clause, 2) : 0;
    const spread = this.#countLevels(clause);
    engine.backTo(level);
    if (clause.length === 2) return engine.demand(read(clause, 0), read(clause, 1), NO_REASON);
    const number = engine.clauses.add(clause, spread);
    return engine.demandByClause(number);
  }

  #levelOfClash(): number {
    const { clash, trail } = this.#engine;
    let level = 0;
    for (let place = 0; place < clash.length; place += 2) {
      level = Math.max(level, trail.levelOf(read(clash.items, place), read(clash.items, place + 1)));
    }
    return level;
  }

  #follow(): void {
    const { trail, clash } = this.#engine;
    this.#open = 0;
    this.#slots.length = 0;
    this.#needAll(clash);
    for (let entry = trail.length - 1; ; entry -= 1) {
      const slot = trail.slotOf(entry);
      const value = read(this.#needed, slot);
      if (value === NOTHING || trail.beforeOf(entry) >= value) continue;
      if (this.#open === 1) {
        this.#putFirst(slot);
        return;
      }
      this.#needed[slot] = NOTHING;
      this.#open -= 1;
      this.#facts.length = 0;
      this.#engine.explain(trail.reasonOf(entry), slot, value, this.#facts);
      this.#needAll(this.#facts);
    }
  }

  #needAll(facts: IntList): void {
    for (let place = 0; place < facts.length; place += 2) {
      this.#need(read(facts.items, place), read(facts.items, place + 1));
    }
  }

  #need(slot: number, value: number): void {
    const { trail } = this.#engine;
    const needed = read(this.#needed, slot);
    if (needed >= value) return;
    const level = trail.levelOf(slot, value);
    if (level === 0) return;
    this.#touched(slot);
    if (needed === NOTHING) this.#slots.push(slot);
    if (level === trail.level && (needed === NOTHING || trail.levelOf(slot, needed) < level)) this.#open += 1;
    this.#needed[slot] = value;
  }

  #putFirst(slot: number): void {
    const { items, length } = this.#slots;
    for (let place = 0; place < length; place += 1) {
      if (read(items, place) !== slot) continue;
      items[place] = read(items, 0);
      items[0] = slot;
      return;
    }
  }

  /** The opposites of what is needed: first that of the last level, then that of the next to last. */
  #readClause(): Int32Array {
    const slots: number[] = [];
    for (let place = 0; place < this.#slots.length; place += 1) {
      const slot = read(this.#slots.items, place);
      if (read(this.#needed, slot) === NOTHING || slots.includes(slot)) continue;
      slots.push(slot);
    }
    const kept = slots.filter((slot, place) => place === 0 || !this.#followsFromOthers(slot));
    const clause = Int32Array.from(kept.flatMap((slot) => [slot ^ 1, 1 - read(this.#needed, slot)]));
    for (const slot of slots) this.#needed[slot] = NOTHING;
    this.#putLatestSecond(clause);
    return clause;
  }

  /** Whether a fact was made true by the others alone, and so adds nothing. */
  #followsFromOthers(slot: number): boolean {
    const { trail } = this.#engine;
    const value = read(this.#needed, slot);
    const entry = trail.entryOf(slot, value);
    const reason = trail.reasonOf(entry);
    if (reason === NO_REASON) return false;
    this.#facts.length = 0;
    this.#engine.explain(reason, slot, value, this.#facts);
    const { items, length } = this.#facts;
    for (let place = 0; place < length; place += 2) {
      const other = read(items, place);
      if (trail.levelOf(other, read(items, place + 1)) === 0) continue;
      const needed = read(this.#needed, other);
      // Only what came before may stand for it: otherwise two could each be left out for the other.
      if (needed < read(items, place + 1) || trail.entryOf(other, needed) >= entry) return false;
    }
    return true;
  }

  #putLatestSecond(clause: Int32Array): void {
    let latest = 2;
    for (let place = 4; place < clause.length; place += 2) {
      if (this.#levelOfOpposite(clause, place) > this.#levelOfOpposite(clause, latest)) latest = place;
    }
    if (latest >= clause.length) return;
    const fact = clause.slice(latest, latest + 2);
    clause.copyWithin(latest, 2, 4);
    clause.set(fact, 2);
  }

  #levelOfOpposite(clause: Int32Array, place: number): number {
    return this.#engine.trail.levelOf(read(clause, place) ^ 1, 1 - read(clause, place + 1));
  }

  #countLevels(clause: Int32Array): number {
    const levels = new Set<number>();
    for (let place = 0; place < clause.length; place += 2) levels.add(this.#levelOfOpposite(clause, place));
    return levels.size;
  }
}

const NOTHING = -0x8000_0000;
