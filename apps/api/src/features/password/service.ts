import type { makePasswordLinkInput } from '@halfshaft/contract';
import type { Store } from '@halfshaft/store';
import type { z } from 'zod';
import { AppError, notAllowed, unknown } from '../../errors';
import { mayDecideRoles } from '../people/ability';
import { countPlaces, findAccountId, findMaker, makeToken, withTeam } from './data';

/** Long enough to hand over on the spot or by message; whoever comes late asks for another. */
const LINK_MILLISECONDS = 2 * 3_600_000;

const ELSEWHERE =
  'This account also belongs to another team or an organiser, where your team may let nobody in. Ask whoever runs this server.';
const NO_PASSWORD =
  'They came by a link and never made a password. Give them a new invitation link in place of this.';
const OWN = 'This is your own account. Another admin of the team can make the link for you.';

/**
 * Lets the holder of the token set the account's password once, until `expiresAt` (milliseconds). An older link of the
 * same account ends. False, and no link, for an account that has no password.
 */
export type OpenPasswordLink = (link: {
  userId: string;
  token: string;
  expiresAt: number;
}) => Promise<boolean>;

interface Asker {
  store: Store;
  openLink: OpenPasswordLink;
  userId: string;
  now: number;
}

/**
 * A link, good once and for two hours, with which a member who forgot the password sets a new one. For admins, and only
 * for accounts that belong to their team alone: a new password opens everything an account belongs to.
 */
export async function makePasswordLink(
  { store, openLink, userId, now }: Asker,
  { teamId, membershipId }: z.infer<typeof makePasswordLinkInput>,
) {
  const { accountId, madeBy } = await withTeam(store, { teamId, userId }, async (tx) => {
    if (!mayDecideRoles(tx.member)) throw notAllowed('an admin');
    const found = await findAccountId(tx, membershipId);
    if (found === null) throw unknown();
    if (found === userId) throw new AppError('conflict', OWN);
    return { accountId: found, madeBy: tx.member.membershipId };
  });
  if ((await countPlaces(store, accountId)) > 1) throw new AppError('notAllowed', ELSEWHERE);
  const token = `${makeToken()}.${teamId}.${madeBy}`;
  const expiresAt = now + LINK_MILLISECONDS;
  if (!(await openLink({ userId: accountId, token, expiresAt }))) {
    throw new AppError('conflict', NO_PASSWORD);
  }
  return { token, expiresAt };
}

/**
 * Whether a link that was made may be used now: its maker is an admin of the team still, and its account belongs to that
 * team and to nothing else, which it may have joined meanwhile. Only for a token the sign-in knows: it says who made it.
 */
export async function mayUsePasswordLink(store: Store, userId: string, token: string): Promise<boolean> {
  const [, teamId = '', madeBy = ''] = token.split('.');
  if ((await countPlaces(store, userId)) > 1) return false;
  const maker = await findMaker(store, { teamId, userId }, madeBy);
  return maker !== null && maker.revokedAt === null && mayDecideRoles(maker);
}
