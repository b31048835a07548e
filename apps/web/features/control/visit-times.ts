import type { EventReplica } from '@halfshaft/contract';
import { type EpochSeconds, type PointTime, serviceOutAt, toWholeMinute } from '@halfshaft/itinerary';
import { type ControlTime, timeKeyOf, type WorkState } from '@halfshaft/worklog';
import type { Visit } from '../service/visit';
import { timesOfEntry } from './lateness-of';

/** The times of one service of a car: as the controls wrote them, and until then as planned. Whole minutes. */
export interface VisitTimes {
  /** What is recorded of the in-control and the out-control; null: nothing yet. */
  recordedIn: ControlTime | null;
  recordedOut: ControlTime | null;
  /** When the car is due in, from the times recorded before; as planned while there are none. */
  dueIn: EpochSeconds;
  /** When the car came in, or is due in. */
  inAt: EpochSeconds;
  /** When the car must leave. */
  dueOut: EpochSeconds;
  /** When the car left, or must leave. */
  outAt: EpochSeconds;
  /** The working time: shorter where the event keeps the printed out-time of a late car. */
  workSeconds: number;
}

/**
 * The actual in-time is the first thing a service rests on; while it is not known the planned one stands in for it.
 *
 * @param along all of the car's times, where they are known already
 */
export function visitTimes(
  replica: EventReplica,
  state: WorkState,
  visit: Visit,
  along: readonly PointTime[] = timesOfEntry(replica, state, visit.entry),
): VisitTimes {
  const { entry, service } = visit;
  const { entryId } = entry;
  const recordedAt = (controlId: string) => state.times.get(timeKeyOf({ entryId, controlId })) ?? null;
  const recordedIn = recordedAt(service.inControl);
  const recordedOut = recordedAt(service.outControl);
  const dueIn = along[service.inIndex]?.dueAt ?? toWholeMinute(visit.inAt);
  const inAt = recordedIn?.writtenAt ?? dueIn;
  const plannedOutAt = toWholeMinute(visit.outAt);
  const dueOut = serviceOutAt({ service, inWrittenAt: inAt, plannedOutAt, rules: replica.penaltyRules });
  const outAt = recordedOut?.writtenAt ?? dueOut;
  return { recordedIn, recordedOut, dueIn, inAt, dueOut, outAt, workSeconds: dueOut - inAt };
}
