import { INCIDENT_CODES } from '@halfshaft/lifing';
import {
  type CarFact,
  type FactPlace,
  FITTED_REASONS,
  GATE_CHANGES,
  GATE_CHECKS,
  type LogEntry,
  OUT_CAUSES,
  SETTING_ASKERS,
  TYRE_PLACES,
  taskRefOf,
} from '@halfshaft/worklog';
import { actionId, cardId, entryId, eventId, factId, personId, snagId, teamId } from './ids';
import { photoFile } from './photo';
import { MOST_ACTIONS } from './plain';
import { optionalText, shortText, wholeNumber } from './words';
import * as z from './zod';

/** Milliseconds: until the year 2200. */
const clockMillis = wholeNumber('A time', 0, 7_258_118_400_000);

/** The arguments are looked at one action at a time, so that one malformed action never blocks the others. */
export const pushedAction = z.object({
  actionId,
  deviceId: shortText('The device id', 64),
  deviceSeq: wholeNumber('The device sequence', 1, 2_000_000_000),
  deviceTime: clockMillis,
  /** Any whole number: one that is too old or too new is refused by name, and the actions beside it are taken. */
  version: z.int('The action version must be a whole number.'),
  by: personId,
  kind: z.string().max(40),
  args: z.record(z.string(), z.unknown()),
});

export const pushInput = z.object({
  teamId,
  eventId,
  /**
   * Who entered them, as the phone knows: under the sign-in of another person none is taken. Absent in requests of apps
   * from before phones were shared.
   */
  enteredBy: personId.optional(),
  actions: z.array(pushedAction).min(1).max(MOST_ACTIONS),
});

/** What became of one action. `sentence` says it to its author. */
export const pushResult = z.object({
  actionId: z.string(),
  status: z.enum(['accepted', 'refused']),
  /** A refusal's code, or null. */
  code: z.string().nullable(),
  sentence: z.string(),
  /** Ids a refusal speaks of, such as who holds the task. */
  personId: z.string().nullable(),
  /** True when this id had been pushed before and the stored answer is given again. */
  repeated: z.boolean(),
  /** The seqs of the entries it made. */
  seqs: z.array(z.number()),
});
export type PushResult = z.infer<typeof pushResult>;
export const pushOutput = z.object({ results: z.array(pushResult), lastSeq: z.number() });

export const pullInput = z.object({ teamId, eventId, since: wholeNumber('The seq', 0, 2_000_000_000) });
/** At most a page; `lastSeq` says whether there is more. */
export const pullOutput = z.object({ entries: z.array(z.custom<LogEntry>()), lastSeq: z.number() });

export const serviceId = z.string().regex(/^[A-Z]{1,2}$/, 'That is not the letter of a service.');
/** Seconds: until the year 2200. */
const wholeMinute = wholeNumber('A time', 0, 7_258_118_400).refine(
  (at) => at % 60 === 0,
  'A control writes whole minutes. Leave the seconds away.',
);
const stageId = shortText('The stage', 20);
const task = z.object({
  entryId,
  serviceId,
  source: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('card'), cardId }),
    z.object({ kind: z.literal('snag'), snagId }),
  ]),
});
const position = z.string().max(12).nullable();
const reason = optionalText('The reason', 300);
const level = wholeNumber('A condition', 0, 1000);

export const finding = z.object({
  lookId: z.string().max(40).nullable(),
  position,
  grade: z.enum(['ok', 'watch', 'needsWork', 'temporaryRepair']),
  words: optionalText('The words', 300),
  newPart: z.literal(true).exactOptional(),
});
export const reading = z.object({
  readingId: shortText('The reading', 40),
  position,
  value: wholeNumber('A reading', -1_000_000, 1_000_000),
});
export const conditions = z.partialRecord(z.enum(['dust', 'water', 'rough', 'night', 'jumps']), level);

export const factPlace = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('service'), serviceId: serviceId }),
  z.object({ kind: z.literal('road'), afterStageId: stageId.nullable() }),
]);

const factPosition = shortText('The position', 12).nullable();
const words = optionalText('The words', 300);
const tread = wholeNumber('The tread in tenths of a millimetre', 0, 300).nullable();
const pressure = wholeNumber('The pressure in millibar', 0, 6000).nullable();

/** Of a task as `taskIdOf` makes it: whatever else is sent here stands for no work. */
const taskId = z.string().max(200).refine(isTaskId, 'That is not the id of a job at a service.');

