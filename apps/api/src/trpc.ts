import { organiserId, teamId } from '@halfshaft/contract';
import { asOrganiser, asUser, type Store, withTeam } from '@halfshaft/store';
import { initTRPC } from '@trpc/server';
import { z } from 'zod';
import type { Clock } from './clock';
import { AppError, toProblem, toTrpcError } from './errors';
import type { Planner } from './features/bay-plan/service';
import type { OpenPasswordLink } from './features/password/service';
import { mendText } from './mend-text';

/** The account behind the request. Not a person of a team: that is found inside the fence. */
export interface Account {
  userId: string;
  /** Helpers come by a link with a name only. */
  isAnonymous: boolean;
}

export interface Context {
  store: Store;
  openPasswordLink: OpenPasswordLink;
  clock: Clock;
  planner: Planner;
  account: Account | null;
}

const t = initTRPC.context<Context>().create({
  errorFormatter: ({ shape, error }) => ({
    message: toProblem(error).message,
    code: shape.code,
    data: { httpStatus: shape.data.httpStatus, problem: toProblem(error) },
  }),
});

/** Services throw `AppError`; here it gets the transport's code, once for all procedures. */
const coded = t.middleware(async ({ next }) => {
  const result = await next();
  if (!result.ok) throw toTrpcError(result.error);
  return result;
});

const mended = t.middleware(({ next, getRawInput }) =>
  next({ getRawInput: async () => mendText(await getRawInput()) }),
);

export const router = t.router;
export const createCaller = t.createCallerFactory;

/** For anyone, signed in or not. */
export const publicProcedure = t.procedure.use(coded).use(mended);

/** For whoever has no session, or one that expired. */
export function signInNeeded(): AppError {
  return new AppError('signInNeeded', 'Your sign-in has run out. Sign in again; what you typed is kept.');
}

/** For a signed-in account. Belonging to a team or organiser is proved by `withTeam` and `asOrganiser`, not here. */
export const accountProcedure = publicProcedure.use(({ ctx, next }) => {
  if (!ctx.account) throw signInNeeded();
  return next({ ctx: { ...ctx, account: ctx.account } });
});

/**
 * Inside one team's fence, for a member of it: the whole procedure is one transaction, `ctx.tx`. An error rolls all of it
 * back. Nothing slow belongs in such a procedure.
 */
export const teamProcedure = accountProcedure
  .input(z.object({ teamId }))
  .use(({ ctx, input, next }) =>
    withTeam(ctx.store, { teamId: input.teamId, userId: ctx.account.userId }, async (tx) =>
      orThrow(await next({ ctx: { ...ctx, tx, now: ctx.clock.now() } })),
    ),
  );

/** The same for one organiser's fence. */
export const organiserProcedure = accountProcedure
  .input(z.object({ organiserId }))
  .use(({ ctx, input, next }) =>
    asOrganiser(ctx.store, { organiserId: input.organiserId, userId: ctx.account.userId }, async (tx) =>
      orThrow(await next({ ctx: { ...ctx, tx, now: ctx.clock.now() } })),
    ),
  );

/** For an account with no tenant chosen: its memberships and what organisers published. */
export const tenantlessProcedure = accountProcedure.use(({ ctx, next }) =>
  asUser(ctx.store, ctx.account.userId, async (tx) =>
    orThrow(await next({ ctx: { ...ctx, tx, now: ctx.clock.now() } })),
  ),
);

/** tRPC hands errors on as values; the transaction must see them thrown to roll back. */
function orThrow<R extends { ok: boolean }>(result: R): R {
  if (!result.ok && 'error' in result) throw toTrpcError(result.error);
  return result;
}
