import {
  createEventInput,
  createEventOutput,
  enterCarInput,
  enterCarOutput,
  eventReplica,
  getEventInput,
  listEventsInput,
  listEventsOutput,
  publishedEvents,
  saveItineraryInput,
  saveItineraryOutput,
  setClockOffsetInput,
  setConditionsInput,
  setPenaltiesInput,
  setTyreAllowanceInput,
  takeOverEventInput,
  takeOverEventOutput,
  updateEntryInput,
} from '@halfshaft/contract';
import { router, teamProcedure, tenantlessProcedure } from '../../trpc';
import {
  createEvent,
  enterCar,
  getEvent,
  listEvents,
  listPublished,
  saveItinerary,
  setClockOffset,
  setConditions,
  setPenalties,
  setTyreAllowance,
  takeOverEvent,
  updateEntry,
} from './service';

export const eventRouter = router({
  list: teamProcedure
    .input(listEventsInput)
    .output(listEventsOutput)
    .query(({ ctx }) => listEvents(ctx.tx)),

  get: teamProcedure
    .input(getEventInput)
    .output(eventReplica)
    .query(({ ctx, input }) => getEvent(ctx.tx, input.eventId, ctx.now)),

  create: teamProcedure
    .input(createEventInput)
    .output(createEventOutput)
    .mutation(({ ctx, input }) => createEvent(ctx.tx, input, ctx.now)),

  saveItinerary: teamProcedure
    .input(saveItineraryInput)
    .output(saveItineraryOutput)
    .mutation(({ ctx, input }) => saveItinerary(ctx.tx, input, ctx.now)),

  enter: teamProcedure
    .input(enterCarInput)
    .output(enterCarOutput)
    .mutation(({ ctx, input }) => enterCar(ctx.tx, input, ctx.now)),

  updateEntry: teamProcedure.input(updateEntryInput).mutation(({ ctx, input }) => updateEntry(ctx.tx, input)),

  setPenalties: teamProcedure
    .input(setPenaltiesInput)
    .mutation(({ ctx, input }) => setPenalties(ctx.tx, input)),

  setConditions: teamProcedure
    .input(setConditionsInput)
    .mutation(({ ctx, input }) => setConditions(ctx.tx, input)),

  setClockOffset: teamProcedure
    .input(setClockOffsetInput)
    .mutation(({ ctx, input }) => setClockOffset(ctx.tx, input)),

  setTyreAllowance: teamProcedure
    .input(setTyreAllowanceInput)
    .mutation(({ ctx, input }) => setTyreAllowance(ctx.tx, input)),

  published: tenantlessProcedure.output(publishedEvents).query(({ ctx }) => listPublished(ctx.tx)),

  takeOver: teamProcedure
    .input(takeOverEventInput)
    .output(takeOverEventOutput)
    .mutation(({ ctx, input }) => takeOverEvent(ctx.tx, input, ctx.now)),
});
