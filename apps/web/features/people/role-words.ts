import type { TeamRole } from '@halfshaft/contract';
import { capitalise } from '@/lib/capitalise';

export const ROLE_WORDS: Record<TeamRole, string> = {
  admin: 'admin',
  manager: 'manager',
  mechanic: 'mechanic',
  driver: 'driver or co-driver',
};

export const ROLE_HINTS: Record<TeamRole, string> = {
  admin: 'Also decides who belongs to the team.',
  manager: 'Describes cars and events, hands out work, invites people.',
  mechanic: 'Takes and closes rounds and jobs.',
  driver: 'Says what is wrong with the car, confirms stages.',
};

/** For the beginning of a line: "Driver or co-driver". */
export function roleTitle(role: TeamRole): string {
  return capitalise(ROLE_WORDS[role]);
}
