import { eventId, organiserId, publishedEventId, teamId } from './ids';
import { optionalText, wholeNumber } from './words';
import * as z from './zod';

/** 0 is the publication itself; bulletins are counted from 1. */
const issued = { number: z.number(), note: z.string(), issuedAt: z.number() };
const sentences = z.array(z.string());

export const listBulletinsInput = z.object({ organiserId, publishedEventId });
export const listBulletinsOutput = z.object({
  /** Newest first, each with what it changed, for the car in start position 1. */
  issued: z.array(z.object({ ...issued, changes: sentences })),
  /** The newest version, as long as it is not issued; null before the publication and when all is issued. */
  draft: z.object({ itineraryNumber: z.number(), savedAt: z.number(), changes: sentences }).nullable(),
});

/** `itineraryNumber` is the version whose sentences the organiser has read. */
export const issueBulletinInput = z.object({
  organiserId,
  publishedEventId,
  itineraryNumber: wholeNumber('The version', 1, 100_000),
  note: optionalText('The note', 500),
});
export const issueBulletinOutput = z.object({ number: z.number() });

export const openBulletinInput = z.object({ teamId, eventId });
/** The newest bulletin the team has not accepted, against the itinerary the team uses now; null when there is none. */
export const openBulletinOutput = z
  .object({
    ...issued,
    organiserName: z.string(),
    /** The team wrote its newest version itself, so accepting puts the organiser's in its place. */
    replacesOwnVersion: z.boolean(),
    /** What is true of all the team's cars; of start position 1 while none is entered. */
    changes: sentences,
    cars: z.array(
      z.object({
        carNumber: z.string(),
        /** What is true of this car alone: its own times. */
        changes: sentences,
        /** Jobs that come due at another service. */
        jobs: sentences,
      }),
    ),
  })
  .nullable();
export type OpenBulletin = NonNullable<z.infer<typeof openBulletinOutput>>;

export const acceptBulletinInput = z.object({
  teamId,
  eventId,
  number: wholeNumber('The number of the bulletin', 1, 100_000),
});
/** The version of the team's itinerary that it became. */
export const acceptBulletinOutput = z.object({ itineraryNumber: z.number() });
