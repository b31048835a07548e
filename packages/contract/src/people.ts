import { eventId, membershipId, personId, teamId } from './ids';
import { personName, teamRole } from './team';
import * as z from './zod';

/** A person of the team. Some have an account (a membership), some are only named by whoever writes for them. */
export const teamPerson = z.object({
  personId,
  name: z.string(),
  initials: z.string(),
  /** Null without an account; to a helper of one event also for those who are let in for another. */
  membership: z
    .object({ membershipId, role: teamRole, eventId: eventId.nullable(), revokedAt: z.number().nullable() })
    .nullable(),
});
export type TeamPerson = z.infer<typeof teamPerson>;

export const listPeopleInput = z.object({ teamId });
export const listPeopleOutput = z.array(teamPerson);

export const addPersonInput = z.object({ teamId, name: personName });
export const addPersonOutput = z.object({ personId });

export const setRoleInput = z.object({ teamId, membershipId, role: teamRole });
export const revokeMembershipInput = z.object({ teamId, membershipId });
