import * as z from './zod';

/** A malformed id is told as such; a well-formed id that is not yours gets the same answer as one that never existed. */
const id = (what: string) => z.uuid({ error: `That is not the id of ${what}. Go back and choose it again.` });

export const teamId = id('a team');
export const personId = id('a person');
export const carId = id('a car');
export const cardId = id('a card');
export const eventId = id('an event');
export const entryId = id('a car at an event');
export const inviteId = id('an invitation');
export const membershipId = id('a membership');
export const organiserId = id('an organiser');
export const publishedEventId = id('a published event');
export const snagId = id('a snag');
export const factId = id('a fact of the car');
export const actionId = id('an action');
