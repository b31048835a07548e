import type { VisitProposal } from '@halfshaft/bayplan';
import { cardId, entryId, eventId, personId, teamId } from './ids';
import { wholeNumber } from './words';
import { serviceId } from './work';
import * as z from './zod';

const SECONDS_IN_DAY = 86_400;
/** More than any service has, so that a plan is never endless work. */
const MOST_CARDS = 80;
const MOST_PEOPLE = 12;

/**
 * One service of one car to be planned. What is due and how long the car may stay come from the phone that asks, since it
 * also knows what it has not sent yet; so the plan never speaks of other work than the sheet it is for.
 */
export const proposeInput = z.object({
  teamId,
  eventId,
  entryId,
  serviceId,
  workSeconds: wholeNumber('The time at the service in seconds', 0, SECONDS_IN_DAY),
  personIds: z
    .array(personId)
    .min(1, 'Say who is at the car.')
    .max(MOST_PEOPLE, `A plan is made for ${MOST_PEOPLE} people at most. Take some off.`)
    .refine(allDiffer, 'Somebody is named twice.'),
  /** The most urgent first. */
  work: z
    .array(z.object({ cardId, mustDo: z.boolean() }))
    .max(MOST_CARDS, `A plan is made of ${MOST_CARDS} cards at most.`)
    .refine((work) => allDiffer(work.map((each) => each.cardId)), 'A card is named twice.'),
});
export const proposeOutput = z.custom<VisitProposal>();

function allDiffer(ids: readonly string[]): boolean {
  return new Set(ids).size === ids.length;
}
