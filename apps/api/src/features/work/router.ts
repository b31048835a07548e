import { pullInput, pullOutput, pushInput, pushOutput } from '@halfshaft/contract';
import { accountProcedure, router, teamProcedure } from '../../trpc';
import { pull, push } from './service';

export const workRouter = router({
  /** Every change in the bay goes through here. A few actions share a transaction, hence not a `teamProcedure`. */
  push: accountProcedure
    .input(pushInput)
    .output(pushOutput)
    .mutation(({ ctx, input }) =>
      push(ctx.store, { ...input, userId: ctx.account.userId }, () => ctx.clock.now()),
    ),

  pull: teamProcedure
    .input(pullInput)
    .output(pullOutput)
    .query(({ ctx, input }) => pull(ctx.tx, input.eventId, input.since)),
});
