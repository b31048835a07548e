import type { MyTenants } from '@halfshaft/contract';

export type MyTeam = MyTenants['teams'][number];

/** The team that is shown: the one asked for if it is mine, else the only one; null when there is a choice to make. */
export function chooseTeam(teams: readonly MyTeam[], asked: string | null): MyTeam | null {
  const wanted = teams.find((team) => team.teamId === asked);
  return wanted ?? (teams.length === 1 ? (teams[0] ?? null) : null);
}
