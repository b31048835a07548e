import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import {
  dueAt,
  type EpochSeconds,
  positionsOf,
  type ServiceWindow,
  serviceNow as serviceNowBy,
  servicesOf,
} from '@halfshaft/itinerary';
import type { WorkState } from '@halfshaft/worklog';
import { timesOfEntry } from '../control/lateness-of';
import { findEntry } from '../work/task-rules';

/** One service of one car. */
export interface Visit {
  entry: EntryReplica;
  services: ServiceWindow[];
  service: ServiceWindow;
  serviceIndex: number;
  /** As planned for this car. */
  inAt: EpochSeconds;
  outAt: EpochSeconds;
}

/** The visit that a car and a service letter name, or null when the event has no such car or service. */
export function findVisit(
  replica: EventReplica,
  entryId: string | null,
  letter: string | null,
): Visit | null {
  const entry = entryId === null ? null : findEntry(replica, entryId);
  return entry ? (visitsOf(replica, entry).find(({ service }) => service.id === letter) ?? null) : null;
}

/** Every service of a car, in driving order. */
export function visitsOf(replica: EventReplica, entry: EntryReplica): Visit[] {
  const services = servicesOf(replica.itinerary);
  return services.map((service, serviceIndex) => ({
    entry,
    services,
    service,
    serviceIndex,
    inAt: dueAt(replica.itinerary, service.inIndex, positionsOf(entry)),
    outAt: dueAt(replica.itinerary, service.outIndex, positionsOf(entry)),
  }));
}

/** The service a car is in or comes to next by the times written so far; after the last one, the last. */
export function serviceNow(
  replica: EventReplica,
  state: WorkState,
  entry: EntryReplica,
  now: EpochSeconds,
): ServiceWindow | null {
  return serviceNowBy(servicesOf(replica.itinerary), timesOfEntry(replica, state, entry), now);
}
