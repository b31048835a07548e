import { formatClock, type LatenessQuestion } from '@halfshaft/itinerary';
import { latenessInShort } from './lateness-in-words';
import { latenessAt } from './lateness-of';
import type { RoadTime } from './road-times';

const SECONDS_IN_MINUTE = 60;

/** "due 10:44", "about 10:52", "10:47, 3 late" or "10:55, 8 min on the stage". */
export function roadTimeInWords(time: RoadTime, question: LatenessQuestion): string {
  const { kind, dueAt, recorded, pointIndex } = time;
  const clock = (at: number) => formatClock(at, question.itinerary.timeZone);
  if (recorded === null) return `${kind === 'finish' ? 'about' : 'due'} ${clock(dueAt)}`;
  const at = clock(recorded.writtenAt);
  if (kind === 'finish') return `${at}${onStageInWords(time, question)}`;
  if (kind === 'start') return `${at}, ${againstDue((recorded.writtenAt - dueAt) / SECONDS_IN_MINUTE)}`;
  const lateness = latenessAt(question, pointIndex);
  return lateness ? `${at}, ${latenessInShort(lateness)}` : at;
}

function onStageInWords({ recorded, pointIndex }: RoadTime, { records }: LatenessQuestion): string {
  const start = records.find((record) => record.pointIndex === pointIndex)?.writtenAt;
  const seconds = recorded && start !== undefined ? recorded.writtenAt - start : 0;
  return seconds > 0 ? `, ${Math.floor(seconds / SECONDS_IN_MINUTE)} min on the stage` : '';
}

/** A start is given by the marshal: later than due, it costs the crew nothing by itself. */
function againstDue(minutes: number): string {
  const whole = Math.floor(Math.abs(minutes));
  if (whole === 0) return 'as due';
  return `${whole} min ${minutes > 0 ? 'later' : 'earlier'} than due`;
}
