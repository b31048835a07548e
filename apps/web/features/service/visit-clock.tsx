import { formatDay } from '@halfshaft/itinerary';
import { Countdown, TimeOfDay } from '@/components/clock';
import type { LoadedWork } from '../work/work-page';
import { clockBeside } from './time-in-words';
import type { Visit } from './visit';

/** Beyond this a countdown in minutes tells nobody anything. */
const HALF_A_DAY_SECONDS = 12 * 3600;

/** Counts down to the in-time, then to the out-time; far from both it names the day. */
export function VisitClock({ work, visit }: { work: LoadedWork; visit: Visit }) {
  const { now, replica } = work;
  const { inAt, outAt } = visit;
  if (now !== null && (now < inAt - HALF_A_DAY_SECONDS || now > outAt + HALF_A_DAY_SECONDS)) {
    const label = `${formatDay(outAt, replica.itinerary.timeZone)}, car must leave at`;
    return <TimeOfDay large label={label} time={clockBeside(outAt, outAt, replica.itinerary)} />;
  }
  if (now !== null && now < inAt) return <Countdown large label="car due in" until={inAt} now={now} />;
  return <Countdown large label="car must leave in" overWords="over" until={outAt} now={now} />;
}
