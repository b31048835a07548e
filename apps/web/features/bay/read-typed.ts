import type { ReadingSpec } from '@halfshaft/lifing';
import type { Reading } from '@halfshaft/worklog';

/** One box to type into: a reading at a place. */
export interface ReadingSlot {
  key: string;
  spec: ReadingSpec;
  position: string | null;
}

/** Names a reading at a place within its card. */
export function slotKey(readingId: string, position: string | null): string {
  return `${readingId} ${position ?? ''}`;
}

export function slotsOf(specs: readonly ReadingSpec[]): ReadingSlot[] {
  return specs.flatMap((spec) => {
    const positions = spec.positions.length > 0 ? spec.positions : [null];
    return positions.map((position) => ({ key: slotKey(spec.id, position), spec, position }));
  });
}

export type TypedValue = { ok: true; value: number } | { ok: false; sentence: string };

const LARGEST = 1_000_000;

/**
 * A typed number as the whole number the log keeps. Point and comma both part the decimals.
 *
 * @example
 * readTyped('3,5', { decimals: 1 }) // { ok: true, value: 35 }
 */
export function readTyped(text: string, { decimals }: Pick<ReadingSpec, 'decimals'>): TypedValue {
  const match = /^\s*(-?)(\d+)(?:[.,](\d*))?\s*$/.exec(text);
  if (!match) return { ok: false, sentence: 'That is not a number. Type it again.' };
  const [, sign, whole = '', part = ''] = match;
  if (part.length > decimals) return { ok: false, sentence: tooFine(decimals) };
  const value = Number(`${whole}${part.padEnd(decimals, '0')}`) * (sign === '-' ? -1 : 1);
  if (Math.abs(value) > LARGEST) return { ok: false, sentence: 'That is too large a number. Check it.' };
  return { ok: true, value: value === 0 ? 0 : value };
}

function tooFine(decimals: number): string {
  if (decimals === 0) return 'A whole number is wanted, without decimals.';
  return decimals === 1 ? 'One decimal at most.' : `${decimals} decimals at most.`;
}

export interface ReadReadings {
  readings: Reading[];
  /** By slot: what is wrong with what was typed. */
  problems: Record<string, string>;
  /** Required and not typed. */
  missing: ReadingSlot[];
}

/** All boxes of a card: what can be sent, what is wrong, what is missing. */
export function readReadings(
  slots: readonly ReadingSlot[],
  typed: Readonly<Record<string, string>>,
): ReadReadings {
  const result: ReadReadings = { readings: [], problems: {}, missing: [] };
  for (const slot of slots) {
    const text = typed[slot.key]?.trim() ?? '';
    if (text === '') {
      if (slot.spec.required) result.missing.push(slot);
      continue;
    }
    const read = readTyped(text, slot.spec);
    if (read.ok)
      result.readings.push({ readingId: slot.spec.id, position: slot.position, value: read.value });
    else result.problems[slot.key] = read.sentence;
  }
  return result;
}
