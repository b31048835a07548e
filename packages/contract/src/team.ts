import { driveName, surfaceName } from './car';
import { eventName, itinerarySaved, itineraryText, positionsBySection } from './event';
import { eventId, organiserId, personId, teamId } from './ids';
import { shortText, wholeNumber } from './words';
import * as z from './zod';

export const teamRole = z.enum(['admin', 'manager', 'mechanic', 'driver']);
export type TeamRole = z.infer<typeof teamRole>;

export const teamName = shortText('The name of the team', 80);
export const personName = shortText('The name', 60);

export const createTeamInput = z.object({ name: teamName, personName });
export const createTeamOutput = z.object({ teamId, personId });

/** What the first two minutes ask for, before any account. */
export const visitInput = z.object({
  drive: driveName,
  surface: surfaceName,
  itinerary: itineraryText,
  people: wholeNumber('The number of people', 1, 20),
  startPosition: wholeNumber('The start position', 1, 300),
  /** Where the order is set anew; left away where the car keeps its position all the way. */
  positionsBySection: positionsBySection.optional(),
});
export type Visit = z.infer<typeof visitInput>;

/** What a visitor worked out before signing up, to be kept: team, car with its cards, event with its itinerary, entry. */
export const keepVisitInput = z.object({ teamName, personName, eventName, visit: visitInput });
export const keepVisitOutput = itinerarySaved({ teamId, personId, eventId });

/** Where the signed-in account belongs. */
export const myTenants = z.object({
  teams: z.array(
    z.object({
      teamId,
      name: z.string(),
      role: teamRole,
      personId,
      /** Helpers are let in for one event only. */
      eventId: eventId.nullable(),
    }),
  ),
  organisers: z.array(z.object({ organiserId, name: z.string() })),
});
export type MyTenants = z.infer<typeof myTenants>;
