import { IntList, read } from './int-list';

/**
 * What is known of some whole numbers, and since when. Number `x` has two *slots*: slot 2x knows "x is at least", slot
 * 2x + 1 knows "−x is at least", so every statement about bounds is a *fact* "slot is at least value", and its opposite is
 * `slot ^ 1` at least `1 − value`. An entry is written whenever a slot is raised, with its reason, so that a contradiction
 * can be followed back to the decisions behind it; going back to an earlier level takes entries off again.
 */
export class BoundsTrail {
  readonly values: Int32Array;
  readonly #latest: Int32Array;
  readonly #entries = new IntList();
  readonly #levels = new IntList();

  /** From the first bounds, slot by slot. */
  constructor(values: Int32Array) {
    this.values = values;
    this.#latest = new Int32Array(values.length).fill(NONE);
  }

  /** How many decisions stand. */
  get level(): number {
    return this.#levels.length;
  }

  get length(): number {
    return this.#entries.length / WIDTH;
  }

  raise(slot: number, value: number, reason: number): void {
    const entry = this.length;
    this.#entries.push(slot);
    this.#entries.push(read(this.values, slot));
    this.#entries.push(read(this.#latest, slot));
    this.#entries.push(this.level);
    this.#entries.push(reason);
    this.#latest[slot] = entry;
    this.values[slot] = value;
  }

  openLevel(): void {
    this.#levels.push(this.length);
  }

  backTo(level: number): void {
    if (level >= this.level) return;
    const keep = read(this.#levels.items, level);
    for (let entry = this.length - 1; entry >= keep; entry -= 1) {
      const slot = this.slotOf(entry);
      this.values[slot] = this.beforeOf(entry);
      this.#latest[slot] = read(this.#entries.items, entry * WIDTH + 2);
    }
    this.#entries.length = keep * WIDTH;
    this.#levels.length = level;
  }

  /** What holds without any decision holds for ever: its entries are forgotten. Only at level 0. */
  forgetEntries(): void {
    this.#entries.length = 0;
    this.#latest.fill(NONE);
  }

  /** The entry that made a fact true, or −1 when it was true from the start. */
  entryOf(slot: number, value: number): number {
    let entry = read(this.#latest, slot);
    while (entry >= 0 && this.beforeOf(entry) >= value) entry = read(this.#entries.items, entry * WIDTH + 2);
    return entry;
  }

  /** The level at which a fact became true. */
  levelOf(slot: number, value: number): number {
    const entry = this.entryOf(slot, value);
    return entry < 0 ? 0 : read(this.#entries.items, entry * WIDTH + 3);
  }

  slotOf(entry: number): number {
    return read(this.#entries.items, entry * WIDTH);
  }

  beforeOf(entry: number): number {
    return read(this.#entries.items, entry * WIDTH + 1);
  }

  reasonOf(entry: number): number {
    return read(this.#entries.items, entry * WIDTH + 4);
  }
}

/** Slot, bound before, the slot's entry before, level, reason. */
const WIDTH = 5;
const NONE = -1;
