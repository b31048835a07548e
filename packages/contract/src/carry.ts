import type { EntryBody, Flag } from '@halfshaft/worklog';
import { carRow } from './car';
import { cardBody } from './card';
import {
  entryFields,
  eventName,
  itineraryText,
  penaltyRules,
  plannedConditions,
  positionsBySection,
  tyreAllowance,
} from './event';
import {
  actionId,
  cardId,
  carId,
  entryId,
  eventId,
  factId,
  organiserId,
  personId,
  publishedEventId,
  snagId,
  teamId,
} from './ids';
import { photoFile } from './photo';
import { personName, teamName, teamRole } from './team';
import { wholeNumber } from './words';
import { actionArgs, pushedAction, pushResult } from './work';
import * as z from './zod';

/**
 * An event as it travels between two servers in one file: a first line of plain text (`firstLine`), the log part (gzipped
 * lines of JSON: a head, then one line for each action, last a check sum), then the pictures, one behind the other.
 */
export const CARRY_VERSION = 2;
/** How the file is called behind its dot. */
export const CARRY_ENDING = 'halfshaft';
/** Of the log part, as it is sent: ten times what a busy event of a week comes to. */
export const MOST_CARRY_BYTES = 24_000_000;
/** Of the same unpacked: a small file may hold a huge text. */
export const MOST_CARRY_CHARACTERS = 200_000_000;
export const MOST_FIRST_LINE = 60;

const FIRST_LINE = /^Halfshaft event (\d{1,4}), (\d{1,10})\n/;

/** The line before the log part, which says how long that is; pages cut the file by it. */
export function firstLine(logBytes: number): string {
  return `Halfshaft event ${CARRY_VERSION}, ${logBytes}\n`;
}

/**
 * Where the log part of a file lies, in bytes.
 *
 * @param start the first `MOST_FIRST_LINE` characters of the file
 * @returns null for what is no such file
 *
 * @example
 * readFirstLine('Halfshaft event 2, 2048\n…') // { version: 2, from: 24, to: 2072 }
 */
export function readFirstLine(start: string): { version: number; from: number; to: number } | null {
  const [line, version, bytes] = FIRST_LINE.exec(start) ?? [];
  if (line === undefined) return null;
  return { version: Number(version), from: line.length, to: line.length + Number(bytes) };
}

const seq = wholeNumber('A seq', 1, 2_000_000_000);
const later = wholeNumber('A seq', 0, 2_000_000_000);
const { deviceTime: millis } = pushedAction.shape;
const sum = z.string().regex(/^[0-9a-f]{64}$/, 'That is not a check sum.');
const { task } = actionArgs.takeTask.shape;
const { findings, readings } = actionArgs.closeTask.shape;
const { reason } = actionArgs.dropTask.shape;
const needsSignature = z.boolean();
const given = z.literal(true).optional();
const text = z.string().max(100_000);

const flag = z.discriminatedUnion('code', [
  z.object({ code: z.literal('alsoDoneBy'), personId }),
  z.object({ code: z.literal('heldByAnother'), personId }),
  z.object({ code: z.literal('afterCarryOver') }),
  z.object({ code: z.literal('afterNotNeeded') }),
  z.object({ code: z.literal('serviceCancelled') }),
  z.object({ code: z.literal('afterRevocation') }),
  z.object({ code: z.literal('readingMissing'), readingId: text, position: text.nullable() }),
  z.object({ code: z.literal('unknownTask') }),
  z.object({ code: z.literal('alsoRaisedBy'), personId }),
  z.object({ code: z.literal('alsoRecordedBy'), personId }),
  z.object({ code: z.literal('broughtIn'), personId }),
]);

const changed = { changedSeq: later, changedBy: personId };
const taskRow = z.object({
  id: z.string().max(200),
  ref: task,
  state: z.enum(['open', 'claimed', 'underWay', 'done', 'carriedOver', 'notNeeded']),
  holder: personId.nullable(),
  doneBy: personId.nullable(),
  alsoDoneBy: z.array(personId),
  signedBy: personId.nullable(),
  needsSignature,
  reason: text.nullable(),
  // Of every time it was closed, so without the bound of one closing.
  findings: z.array(findings.element),
  readings: z.array(readings.element),
  round: seq,
  ...changed,
  // While a task is only implied nobody has changed it.
  changedBy: personId.nullable(),
});
const { snagId: _snagId, ...snagSaid } = actionArgs.raiseSnag.shape;
const snagRow = z.object({
  ...snagSaid,
  id: snagId,
  words: text,
  raisedBy: personId,
  withdrawn: z.boolean(),
  ...changed,
});
const stageRow = z.object({ ...actionArgs.confirmStage.shape, confirmedBy: personId, ...changed });
const timeRow = z.object({ ...actionArgs.recordTime.shape, recordedBy: personId, ...changed });
const factRow = z.object({
  ...actionArgs.recordFact.shape,
  recordedBy: personId,
  withdrawn: z.boolean(),
  ...changed,
});
const { stageId } = actionArgs.confirmStage.shape;
const { controlId, finish } = actionArgs.recordTime.shape;

const ENTRY_KINDS = [
  'claimed',
  'released',
  'started',
  'done',
  'carriedOver',
  'dropped',
  'reopened',
  'signed',
  'snagRaised',
  'stageConfirmed',
  'timeRecorded',
  'factRecorded',
  'undone',
] as const;

