import { eventId, inviteId, personId, teamId } from './ids';
import { personName, teamRole } from './team';
import { wholeNumber } from './words';
import * as z from './zod';

/** Nobody becomes admin by a link. */
export const inviteRole = z.enum(['manager', 'mechanic', 'driver']);
export const inviteToken = z
  .string()
  .regex(
    /^[A-Za-z0-9_-]{20,100}$/,
    'That link is not complete. Scan the code again, or ask for the link once more.',
  );

export const createInviteInput = z.object({
  teamId,
  role: inviteRole,
  /** Set: for helpers of this one event. */
  eventId: eventId.nullable(),
  days: wholeNumber('The number of days', 1, 60),
});
/** The token is told once; only its hash is kept. The link is `/join/#<token>`, so it reaches no server log. */
export const createInviteOutput = z.object({ inviteId, token: inviteToken, expiresAt: z.number() });

export const listInvitesInput = z.object({ teamId });
export const listInvitesOutput = z.array(
  z.object({
    inviteId,
    role: inviteRole,
    eventId: eventId.nullable(),
    madeBy: personId,
    expiresAt: z.number(),
    revokedAt: z.number().nullable(),
  }),
);
export const revokeInviteInput = z.object({ teamId, inviteId });

/** No account needed: what the holder of a link sees before joining. */
export const lookAtInviteInput = z.object({ token: inviteToken });
export const lookAtInviteOutput = z.object({
  teamName: z.string(),
  role: teamRole,
  eventName: z.string().nullable(),
  /** Null when the link is good; else a sentence. */
  problem: z.string().nullable(),
});

/** Needs a session, which may be an anonymous one. */
export const acceptInviteInput = z.object({ token: inviteToken, name: personName });
export const acceptInviteOutput = z.object({ teamId, personId, eventId: eventId.nullable() });
