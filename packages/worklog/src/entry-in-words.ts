import type { ControlId, EpochSeconds, ServiceId, StageId } from '@halfshaft/itinerary';
import type { EntryBody, LogEntry } from './entry';
import { factInWords, placedInWords } from './fact-in-words';
import { flagInWords } from './flag-in-words';
import type { CardId, EntryKind, PersonId, TaskRef } from './model';
import type { TimeRef } from './state';

/** How the log's ids are called on a screen. Names live outside the log, so that a person can be forgotten. */
export interface EntryNames {
  person: (id: PersonId) => string;
  /** The card's title, or the snag's words. */
  task: (ref: TaskRef) => string;
  /** The card's title. */
  card: (id: CardId) => string;
  service: (id: ServiceId) => string;
  stage: (id: StageId) => string;
  control: (id: ControlId) => string;
  /** The time of day at the event. */
  clock: (at: EpochSeconds) => string;
  reading: (id: string) => string;
}

/** What an entry did, after the person's name. */
const DID: Record<EntryKind, string> = {
  claimed: 'took',
  released: 'let go of',
  started: 'started',
  done: 'closed',
  carriedOver: 'carried over',
  dropped: 'marked as not needed',
  reopened: 'opened again',
  signed: 'signed',
  snagRaised: 'raised a snag',
  stageConfirmed: 'confirmed',
  timeRecorded: 'wrote down the time',
  factRecorded: 'recorded',
  undone: 'took back',
};

/**
 * One entry of the log as a sentence: who, what, where, why, who typed it, and what stood against it.
 *
 * @example
 * entryInWords(entry, names) // "Mia closed 'Wheel nuts' at Service B; entered by Jo"
 */
export function entryInWords(entry: LogEntry, names: EntryNames): string {
  const typist = entry.enteredBy === entry.by ? [] : [`entered by ${names.person(entry.enteredBy)}`];
  const flags = entry.flags.map((flag) => flagInWords(flag, names.person, names.reading));
  return [`${names.person(entry.by)} ${deedInWords(entry, names)}`, ...typist, ...flags].join('; ');
}

function deedInWords({ by, body }: LogEntry, names: EntryNames): string {
  switch (body.kind) {
    case 'snagRaised': {
      const urgent = body.urgent ? 'an urgent snag' : 'a snag';
      const snag = body.stop ? 'a snag to stop for' : urgent;
      return `raised ${snag} (${body.place}): ${body.words}`;
    }
    case 'stageConfirmed':
      return `confirmed ${names.stage(body.stageId)}: ${body.driven ? 'driven' : 'not driven'}`;
    case 'timeRecorded':
      return `wrote down ${names.clock(body.writtenAt)} ${timePlaceInWords(body, names)}${heldInWords(body)}`;
    case 'factRecorded':
      return `recorded ${placedInWords(body, names)}`;
    case 'undone':
      return undoInWords(by, body, names);
    case 'released': {
      const whose = body.heldBy === by ? '' : ` for ${names.person(body.heldBy)}`;
      return `${DID.released} ${taskInWords(body.task, names)}${whose}`;
    }
    case 'reopened': {
      const why = body.because === null ? '' : ', because of other work';
      return `${DID.reopened} ${taskInWords(body.task, names)}${why}${reasonInWords(body.reason)}`;
    }
    case 'carriedOver':
    case 'dropped':
      return `${DID[body.kind]} ${taskInWords(body.task, names)}${reasonInWords(body.reason)}`;
    case 'signed': {
      const how = body.onPaper ? ', in ink on the printed sheet' : body.byInitials ? ', by initials' : '';
      return `${DID.signed} ${taskInWords(body.task, names)}${how}`;
    }
    default:
      return `${DID[body.kind]} ${taskInWords(body.task, names)}`;
  }
}

function undoInWords(by: PersonId, body: Extract<EntryBody, { kind: 'undone' }>, names: EntryNames): string {
  const whose = body.doneBy === by ? '' : ` what ${names.person(body.doneBy)} did`;
  const what = [
    ...body.tasks.map((task) => taskInWords(task.ref, names)),
    ...body.snags.map((snag) => `the snag (${snag.place}): ${snag.words}`),
    ...body.stages.map((stage) => names.stage(stage.stageId)),
    ...(body.times ?? []).map((time) => timePlaceInWords(time, names)),
    ...(body.facts ?? []).map((recorded) => factInWords(recorded.fact, names)),
  ];
  const deeds = [...new Set(body.kinds)].map((kind) => DID[kind]).join(' and ');
  return `took back${whose}: ${deeds}, ${what.join(', ')}`;
}

/** A stage has a start and a finish; of the two only the finish is told apart in the log. */
function timePlaceInWords({ controlId, finish }: TimeRef, names: EntryNames): string {
  return finish ? `at the finish of ${names.stage(controlId)}` : `at ${names.control(controlId)}`;
}

function heldInWords({ heldMinutes }: { heldMinutes: number }): string {
  if (heldMinutes === 0) return '';
  return `, held by the event for ${heldMinutes} ${heldMinutes === 1 ? 'minute' : 'minutes'}`;
}

function taskInWords(ref: TaskRef, names: EntryNames): string {
  return `'${names.task(ref)}' at ${names.service(ref.serviceId)}`;
}

function reasonInWords(reason: string): string {
  return reason === '' ? '' : `: ${reason}`;
}
