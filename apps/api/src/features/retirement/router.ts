import {
  getRetirementsInput,
  getRetirementsOutput,
  retirementFiguresInput,
  retirementFiguresOutput,
  saveRetirementsInput,
  saveRetirementsOutput,
} from '@halfshaft/contract';
import { organiserProcedure, router } from '../../trpc';
import { getRetirements, overEvents, saveRetirements } from './service';

export const retirementRouter = router({
  get: organiserProcedure
    .input(getRetirementsInput)
    .output(getRetirementsOutput)
    .query(({ ctx, input }) => getRetirements(ctx.tx, ctx.account.userId, input.publishedEventId)),

  save: organiserProcedure
    .input(saveRetirementsInput)
    .output(saveRetirementsOutput)
    .mutation(({ ctx, input }) => saveRetirements(ctx.tx, ctx.account.userId, input, ctx.now)),

  figures: organiserProcedure
    .input(retirementFiguresInput)
    .output(retirementFiguresOutput)
    .query(({ ctx, input }) => overEvents(ctx.tx, input.className)),
});
