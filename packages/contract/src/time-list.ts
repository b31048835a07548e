import type { ControlPass, Itinerary, ItineraryProblem } from '@halfshaft/itinerary';
import type { LatenessByService, ShareTrend } from '@halfshaft/reliability';
import { organiserId, publishedEventId } from './ids';
import * as z from './zod';

/** Ten thousand rows with every column. */
const MOST_CHARACTERS = 500_000;
/** Half a day: beyond it nobody can say of a clock whether it is early or late. */
const MOST_MINUTES_LATE = 720;

export const maxLateMinutes = z
  .number()
  .int('Whole minutes only.')
  .min(0, 'Not below 0.')
  .max(MOST_MINUTES_LATE, `At most ${MOST_MINUTES_LATE}.`);

export const getTimesInput = z.object({ organiserId, publishedEventId });
export const getTimesOutput = z.object({
  name: z.string(),
  startsOn: z.string(),
  timeZone: z.string(),
  /** The newest version that was issued. */
  itinerary: z.custom<Itinerary>(),
  /** Null while there is no list. */
  saved: z
    .object({
      source: z.string(),
      savedAt: z.number(),
      savedByYou: z.boolean(),
      passes: z.array(z.custom<ControlPass>()),
      maxLateMinutes: z.number(),
    })
    .nullable(),
});

export const saveTimesInput = z.object({
  organiserId,
  publishedEventId,
  source: z.string().max(MOST_CHARACTERS, 'The list is too long. Paste one event only.'),
  /** The lateness that the event allows. */
  maxLateMinutes,
  /** `savedAt` of the list that this one comes in place of, as it was shown; null when there was none. */
  replaces: z.number().nullable(),
});
/** With any problem nothing was saved. */
export const saveTimesOutput = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), times: z.number(), savedAt: z.number() }),
  z.object({ ok: z.literal(false), problems: z.array(z.custom<ItineraryProblem>()) }),
]);

/** How late cars left the services of one event. */
const latenessOfEvent = z.object({
  publishedEventId,
  name: z.string(),
  startsOn: z.string(),
  maxLateMinutes: z.number(),
  lateness: z.custom<LatenessByService>(),
});
export type LatenessOfEvent = z.infer<typeof latenessOfEvent>;

export const timeFiguresInput = z.object({
  organiserId,
  /** Only cars that the list of who stopped has in this class; null: all cars. */
  className: z.string().max(20).nullable(),
});
/** Over all events of the organiser that have a list of times. */
export const timeFiguresOutput = z.object({
  /** In the order they were held. */
  events: z.array(latenessOfEvent),
  /** Of the share of cars that left any service late. */
  trend: z.custom<ShareTrend>(),
});
