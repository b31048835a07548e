import type { CarCounts, CarRecord, Itinerary, ItineraryProblem } from '@halfshaft/itinerary';
import type { FieldFigures } from '@halfshaft/reliability';
import { organiserId, publishedEventId } from './ids';
import * as z from './zod';

/** A thousand rows with every column. */
const MOST_CHARACTERS = 200_000;

/** A published event that a list belongs to. */
export const eventOfList = z.object({
  name: z.string(),
  startsOn: z.string(),
  timeZone: z.string(),
  /** The newest version that was issued. */
  itinerary: z.custom<Itinerary>(),
});

/** A list as an organiser pasted it last. */
export const pastedList = z.object({ source: z.string(), savedAt: z.number(), savedByYou: z.boolean() });

/** A list that an organiser pastes for one event. */
export const listToSave = (mostCharacters: number) =>
  z.object({
    organiserId,
    publishedEventId,
    source: z.string().max(mostCharacters, 'The list is too long. Paste one event only.'),
    /** `savedAt` of the list that this one comes in place of, as it was shown; null when there was none. */
    replaces: z.number().nullable(),
  });

/** With any problem nothing was saved. */
export const listRefused = z.object({
  ok: z.literal(false),
  problems: z.array(z.custom<ItineraryProblem>()),
});

/** Only cars that the list of who stopped has in this class, one of `classes`; null: all cars. */
export const chosenClass = z.string().max(20).nullable();

/** What became of the cars of one event. */
const fieldOfEvent = z.object({
  publishedEventId,
  name: z.string(),
  startsOn: z.string(),
  /** Without those that are left out. */
  cars: z.custom<CarCounts>(),
  /** Cars whose stage or section is not in the itinerary any more; they are in none of the figures. */
  leftOut: z.array(z.string()),
  /** For a car that drives every stage. */
  stageKm: z.number(),
});
export type FieldOfEvent = z.infer<typeof fieldOfEvent>;

/** By cause, in km along the stages; with what broke in mechanical ones, the most frequent first. */
const retirementFigures = z.object({
  figures: z.custom<FieldFigures>(),
  parts: z.array(z.object({ part: z.string(), count: z.number() })),
});
export type RetirementFigures = z.infer<typeof retirementFigures>;

export const getRetirementsInput = z.object({ organiserId, publishedEventId });
export const getRetirementsOutput = eventOfList.extend({
  /** Null while there is no list. */
  saved: pastedList
    .extend({
      records: z.array(z.custom<CarRecord>()),
      field: fieldOfEvent,
      ...retirementFigures.shape,
    })
    .nullable(),
});

export const saveRetirementsInput = listToSave(MOST_CHARACTERS);
export const saveRetirementsOutput = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), cars: z.number(), savedAt: z.number() }),
  listRefused,
]);

export const retirementFiguresInput = z.object({ organiserId, className: chosenClass });
/** Over all events of the organiser that have a list; of the cars of one class, where one is named. */
export const retirementFiguresOutput = z.object({
  /** In the order they were held. */
  events: z.array(fieldOfEvent),
  /** Those that any car of any list stands in. */
  classes: z.array(z.string()),
  ...retirementFigures.shape,
});
