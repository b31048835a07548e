import {
  importTableInput,
  importTableOutput,
  listCardsInput,
  listCardsOutput,
  removeCardInput,
  saveCardInput,
  saveCardOutput,
} from '@halfshaft/contract';
import { router, teamProcedure } from '../../trpc';
import { importTable, listCards, removeCard, saveCard } from './service';

export const cardRouter = router({
  list: teamProcedure
    .input(listCardsInput)
    .output(listCardsOutput)
    .query(({ ctx, input }) => listCards(ctx.tx, input.carId)),

  save: teamProcedure
    .input(saveCardInput)
    .output(saveCardOutput)
    .mutation(({ ctx, input }) => saveCard(ctx.tx, input, ctx.now)),

  remove: teamProcedure
    .input(removeCardInput)
    .mutation(({ ctx, input }) => removeCard(ctx.tx, input.cardId, ctx.now)),

  importTable: teamProcedure
    .input(importTableInput)
    .output(importTableOutput)
    .mutation(({ ctx, input }) => importTable(ctx.tx, input, ctx.now)),
});
