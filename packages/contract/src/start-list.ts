import type { ItineraryProblem } from '@halfshaft/itinerary';
import { entryId, eventId, organiserId, publishedEventId, teamId } from './ids';
import { wholeNumber } from './words';
import * as z from './zod';

/** Five hundred rows of a spreadsheet with everything else it has. */
const MOST_CHARACTERS = 100_000;

export const listStartListsInput = z.object({ organiserId, publishedEventId });
export const listStartListsOutput = z.object({
  /** Of the newest version of the itinerary, in driving order. */
  sections: z.array(z.number()),
  /** The newest of each section that has one. */
  lists: z.array(
    z.object({ section: z.number(), source: z.string(), cars: z.number(), savedAt: z.number() }),
  ),
});

export const saveStartListInput = z.object({
  organiserId,
  publishedEventId,
  /** From which its positions hold, where a row names no other. */
  section: wholeNumber('The section', 1, 99),
  source: z.string().max(MOST_CHARACTERS, 'The list is too long. Paste the start list only.'),
});
/** With any problem nothing was saved. */
export const saveStartListOutput = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), cars: z.number() }),
  z.object({ ok: z.literal(false), problems: z.array(z.custom<ItineraryProblem>()) }),
]);

export const openStartListInput = z.object({ teamId, eventId });
/** The team's cars that start elsewhere by the organiser's lists than the team has set, each with where. */
export const openStartListOutput = z.array(
  z.object({
    entryId,
    carNumber: z.string(),
    places: z.array(z.object({ section: z.number(), position: z.number() })),
  }),
);

export const takeStartListInput = z.object({ teamId, entryId });
