import {
  chooseShareInput,
  countShareInput,
  countShareOutput,
  getShareInput,
  getShareOutput,
  toldSharesInput,
  toldSharesOutput,
} from '@halfshaft/contract';
import { organiserProcedure, router, teamProcedure } from '../../trpc';
import { chooseShare, countShare, getShare, tellOrganiser } from './service';

export const shareRouter = router({
  get: teamProcedure
    .input(getShareInput)
    .output(getShareOutput)
    .query(({ ctx, input }) => getShare(ctx.tx, input.eventId)),

  count: teamProcedure
    .input(countShareInput)
    .output(countShareOutput)
    .query(({ ctx, input }) => countShare(ctx.tx, input.eventId)),

  choose: teamProcedure
    .input(chooseShareInput)
    .mutation(({ ctx, input }) => chooseShare(ctx.tx, input, ctx.now)),

  told: organiserProcedure
    .input(toldSharesInput)
    .output(toldSharesOutput)
    .query(({ ctx }) => tellOrganiser(ctx.tx, ctx.now)),
});
