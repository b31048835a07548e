import type { Starter } from './start-list';

export interface SavedStartList {
  /** Later lists have higher numbers. */
  number: number;
  section: number;
  starters: readonly Starter[];
}

/** The lists that hold: the newest of each section, oldest first. */
export function newestStartLists<List extends SavedStartList>(lists: readonly List[]): List[] {
  const newest = new Map<number, List>();
  const inOrder = [...lists].sort((one, other) => one.number - other.number);
  for (const list of inOrder) newest.set(list.section, list);
  return inOrder.filter((list) => newest.get(list.section) === list);
}

/**
 * Where a car starts by the lists of its event, by section. A list that was saved again counts as it is now: a car it has
 * no longer stands nowhere in it.
 *
 * @example
 * placesOfCar([{ number: 1, section: 1, starters: [{ carNumber: '14', position: 9, section: 1 }] }], '14') // Map { 1 => 9 }
 */
export function placesOfCar(lists: readonly SavedStartList[], carNumber: string): Map<number, number> {
  const rows = newestStartLists(lists).flatMap(({ starters }) => starters);
  const own = rows.filter((starter) => starter.carNumber === carNumber.trim());
  return new Map(own.map(({ section, position }) => [section, position]));
}
