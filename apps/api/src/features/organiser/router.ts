import {
  createOrganiserInput,
  createOrganiserOutput,
  listOrganiserEventsInput,
  listOrganiserEventsOutput,
  publishEventInput,
  saveOrganiserEventInput,
  saveOrganiserEventOutput,
} from '@halfshaft/contract';
import { accountProcedure, organiserProcedure, router } from '../../trpc';
import { createOrganiser, listOwnEvents, publishOwnEvent, saveOwnEvent } from './service';

export const organiserRouter = router({
  create: accountProcedure
    .input(createOrganiserInput)
    .output(createOrganiserOutput)
    .mutation(({ ctx, input }) =>
      createOrganiser({ store: ctx.store, userId: ctx.account.userId, now: ctx.clock.now() }, input.name),
    ),

  events: organiserProcedure
    .input(listOrganiserEventsInput)
    .output(listOrganiserEventsOutput)
    .query(({ ctx }) => listOwnEvents(ctx.tx)),

  saveEvent: organiserProcedure
    .input(saveOrganiserEventInput)
    .output(saveOrganiserEventOutput)
    .mutation(({ ctx, input }) => saveOwnEvent(ctx.tx, input, ctx.now)),

  publish: organiserProcedure
    .input(publishEventInput)
    .mutation(({ ctx, input }) => publishOwnEvent(ctx.tx, input.publishedEventId, ctx.now)),
});
