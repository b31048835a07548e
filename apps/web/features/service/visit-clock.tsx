import { formatDay } from '@halfshaft/itinerary';
import { Countdown, TimeOfDay } from '@/components/clock';
import { visitTimes } from '../control/visit-times';
import type { LoadedWork } from '../work/work-page';
import { clockBeside } from './time-in-words';
import type { Visit } from './visit';

/** Beyond this a countdown in minutes tells nobody anything. */
const HALF_A_DAY_SECONDS = 12 * 3600;

/**
 * Counts down to the in-time, then to the out-time, which counts from the actual in-time once it is recorded; far from
 * both it names the day.
 */
export function VisitClock({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { now, replica, state } = work;
  const { recordedIn, recordedOut, inAt, outAt } = visitTimes(replica, state, visit);
  const clock = (at: number) => clockBeside(at, at, replica.itinerary);
  if (recordedOut) return <TimeOfDay large label="car left at" time={clock(outAt)} />;
  if (now !== null && (now < inAt - HALF_A_DAY_SECONDS || now > outAt + HALF_A_DAY_SECONDS)) {
    const label = `${formatDay(outAt, replica.itinerary.timeZone)}, car must leave at`;
    return <TimeOfDay large label={label} time={clock(outAt)} />;
  }
  if (now !== null && recordedIn === null && now < inAt)
    return <Countdown large label="car due in" until={inAt} now={now} />;
  const label = recordedIn === null ? 'planned: car must leave in' : 'car must leave in';
  return <Countdown large label={label} overWords="over" until={outAt} now={now} />;
}
