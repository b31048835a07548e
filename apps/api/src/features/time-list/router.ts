import {
  getTimesInput,
  getTimesOutput,
  saveTimesInput,
  saveTimesOutput,
  timeFiguresInput,
  timeFiguresOutput,
} from '@halfshaft/contract';
import { organiserProcedure, router } from '../../trpc';
import { getTimes, latenessOverEvents, saveTimes } from './service';

export const timeListRouter = router({
  get: organiserProcedure
    .input(getTimesInput)
    .output(getTimesOutput)
    .query(({ ctx, input }) => getTimes(ctx.tx, ctx.account.userId, input.publishedEventId)),

  save: organiserProcedure
    .input(saveTimesInput)
    .output(saveTimesOutput)
    .mutation(({ ctx, input }) => saveTimes(ctx.tx, ctx.account.userId, input, ctx.now)),

  figures: organiserProcedure
    .input(timeFiguresInput)
    .output(timeFiguresOutput)
    .query(({ ctx, input }) => latenessOverEvents(ctx.tx, input.className)),
});
