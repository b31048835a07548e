import type { EventReplica } from '@halfshaft/contract';
import { type Itinerary, servicesOf } from '@halfshaft/itinerary';
import type { CarFact, FactPlace, RecordedFact, WorkState } from '@halfshaft/worklog';
import type { Visit } from '../service/visit';
import { lastOut } from './out-now';

/** A car that does not come to a service, since it was out before. */
export interface OutAt {
  forDay: boolean;
  cause: Extract<CarFact, { kind: 'out' }>['cause'];
  /** The stage after which it was out, or the service where; null: before the first stage. */
  since: { kind: 'stage' | 'service'; id: string } | null;
}

/**
 * Whether a car is out by the time of a service, as the log stands: from where it went out on, for good or for the rest
 * of that leg. On a later leg a car that was out for the day may start again, so there it has work to be judged. Null
 * while it drives, and at the services before.
 *
 * @example
 * outAt(replica, state, visit)?.since // { kind: 'stage', id: 'SS4' }
 */
export function outAt(
  { itinerary }: Pick<EventReplica, 'itinerary'>,
  state: Pick<WorkState, 'facts'>,
  { entry, service }: Visit,
): OutAt | null {
  const out = lastOut(state, entry.entryId);
  if (out === null) return null;
  const from = indexOf(itinerary, out.at);
  const legOut = itinerary.points[Math.max(0, from)]?.leg;
  const isBefore = service.inIndex < from;
  if (isBefore || (out.fact.forDay && service.leg !== legOut)) return null;
  return { forDay: out.fact.forDay, cause: out.fact.cause, since: sinceOf(out.at) };
}

/** Where along the way it went out; what a bulletin took away counts as the beginning. */
function indexOf(itinerary: Itinerary, at: RecordedFact['at']): number {
  if (at.kind === 'service') return servicesOf(itinerary).find(({ id }) => id === at.serviceId)?.inIndex ?? 0;
  return itinerary.points.findIndex(({ id }) => id === at.afterStageId);
}

function sinceOf(at: FactPlace): OutAt['since'] {
  if (at.kind === 'service') return { kind: 'service', id: at.serviceId };
  return at.afterStageId === null ? null : { kind: 'stage', id: at.afterStageId };
}
