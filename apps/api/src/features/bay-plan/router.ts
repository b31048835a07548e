import { proposeInput, proposeOutput } from '@halfshaft/contract';
import { accountProcedure, router } from '../../trpc';
import { propose } from './service';

export const bayPlanRouter = router({
  /** Planning takes seconds, and no transaction is held meanwhile: hence not a `teamProcedure`. It changes nothing. */
  propose: accountProcedure
    .input(proposeInput)
    .output(proposeOutput)
    .mutation(({ ctx, input, signal }) => propose(ctx, { ...input, userId: ctx.account.userId }, signal)),
});
