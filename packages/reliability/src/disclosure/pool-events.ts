import { countTeams, LEAST_TEAMS, type SharedPart } from './shared-part';

/**
 * Puts events together until each pool has parts of at least five teams. Figures are told of whole pools only, so no choice
 * of events can be subtracted from another to leave fewer.
 *
 * Pools that are there stay as they are: an event that moved from one to another would be the difference between the two.
 * `events` in the order in which they were held; those at the end that do not fill a pool yet are in none.
 */
export function poolEvents(
  pools: readonly (readonly string[])[],
  events: readonly string[],
  parts: readonly SharedPart[],
): readonly (readonly string[])[] {
  const pooled = new Set(pools.flat());
  const added: string[][] = [];
  let open: string[] = [];
  for (const event of events.filter((each) => !pooled.has(each))) {
    open.push(event);
    const inside = new Set(open);
    if (countTeams(parts.filter((part) => inside.has(part.event))) < LEAST_TEAMS) continue;
    added.push(open);
    open = [];
  }
  return [...pools, ...added];
}
