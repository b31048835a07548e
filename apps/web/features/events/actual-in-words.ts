import type { EventReplica } from '@halfshaft/contract';
import { formatClock, toWholeMinute } from '@halfshaft/itinerary';
import type { WorkState } from '@halfshaft/worklog';
import { latenessInShort } from '../control/lateness-in-words';
import { latenessAt, latenessQuestionOf } from '../control/lateness-of';
import type { ServiceMoment } from './service-moments';

const SECONDS_IN_MINUTE = 60;

/**
 * How the times of a service came to differ from the timetable, a part each; nothing where they do not.
 *
 * @example
 * actualInWords(replica, state, moment) // ['planned 13:05 – 13:25', 'in 13:09, 4 late']
 */
export function actualInWords(replica: EventReplica, state: WorkState, moment: ServiceMoment): string[] {
  const { visit, times } = moment;
  const { recordedIn, recordedOut } = times;
  const clock = (at: number) => formatClock(at, replica.itinerary.timeZone);
  const [inAt, outAt] = [toWholeMinute(visit.inAt), toWholeMinute(visit.outAt)];
  const isAsPlanned = times.inAt === inAt && times.outAt === outAt;
  if (isAsPlanned && !recordedIn && !recordedOut) return [];
  const question = latenessQuestionOf(replica, state, visit.entry);
  const passed = (word: string, at: number, pointIndex: number) => {
    const lateness = latenessAt(question, pointIndex);
    return lateness ? `${word} ${clock(at)}, ${latenessInShort(lateness)}` : `${word} ${clock(at)}`;
  };
  return [
    `planned ${clock(inAt)} – ${clock(outAt)}`,
    ...(recordedIn
      ? [passed('in', recordedIn.writtenAt, visit.service.inIndex)]
      : shiftInWords((times.inAt - inAt) / SECONDS_IN_MINUTE)),
    ...(recordedOut ? [passed('out', recordedOut.writtenAt, visit.service.outIndex)] : []),
  ];
}

function shiftInWords(minutes: number): string[] {
  if (minutes === 0) return [];
  return [`${Math.abs(minutes)} min ${minutes > 0 ? 'later' : 'earlier'} by the times so far`];
}
