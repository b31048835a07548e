import type { TeamRole } from '@halfshaft/contract';
import { useQuery } from '@tanstack/react-query';
import { api } from '@/lib/api';

export interface OwnTeam {
  name: string;
  role: TeamRole;
  /** Describing cars, events and entries is for managers; helpers of one event never may. */
  mayManage: boolean;
  /** Let in for one event: is told nothing of those who are let in for another. */
  isHelper: boolean;
}

/** The team as the signed-in person stands in it; null until known, or when it is not theirs. */
export function useTeam(teamId: string): OwnTeam | null {
  const { data } = useQuery(api.team.mine.queryOptions());
  const team = data?.teams.find((one) => one.teamId === teamId);
  if (team === undefined) return null;
  const manages = team.role === 'admin' || team.role === 'manager';
  const isHelper = team.eventId !== null;
  return { name: team.name, role: team.role, mayManage: manages && !isHelper, isHelper };
}
