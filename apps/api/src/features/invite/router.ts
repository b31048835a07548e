import {
  acceptInviteInput,
  acceptInviteOutput,
  createInviteInput,
  createInviteOutput,
  listInvitesInput,
  listInvitesOutput,
  lookAtInviteInput,
  lookAtInviteOutput,
  revokeInviteInput,
} from '@halfshaft/contract';
import { accountProcedure, publicProcedure, router, teamProcedure } from '../../trpc';
import { acceptInvite, createInvite, listInvites, lookAtInvite, revokeInvite } from './service';

export const inviteRouter = router({
  create: teamProcedure
    .input(createInviteInput)
    .output(createInviteOutput)
    .mutation(({ ctx, input }) => createInvite(ctx.tx, input, ctx.now)),

  list: teamProcedure
    .input(listInvitesInput)
    .output(listInvitesOutput)
    .query(({ ctx }) => listInvites(ctx.tx)),

  revoke: teamProcedure
    .input(revokeInviteInput)
    .mutation(({ ctx, input }) => revokeInvite(ctx.tx, input.inviteId, ctx.now)),

  look: publicProcedure
    .input(lookAtInviteInput)
    .output(lookAtInviteOutput)
    .query(({ ctx, input }) => lookAtInvite(ctx.store, input.token, ctx.clock.now())),

  accept: accountProcedure
    .input(acceptInviteInput)
    .output(acceptInviteOutput)
    .mutation(({ ctx, input }) =>
      acceptInvite({ store: ctx.store, userId: ctx.account.userId, now: ctx.clock.now() }, input),
    ),
});
