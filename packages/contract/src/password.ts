import { membershipId, teamId } from './ids';
import * as z from './zod';

/** A link with which a member sets a new password. The secret first, then who made it for which team. */
export const passwordToken = z
  .string()
  .regex(
    /^[A-Za-z0-9_-]{20,100}\.[0-9a-f-]{36}\.[0-9a-f-]{36}$/,
    'That link is not complete. Scan the code again, or ask for the link once more.',
  );

export const makePasswordLinkInput = z.object({ teamId, membershipId });
/** Told once; only a hash is kept. The link is `/password/#<token>`, so it reaches no server log. */
export const makePasswordLinkOutput = z.object({ token: passwordToken, expiresAt: z.number() });
