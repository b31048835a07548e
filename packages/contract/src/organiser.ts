import { eventName, itinerarySaved, itineraryText } from './event';
import { organiserId, publishedEventId } from './ids';
import { shortText } from './words';
import * as z from './zod';

export const createOrganiserInput = z.object({ name: shortText('The name of the organiser', 80) });
export const createOrganiserOutput = z.object({ organiserId });

export const listOrganiserEventsInput = z.object({ organiserId });
export const listOrganiserEventsOutput = z.array(
  z.object({
    publishedEventId,
    name: z.string(),
    timeZone: z.string(),
    startsOn: z.string(),
    publishedAt: z.number().nullable(),
    versions: z.number(),
    /** Of the newest one issued; 0 is the publication itself, null before it. */
    bulletinNumber: z.number().nullable(),
    /** A version that teams do not see yet, since it was not issued. */
    hasDraft: z.boolean(),
    itineraryText: itineraryText.nullable(),
  }),
);

/** `publishedEventId` null makes a new event; each save is a new version of its itinerary. */
export const saveOrganiserEventInput = z.object({
  organiserId,
  publishedEventId: publishedEventId.nullable(),
  name: eventName,
  itinerary: itineraryText,
});
export const saveOrganiserEventOutput = itinerarySaved({ publishedEventId });

export const publishEventInput = z.object({ organiserId, publishedEventId });
