import { CARD_LIMITS, type CardTableProblem, type JobCard, MOST_TABLE_CHARACTERS } from '@halfshaft/lifing';
import { cardId, carId, teamId } from './ids';
import { optionalText, shortText, wholeNumber } from './words';
import * as z from './zod';

const counterName = z.enum(
  ['stages', 'stageMetres', 'totalMetres', 'engineSeconds', 'services', 'days', 'events'],
  'Choose what is counted.',
);

const interval = z.object({
  counter: counterName,
  every: wholeNumber('The limit', 1, CARD_LIMITS.amount),
  tolerance: wholeNumber('The tolerance', 0, CARD_LIMITS.amount),
});

const factor = wholeNumber('A condition factor', CARD_LIMITS.leastFactor, CARD_LIMITS.mostFactor);
const conditionFactors = z.partialRecord(z.enum(['dust', 'water', 'rough', 'night', 'jumps']), factor);

const position = z
  .string()
  .trim()
  .min(1, 'A position is empty.')
  .max(CARD_LIMITS.positionCharacters, 'A position is too long.');
const value = wholeNumber('A reading', -CARD_LIMITS.value, CARD_LIMITS.value);

const readingSpec = z
  .object({
    id: shortText('The id of a reading', 40),
    name: shortText('The name of a reading', CARD_LIMITS.readingNameCharacters),
    kind: z.enum(['wear', 'level', 'setValue', 'passFail', 'hint']),
    unit: optionalText('The unit', CARD_LIMITS.unitCharacters),
    decimals: wholeNumber('The number of decimals', 0, CARD_LIMITS.decimals),
    positions: z.array(position).max(CARD_LIMITS.positions, `More than ${CARD_LIMITS.positions} positions.`),
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
    /** Cards saved before there were triggers have none, and a team's own never do. */
    starterId: z.string().max(CARD_LIMITS.starterCharacters).nullable().default(null),
    name: shortText('The name of the card', CARD_LIMITS.nameCharacters),
    place: carPlace,
    /** None, and no date: only what happens, a reading or a person calls for it. */
    intervals: z.array(interval).max(CARD_LIMITS.intervals, 'More than five limits on one card.'),
    dateLimit: z.object({ dueAt: wholeNumber('The date', 0, CARD_LIMITS.dueAt) }).nullable(),
    conditionFactors,
    combineConditions: z.enum(['largest', 'sum']),
    seconds: wholeNumber('The time in seconds', CARD_LIMITS.leastSeconds, CARD_LIMITS.mostSeconds),
    people: wholeNumber('The number of people', 1, CARD_LIMITS.people),
    leastServiceSeconds: wholeNumber('The shortest service in seconds', 0, CARD_LIMITS.leastServiceSeconds),
    remoteAllowed: z.boolean(),
    /** Pages and files from before cards said it send none: then the card stays as it was. */
    fitsNewPart: z.boolean().exactOptional(),
    looks: z
      .array(
        z.object({
          id: shortText('The id of a look', 40),
          words: shortText('A look', CARD_LIMITS.lookCharacters),
        }),
      )
      .max(CARD_LIMITS.looks, `More than ${CARD_LIMITS.looks} looks in one round.`),
    readings: z
      .array(readingSpec)
      .max(CARD_LIMITS.readings, `More than ${CARD_LIMITS.readings} readings on one card.`),
    needsSignature: z.boolean(),
    caution: optionalText('The caution', CARD_LIMITS.cautionCharacters),
    tools: z
      .array(shortText('A tool', CARD_LIMITS.toolCharacters))
      .max(CARD_LIMITS.tools, `More than ${CARD_LIMITS.tools} tools.`),
    instruction: optionalText('The instruction', CARD_LIMITS.instructionCharacters),
  })
  .refine((card) => (card.kind === 'round') === card.looks.length > 0, {
    error: 'A round has looks and a job has none. Add looks, or choose the other kind.',
    path: ['looks'],
  })
  .refine((card) => card.kind === 'job' || card.fitsNewPart !== true, {
    error: 'A round fits no new part: it looks at several. Take out the tick, or make a job of it.',
    path: ['fitsNewPart'],
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

/**
 * `add` puts the table's cards behind those of the car. `replace` makes them all of the car's cards: one of the same
 * name stays the same card with its history, the rest are removed.
 */
export const importTableInput = z.object({
  teamId,
  carId,
  text: z
    .string({ error: 'The table is missing.' })
    .max(
      MOST_TABLE_CHARACTERS,
      `The table is longer than ${MOST_TABLE_CHARACTERS} characters. Bring it in in parts.`,
    ),
  how: z.enum(['add', 'replace'], 'Choose whether the cards are added or replace those of the car.'),
});
export type ImportTable = z.infer<typeof importTableInput>;

/** A wrong cell is an answer, not an error: nothing was changed then. */
export const importTableOutput = z.discriminatedUnion('ok', [
  z.object({ ok: z.literal(true), added: z.int(), kept: z.int(), removed: z.int() }),
  z.object({ ok: z.literal(false), problems: z.array(z.custom<CardTableProblem>()) }),
]);
