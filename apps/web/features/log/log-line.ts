import type { EventReplica } from '@halfshaft/contract';
import { formatClock, formatDay } from '@halfshaft/itinerary';
import {
  flagInWords,
  type LogEntry,
  type Photo,
  photoIn,
  type TaskRef,
  type WorkState,
} from '@halfshaft/worklog';
import { secondsOf } from '../events/event-seconds';
import { sentenceOf } from '../work/entry-sentence';
import { carNameOf, entryNamesOf } from '../work/names';
import { readingsInWords } from '../work/reading-in-words';
import { findingInWords } from '../work/task-in-words';
import { carOfEntry } from './car-of-entry';

/** A phone's clock may be this far off before anyone need know. */
const TOLD_FROM_MILLIS = 60_000;

/** One entry of the log as the screen shows it. */
export interface LogLine {
  seq: number;
  day: string;
  clock: string;
  /** Who did what. */
  sentence: string;
  /** What was found and measured, a line each. */
  found: string[];
  /** Who typed it, what stood against it, what the phone's clock said. */
  remarks: string[];
  car: string | null;
  photo: Photo | null;
  isWaiting: boolean;
}

/** Times are the event's: the server's time when it took the entry in, on the event's official clock. */
export function logLineOf(entry: LogEntry, replica: EventReplica, state: WorkState): LogLine {
  const names = entryNamesOf(replica, state);
  const { timeZone } = replica.itinerary;
  const at = secondsOf(entry.serverTime ?? entry.deviceTime, replica);
  const car = carOfEntry(entry);
  return {
    seq: entry.seq,
    day: formatDay(at, timeZone),
    clock: formatClock(at, timeZone),
    sentence: `${sentenceOf({ ...entry, enteredBy: entry.by, flags: [] }, names)}.`,
    found: foundIn(entry, replica),
    remarks: [
      ...(entry.enteredBy === entry.by ? [] : [`entered by ${names.person(entry.enteredBy)}`]),
      ...entry.flags.map((flag) => flagInWords(flag, names.person, names.reading)),
      ...deviceRemark(entry, replica),
    ],
    car: car === null ? null : carNameOf(replica, car),
    photo: photoIn(state, entry),
    isWaiting: entry.serverTime === null,
  };
}

function foundIn({ body }: LogEntry, replica: EventReplica): string[] {
  if (body.kind !== 'done') return [];
  const card = cardBehind(body.task, replica);
  const measured = readingsInWords(card?.readings ?? [], body.readings);
  const found = body.findings.map((finding) => findingInWords(finding, card?.looks ?? []));
  return [...found, measured].filter((line) => line !== '');
}

function cardBehind({ entryId, source }: TaskRef, { entries }: EventReplica) {
  const entry = entries.find((each) => each.entryId === entryId);
  return entry?.cards.find((card) => source.kind === 'card' && card.id === source.cardId);
}

function deviceRemark({ serverTime, deviceTime }: LogEntry, replica: EventReplica): string[] {
  if (serverTime === null || Math.abs(serverTime - deviceTime) <= TOLD_FROM_MILLIS) return [];
  const { timeZone } = replica.itinerary;
  const at = secondsOf(deviceTime, replica);
  const day = formatDay(at, timeZone);
  const sameDay = day === formatDay(secondsOf(serverTime, replica), timeZone);
  return [`the phone's clock said ${sameDay ? '' : `${day}, `}${formatClock(at, timeZone)}`];
}
