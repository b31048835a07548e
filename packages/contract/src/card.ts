import type { JobCard } from '@halfshaft/lifing';
import { z } from 'zod';
import { cardId, carId, teamId } from './ids';
import { optionalText, shortText, wholeNumber } from './words';

const counterName = z.enum(
  ['stages', 'stageMetres', 'totalMetres', 'engineSeconds', 'services', 'days', 'events'],
  'Choose what is counted.',
);
/** Ten thousand kilometres in metres, a thousand hours in seconds: no limit of a rally car is larger. */
const MOST_AMOUNT = 10_000_000;

const interval = z.object({
  counter: counterName,
  every: wholeNumber('The limit', 1, MOST_AMOUNT),
  tolerance: wholeNumber('The tolerance', 0, MOST_AMOUNT),
});

const factor = wholeNumber('A condition factor', 250, 5000);
const conditionFactors = z.partialRecord(z.enum(['dust', 'water', 'rough', 'night', 'jumps']), factor);

const position = z.string().trim().min(1, 'A position is empty.').max(12, 'A position is too long.');
const value = wholeNumber('A reading', -1_000_000, 1_000_000);

const readingSpec = z
  .object({
    id: shortText('The id of a reading', 40),
    name: shortText('The name of a reading', 60),
    kind: z.enum(['wear', 'level', 'setValue', 'passFail', 'hint']),
    unit: optionalText('The unit', 12),
    decimals: wholeNumber('The number of decimals', 0, 4),
    positions: z.array(position).max(12, 'More than 12 positions.'),
    low: value.nullable(),
    high: value.nullable(),
    required: z.boolean(),
  })
  .refine((spec) => spec.low === null || spec.high === null || spec.low <= spec.high, {
    error: 'The lower limit is above the upper one. Swap them.',
    path: ['low'],
  });

export const carPlace = z.enum([
  'engineBay',
  'underCar',
  'frontLeft',
  'frontRight',
  'rearLeft',
  'rearRight',
  'allCorners',
  'cockpit',
  'body',
  'boot',
  'wholeCar',
]);

/** A job card or round as a person edits it. The same shape as `JobCard` of lifing, less the id. */
export const cardBody = z
  .object({
    kind: z.enum(['job', 'round']),
    name: shortText('The name of the card', 80),
    place: carPlace,
    intervals: z.array(interval).max(5, 'More than five limits on one card.'),
    dateLimit: z.object({ dueAt: wholeNumber('The date', 0, 4_102_444_800) }).nullable(),
    conditionFactors,
    combineConditions: z.enum(['largest', 'sum']),
    seconds: wholeNumber('The time in seconds', 30, 14_400),
    people: wholeNumber('The number of people', 1, 8),
    leastServiceSeconds: wholeNumber('The shortest service in seconds', 0, 36_000),
    remoteAllowed: z.boolean(),
    looks: z
      .array(z.object({ id: shortText('The id of a look', 40), words: shortText('A look', 120) }))
      .max(30, 'More than 30 looks in one round.'),
    readings: z.array(readingSpec).max(12, 'More than 12 readings on one card.'),
    needsSignature: z.boolean(),
    caution: optionalText('The caution', 300),
    tools: z.array(shortText('A tool', 60)).max(20, 'More than 20 tools.'),
    instruction: optionalText('The instruction', 600),
  })
  .refine((card) => card.intervals.length > 0 || card.dateLimit !== null, {
    error: 'The card has no limit, so it would never fall due. Give it one.',
    path: ['intervals'],
  })
  .refine((card) => (card.kind === 'round') === card.looks.length > 0, {
    error: 'A round has looks and a job has none. Add looks, or choose the other kind.',
    path: ['looks'],
  });
export type CardBody = z.infer<typeof cardBody>;

/** Fails to compile when the two shapes drift apart. */
type SameShape<A, B> = [A] extends [B] ? ([B] extends [A] ? true : never) : never;
const bodyIsJobCard: SameShape<Required<CardBody>, Required<Omit<JobCard, 'id'>>> = true;
void bodyIsJobCard;

export const listCardsInput = z.object({ teamId, carId });
export const listCardsOutput = z.array(z.custom<JobCard>());

/** `cardId` null makes a new one. */
export const saveCardInput = z.object({ teamId, carId, cardId: cardId.nullable(), card: cardBody });
export const saveCardOutput = z.object({ cardId });
export const removeCardInput = z.object({ teamId, cardId });
