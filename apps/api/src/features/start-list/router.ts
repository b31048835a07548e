import {
  listStartListsInput,
  listStartListsOutput,
  openStartListInput,
  openStartListOutput,
  saveStartListInput,
  saveStartListOutput,
  takeStartListInput,
} from '@halfshaft/contract';
import { organiserProcedure, router, teamProcedure } from '../../trpc';
import { getOpenPlaces, listStartLists, saveStartList, takePlaces } from './service';

export const startListRouter = router({
  list: organiserProcedure
    .input(listStartListsInput)
    .output(listStartListsOutput)
    .query(({ ctx, input }) => listStartLists(ctx.tx, input.publishedEventId)),

  save: organiserProcedure
    .input(saveStartListInput)
    .output(saveStartListOutput)
    .mutation(({ ctx, input }) => saveStartList(ctx.tx, input, ctx.now)),

  open: teamProcedure
    .input(openStartListInput)
    .output(openStartListOutput)
    .query(({ ctx, input }) => getOpenPlaces(ctx.tx, input.eventId)),

  take: teamProcedure
    .input(takeStartListInput)
    .mutation(({ ctx, input }) => takePlaces(ctx.tx, input.entryId)),
});
