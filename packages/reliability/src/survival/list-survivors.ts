import { requireNumber } from '../require-number';

export interface Survivors<Item> {
  distance: number;
  /** Still running when this distance is reached: whoever fails or is taken off here is among them. */
  atRisk: number;
  here: Item[];
}

/**
 * Lives sorted by where they ended, one entry for each distance at which any ended, with the number still at risk.
 * Whoever is taken off at the distance of a failure counts as at risk there: failures come before censorings.
 *
 * @throws RangeError when a distance is negative or not a number
 */
export function listSurvivors<Item extends { distance: number }>(
  functionName: string,
  lives: readonly Item[],
): Survivors<Item>[] {
  for (const { distance } of lives) requireNumber(functionName, 'a distance', distance, 'notNegative');
  const entries: Survivors<Item>[] = [];
  let latest: Survivors<Item> | undefined;
  for (const [index, life] of lives.toSorted((one, other) => one.distance - other.distance).entries()) {
    if (latest?.distance === life.distance) latest.here.push(life);
    else {
      latest = { distance: life.distance, atRisk: lives.length - index, here: [life] };
      entries.push(latest);
    }
  }
  return entries;
}
