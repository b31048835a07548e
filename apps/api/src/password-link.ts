import { APIError, createAuthMiddleware } from 'better-auth/api';
import type { Auth } from './auth';
import { toDate } from './clock';
import type { OpenPasswordLink } from './features/password/service';

/** The sign-in library's own key of a link that sets a password; kept hashed (`verification` in auth.ts). */
function keyOf(token: string): string {
  return `reset-password:${token}`;
}

/** The way of this sign-in to open a link. */
export function passwordLinksOf(auth: Auth): OpenPasswordLink {
  return async ({ userId, token, expiresAt }) => {
    const { adapter, internalAdapter } = await auth.$context;
    if (!(await internalAdapter.findCredentialAccount(userId))) return false;
    await adapter.deleteMany({ model: 'verification', where: [{ field: 'value', value: userId }] });
    await internalAdapter.createVerificationValue({
      identifier: keyOf(token),
      value: userId,
      expiresAt: toDate(expiresAt),
    });
    return true;
  };
}

/** Asked when a link that is known and has not run out is used. */
export type MayUsePasswordLink = (userId: string, token: string) => Promise<boolean>;

/** Stands before the library's own endpoint, which knows nothing of teams. */
export function guardPasswordLinks(mayUse: MayUsePasswordLink) {
  return createAuthMiddleware(async (ctx) => {
    if (ctx.path !== '/reset-password') return;
    const token: unknown = ctx.body?.token || ctx.query?.token;
    if (typeof token !== 'string') return;
    const link = await ctx.context.internalAdapter.findVerificationValue(keyOf(token));
    if (!link || (await mayUse(link.value, token))) return;
    throw new APIError('FORBIDDEN', { code: 'PASSWORD_LINK_VOID', message: 'This link counts no more.' });
  });
}
