import {
  acceptBulletinInput,
  acceptBulletinOutput,
  issueBulletinInput,
  issueBulletinOutput,
  listBulletinsInput,
  listBulletinsOutput,
  openBulletinInput,
  openBulletinOutput,
} from '@halfshaft/contract';
import { organiserProcedure, router, teamProcedure } from '../../trpc';
import { acceptBulletin, getOpenBulletin, issueBulletin, listBulletins } from './service';

export const bulletinRouter = router({
  list: organiserProcedure
    .input(listBulletinsInput)
    .output(listBulletinsOutput)
    .query(({ ctx, input }) => listBulletins(ctx.tx, input.publishedEventId)),

  issue: organiserProcedure
    .input(issueBulletinInput)
    .output(issueBulletinOutput)
    .mutation(({ ctx, input }) => issueBulletin(ctx.tx, input, ctx.now)),

  open: teamProcedure
    .input(openBulletinInput)
    .output(openBulletinOutput)
    .query(({ ctx, input }) => getOpenBulletin(ctx.tx, input.eventId, ctx.now)),

  accept: teamProcedure
    .input(acceptBulletinInput)
    .output(acceptBulletinOutput)
    .mutation(({ ctx, input }) => acceptBulletin(ctx.tx, input, ctx.now)),
});
