import type { ControlPass } from '@halfshaft/itinerary';
import type { LatenessByControl, LatenessByService, ShareTrend } from '@halfshaft/reliability';
import { organiserId, publishedEventId } from './ids';
import { chosenClass, eventOfList, listRefused, listToSave, pastedList } from './retirement';
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
export const getTimesOutput = eventOfList.extend({
  /** Null while there is no list. */
  saved: pastedList
    .extend({ passes: z.array(z.custom<ControlPass>()), maxLateMinutes: z.number() })
    .nullable(),
});

/** With the lateness that the event allows. */
export const saveTimesInput = listToSave(MOST_CHARACTERS).extend({ maxLateMinutes });
export const saveTimesOutput = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), times: z.number(), savedAt: z.number() }),
  listRefused,
]);

/** How late cars left the services of one event, and how late they came to all other controls. */
const latenessOfEvent = z.object({
  publishedEventId,
  name: z.string(),
  startsOn: z.string(),
  maxLateMinutes: z.number(),
  lateness: z.custom<LatenessByService>(),
  controls: z.custom<LatenessByControl>(),
});
export type LatenessOfEvent = z.infer<typeof latenessOfEvent>;

export const timeFiguresInput = z.object({ organiserId, className: chosenClass });
/** Over all events of the organiser that have a list of times. */
export const timeFiguresOutput = z.object({
  /** In the order they were held. */
  events: z.array(latenessOfEvent),
  /** Of the share of cars that left any service late. */
  trend: z.custom<ShareTrend>(),
  /** Of the share of cars that came late to any other control. */
  controlTrend: z.custom<ShareTrend>(),
});
