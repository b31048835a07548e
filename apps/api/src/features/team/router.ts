import {
  createTeamInput,
  createTeamOutput,
  keepVisitInput,
  keepVisitOutput,
  myTenants,
} from '@halfshaft/contract';
import { accountProcedure, router, tenantlessProcedure } from '../../trpc';
import { createTeam, keepVisit, listMyTenants } from './service';

export const teamRouter = router({
  mine: tenantlessProcedure.output(myTenants).query(({ ctx }) => listMyTenants(ctx.tx)),

  create: accountProcedure
    .input(createTeamInput)
    .output(createTeamOutput)
    .mutation(({ ctx, input }) => createTeam(foundingOf(ctx), input)),

  keepVisit: accountProcedure
    .input(keepVisitInput)
    .output(keepVisitOutput)
    .mutation(({ ctx, input }) => keepVisit(foundingOf(ctx), input)),
});

type FoundingContext = Parameters<typeof createTeam>[0];

function foundingOf(ctx: {
  store: FoundingContext['store'];
  account: { userId: string };
  clock: { now(): number };
}): FoundingContext {
  return { store: ctx.store, userId: ctx.account.userId, now: ctx.clock.now() };
}
