import { countTeams, keyOfPart, LEAST_TEAMS, type Release, type SharedPart } from './shared-part';

/**
 * What may be told of a pool now. `asBefore`: nothing has changed. `anew`: figures about all that is shared now.
 * `keepBefore`: too little has come for new figures, the ones told before stand. `withhold`: somebody took something back,
 * so the ones told before are gone, and new ones would show what it was. `tooFew`: fewer than five teams share.
 */
export type ReleaseDecision = 'asBefore' | 'anew' | 'keepBefore' | 'withhold' | 'tooFew';

/**
 * Decides on figures beside all that was ever told of the same pool: `earlier` in any order, `last` what is told until now,
 * null when nothing is.
 *
 * Whoever remembers earlier figures can add and subtract them. What that can leave is made of the groups of parts that were
 * in the same releases, so new figures are told only where each such group, with them, still has at least five teams. The
 * rule is on the sets asked about and not on the figures, as in D. E. Denning, P. J. Denning, M. D. Schwartz, "The Tracker: A
 * Threat to Statistical Database Security", ACM TODS 4 (1), 1979, which shows why a least size alone does not do (source
 * named from memory). It does not help against four teams that tell each other what they shared.
 */
export function mayRelease(
  now: readonly SharedPart[],
  earlier: readonly Release[],
  last: Release | null,
): ReleaseDecision {
  if (last && isSame(now, last)) return 'asBefore';
  if (countTeams(now) >= LEAST_TEAMS && teamsOfGroups([...earlier, now]).every(isEnough)) return 'anew';
  if (!last) return 'tooFew';
  const teams = new Set(now.map(({ team, event }) => JSON.stringify([team, event])));
  const isComplete = last.every(({ team, event }) => teams.has(JSON.stringify([team, event])));
  return isComplete ? 'keepBefore' : 'withhold';
}

function isEnough(teams: number): boolean {
  return teams >= LEAST_TEAMS;
}

function isSame(one: Release, other: Release): boolean {
  const keys = new Set(one.map(keyOfPart));
  return keys.size === new Set(other.map(keyOfPart)).size && other.every((part) => keys.has(keyOfPart(part)));
}

/** How many teams each group of parts has that were in the very same releases. */
function teamsOfGroups(releases: readonly Release[]): number[] {
  const seenIn = new Map<string, { team: string; places: string }>();
  for (const [place, release] of releases.entries()) {
    for (const [key, { team }] of new Map(release.map((part) => [keyOfPart(part), part]))) {
      seenIn.set(key, { team, places: `${seenIn.get(key)?.places ?? ''} ${place}` });
    }
  }
  const groups = new Map<string, Set<string>>();
  for (const { team, places } of seenIn.values()) {
    groups.set(places, (groups.get(places) ?? new Set()).add(team));
  }
  return [...groups.values()].map((teams) => teams.size);
}