const undone = z.object({
  kind: z.literal('undone'),
  actionId,
  doneBy: personId,
  kinds: z.array(z.enum(ENTRY_KINDS)),
  tasks: z.array(taskRow),
  snags: z.array(snagRow),
  stages: z.array(z.object({ entryId, stageId, before: stageRow.nullable() })),
  times: z.array(z.object({ entryId, controlId, finish, before: timeRow.nullable() })).optional(),
  facts: z.array(factRow).optional(),
});

const entryBody = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('claimed'), task, needsSignature }),
  z.object({ kind: z.literal('released'), task, heldBy: personId }),
  z.object({ kind: z.literal('started'), task, needsSignature }),
  z.object({ kind: z.literal('done'), task, needsSignature, findings, readings }),
  z.object({ kind: z.literal('carriedOver'), task, needsSignature, reason }),
  z.object({ kind: z.literal('dropped'), task, needsSignature, reason }),
  z.object({ kind: z.literal('reopened'), task, reason, because: z.string().max(200).nullable() }),
  z.object({ kind: z.literal('signed'), task, onPaper: given, byInitials: given }),
  z.object({ kind: z.literal('snagRaised'), ...actionArgs.raiseSnag.shape }),
  z.object({ kind: z.literal('stageConfirmed'), ...actionArgs.confirmStage.shape }),
  z.object({ kind: z.literal('timeRecorded'), ...actionArgs.recordTime.shape }),
  z.object({ kind: z.literal('factRecorded'), ...actionArgs.recordFact.shape }),
  undone,
]);

/** Fails to compile when the shapes drift apart. */
type SameShape<A, B> = [A] extends [B] ? ([B] extends [A] ? true : never) : never;
const bodyIsEntryBody: SameShape<z.infer<typeof entryBody>, EntryBody> = true;
const flagIsFlag: SameShape<z.infer<typeof flag>, Flag> = true;
void bodyIsEntryBody;
void flagIsFlag;

/** An action that a server answered, with what it wrote in the log; one that was refused wrote nothing. */
export const carriedAction = z.object({
  actionId,
  deviceId: pushedAction.shape.deviceId,
  deviceSeq: pushedAction.shape.deviceSeq,
  /** A check sum of what was pushed, by which a repeat is told from a mistake. */
  content: sum,
  result: pushResult,
  receivedAt: millis,
  entries: z.array(
    z.object({
      seq,
      by: personId,
      enteredBy: personId,
      deviceTime: millis,
      serverTime: millis,
      flags: z.array(flag),
      body: entryBody,
    }),
  ),
});
export type CarriedAction = z.infer<typeof carriedAction>;

const wear = wholeNumber('Wear', 0, Number.MAX_SAFE_INTEGER);
const counters = z.partialRecord(
  z.enum(['stages', 'stageMetres', 'totalMetres', 'engineSeconds', 'services', 'days', 'events']),
  wear,
);

export const carriedVersion = z.object({
  versionId: z.uuid('That is not the id of an itinerary.'),
  number: seq,
  // Read again where it comes in, so that nothing but a table that can be read gets in.
  text: itineraryText,
  bulletinNumber: later.nullable(),
  savedBy: personId,
  savedAt: millis,
});
export const carriedCard = z.object({
  cardId,
  carId,
  ordinal: later,
  card: cardBody,
  removedAt: millis.nullable(),
});
export const carriedEntry = z.object({
  entryId,
  carId,
  ...entryFields,
  positionsBySection,
  carried: z.record(cardId, counters),
});

/** The event with everything the log speaks of, and nothing of anybody's sign-in. */
export const carriedHead = z.object({
  version: z.literal(CARRY_VERSION),
  madeAt: millis,
  /** Whoever made the file. */
  madeBy: personId,
  team: z.object({ teamId, name: teamName }),
  people: z.array(z.object({ personId, name: personName, role: teamRole.nullable() })).max(2000),
  cars: z.array(carRow).max(300),
  cards: z.array(carriedCard).max(20_000),
  event: z.object({
    eventId,
    name: eventName,
    /** Of the server that made the file: another's clock may go otherwise, so it counts only where the event is new. */
    clockOffsetSeconds: wholeNumber('The offset of the clock', -200_000_000, 200_000_000),
    from: z.object({ organiserId, publishedEventId }).nullable(),
    settings: z.object({
      penaltyRules,
      plannedConditions,
      tyreAllowance,
    }),
  }),
  versions: z.array(carriedVersion).min(1).max(500),
  entries: z.array(carriedEntry).max(300),
  /** What this server last saw of the other: see `whoseStands`. */
  seen: z.record(z.string().max(60), sum),
  pictures: z
    .array(z.object({ photoId: factId, ...photoFile, bytes: wholeNumber('The size', 1, 5_000_000) }))
    .max(20_000),
});
export type CarriedHead = z.infer<typeof carriedHead>;

/** The last line: how many actions there are, and a check sum of all lines before it. */
export const carriedLastLine = z.object({ actions: later, sha256: sum });

/** The whole log part. */
export interface CarriedEvent {
  head: CarriedHead;
  actions: CarriedAction[];
}

/** Which event, in the address of its file. */
export const carryQuery = z.object({ team: teamId, event: eventId });

/** Where an event is fetched from as a file. */
export function carryAddress(team: string, event: string): string {
  return `/carry?team=${team}&event=${event}`;
}
