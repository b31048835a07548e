import type { Itinerary } from '@halfshaft/itinerary';
import type { FactPlace, RecordedFact, SettingAsker } from './car-fact';
import { factsInOrder } from './facts-in-order';
import type { EntryId } from './model';

export interface SettingChange {
  from: string;
  to: string;
  askedBy: SettingAsker;
  backToBase: boolean;
  at: FactPlace;
}

/** One setting at one place of the car, with all that was done to it. */
export interface CarSetting {
  setting: string;
  position: string | null;
  /** What it was before the first change; empty when nobody said. */
  base: string;
  current: string;
  isAtBase: boolean;
  /** In the order in which they came about. */
  changes: SettingChange[];
}

/**
 * The settings of one car that were changed at an event, in the order of their first change. The base is what the first
 * change started from. Names that differ only in capitals and spaces are one setting, spelled as the first time.
 *
 * @example
 * settingsOf(facts, entryId, itinerary)[0] // { setting: 'Bump', position: 'FL', base: '12 clicks', current: '9 clicks', … }
 */
export function settingsOf(
  facts: Iterable<RecordedFact>,
  entryId: EntryId,
  itinerary: Itinerary,
): CarSetting[] {
  const settings = new Map<string, CarSetting>();
  for (const { fact, at } of factsInOrder('setting', facts, entryId, itinerary)) {
    const { setting, position, from, to, askedBy, backToBase } = fact;
    const key = JSON.stringify([plain(setting), plain(position ?? '')]);
    const known = settings.get(key) ?? { setting, position, base: from, changes: [] };
    const change = { from, to, askedBy, backToBase, at };
    const isAtBase = known.base !== '' && plain(to) === plain(known.base);
    settings.set(key, { ...known, current: to, isAtBase, changes: [...known.changes, change] });
  }
  return [...settings.values()];
}

function plain(words: string): string {
  return words.trim().replace(/\s+/g, ' ').toLowerCase();
}
