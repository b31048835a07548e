import { IntList, read } from './int-list';

/** A reason is one number: which kind, and the number of the arc, the clause or the note. */
export const NO_REASON = -1;
export const arcReason = (arc: number): number => arc * 4;
export const clauseReason = (clause: number): number => clause * 4 + 1;
const noteReason = (note: number): number => note * 4 + 2;

export type ReasonKind = 'none' | 'arc' | 'clause' | 'note';

export function kindOf(reason: number): ReasonKind {
  if (reason < 0) return 'none';
  return reason % 4 === 0 ? 'arc' : reason % 4 === 1 ? 'clause' : 'note';
}

export function indexOf(reason: number): number {
  return reason >> 2;
}

/** Reasons that must be written down when they arise: facts that together force another. */
export class Notes {
  readonly #facts = new IntList();
  readonly #starts = new IntList();

  get length(): number {
    return this.#starts.length;
  }

  /** Opens a note; facts are then added to it. Returns it as a reason. */
  begin(): number {
    this.#starts.push(this.#facts.length);
    return noteReason(this.#starts.length - 1);
  }

  add(slot: number, value: number): void {
    this.#facts.push(slot);
    this.#facts.push(value);
  }

  copyTo(note: number, facts: IntList): void {
    const last = note + 1 === this.#starts.length;
    const to = last ? this.#facts.length : read(this.#starts.items, note + 1);
    for (let place = read(this.#starts.items, note); place < to; place += 1) {
      facts.push(read(this.#facts.items, place));
    }
  }

  cutTo(length: number): void {
    if (length >= this.#starts.length) return;
    this.#facts.length = read(this.#starts.items, length);
    this.#starts.length = length;
  }
}
