/**
 * Gives a halt that is printed without a code the next free one of the letter chain: the number of the control or
 * stage before it, and a letter. The first row of all is TC0.
 */
export class HaltNamer {
  private readonly taken: Set<string>;
  private number = 0;

  constructor(writtenIds: readonly string[]) {
    this.taken = new Set(writtenIds);
  }

  /** Remembers where in the chain the way stands. */
  pass(id: string): void {
    this.taken.add(id);
    if (!id.startsWith('RZ')) this.number = Number(/\d+/.exec(id)?.[0] ?? this.number);
  }

  next(): string {
    const base = `TC${this.number}`;
    if (this.number === 0 && !this.taken.has(base)) return base;
    for (let order = 0; order < 702; order += 1) {
      const id = base + lettersOf(order);
      if (!this.taken.has(id)) return id;
    }
    return base;
  }
}

function lettersOf(order: number): string {
  const last = String.fromCharCode(65 + (order % 26));
  return order < 26 ? last : lettersOf(Math.floor(order / 26) - 1) + last;
}