function isTaskId(text: string): boolean {
  try {
    const ref = taskRefOf(text);
    const source =
      ref.source.kind === 'card' ? cardId.safeParse(ref.source.cardId) : snagId.safeParse(ref.source.snagId);
    return (
      entryId.safeParse(ref.entryId).success && serviceId.safeParse(ref.serviceId).success && source.success
    );
  } catch {
    return false;
  }
}

/** What is so about the car, with a bound on every text and number. */
export const carFact = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('incident'),
    code: z.enum(INCIDENT_CODES, 'Choose what happened.'),
    place: shortText('The place', 40).nullable(),
    words,
    brokenCardId: cardId.optional(),
  }),
  z.object({
    kind: z.literal('fitted'),
    cardId,
    position: factPosition,
    words,
    because: z.enum(FITTED_REASONS, 'Choose why it was changed.').optional(),
    otherKind: z.literal(true).optional(),
  }),
  z.object({ kind: z.literal('modified'), cardId, position: factPosition, words }),
  z.object({
    kind: z.literal('out'),
    forDay: z.boolean(),
    cause: z.enum(OUT_CAUSES, 'Choose why the car is out.').nullable(),
    cardId: cardId.nullable(),
    words,
  }),
  z.object({ kind: z.literal('restarted'), words }),
  // More cards than any car has, so that one entry of the log is never endless.
  z.object({ kind: z.literal('prepared'), cardIds: z.array(cardId).min(1).max(500) }),
  z.object({
    kind: z.literal('gateChecked'),
    checks: z.array(z.enum(GATE_CHECKS)).min(1, 'Tick what you have looked at.').max(GATE_CHECKS.length),
  }),
  z.object({ kind: z.literal('gateOpened'), because: z.enum(GATE_CHANGES, 'Choose what has changed.') }),
  z.object({ kind: z.literal('madeGood'), of: taskId, words }),
  z.object({ kind: z.literal('photo'), of: taskId, words, ...photoFile }),
  z.object({
    kind: z.literal('tyre'),
    tyreId: shortText('The id of the tyre', 64),
    mark: shortText('What is written on the tyre', 40),
    compound: optionalText('The compound', 40),
    place: z.enum(TYRE_PLACES, 'Choose where the tyre is.'),
    treadTenths: tread,
    coldMillibar: pressure,
    hotMillibar: pressure,
  }),
  z.object({
    kind: z.literal('setting'),
    setting: shortText('What was changed', 60),
    position: factPosition,
    from: optionalText('The setting before', 40),
    to: shortText('The setting now', 40),
    askedBy: z.enum(SETTING_ASKERS, 'Choose who asked for it.'),
    backToBase: z.boolean(),
  }),
]);

/** Fails to compile when the two shapes drift apart. */
type SameShape<A, B> = [A] extends [B] ? ([B] extends [A] ? true : never) : never;
const factIsCarFact: SameShape<z.infer<typeof carFact>, CarFact> = true;
const placeIsFactPlace: SameShape<z.infer<typeof factPlace>, FactPlace> = true;
void factIsCarFact;
void placeIsFactPlace;

/** The arguments of each kind, in the shape of the current version. */
export const actionArgs = {
  takeTask: z.object({ task }),
  releaseTask: z.object({ task }),
  startTask: z.object({ task }),
  closeTask: z.object({ task, findings: z.array(finding).max(60), readings: z.array(reading).max(60) }),
  carryOverTask: z.object({ task, reason }),
  dropTask: z.object({ task, reason }),
  reopenTask: z.object({ task, reason }),
  signTask: z.object({ task, onPaper: z.boolean().optional(), byInitials: z.boolean().optional() }),
  raiseSnag: z.object({
    snagId,
    entryId,
    serviceId: serviceId.nullable(),
    place: shortText('The place', 40),
    words: shortText('The words', 300),
    urgent: z.boolean(),
    stop: z.literal(true).optional(),
  }),
  confirmStage: z.object({ entryId, stageId, driven: z.boolean(), conditions }),
  recordTime: z.object({
    entryId,
    controlId: shortText('The control', 20),
    finish: z.literal(true).optional(),
    writtenAt: wholeMinute,
    heldMinutes: wholeNumber('The minutes the event held the car', 0, 600),
  }),
  recordFact: z.object({ factId, entryId, at: factPlace, fact: carFact }),
  undo: z.object({ actionId }),
};
