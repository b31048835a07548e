import { makePasswordLinkInput, makePasswordLinkOutput } from '@halfshaft/contract';
import { accountProcedure, router } from '../../trpc';
import { makePasswordLink } from './service';

export const passwordRouter = router({
  /** The link lies with the sign-in, in another fence than the team: hence not a `teamProcedure`. */
  makeLink: accountProcedure
    .input(makePasswordLinkInput)
    .output(makePasswordLinkOutput)
    .mutation(({ ctx, input }) =>
      makePasswordLink(
        {
          store: ctx.store,
          openLink: ctx.openPasswordLink,
          userId: ctx.account.userId,
          now: ctx.clock.now(),
        },
        input,
      ),
    ),
});
