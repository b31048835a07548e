import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import { dueAt, type EpochSeconds, positionsOf, type ServiceWindow, servicesOf } from '@halfshaft/itinerary';
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
  const services = servicesOf(replica.itinerary);
  const serviceIndex = services.findIndex((service) => service.id === letter);
  const service = services[serviceIndex];
  if (!entry || !service) return null;
  return {
    entry,
    services,
    service,
    serviceIndex,
    inAt: dueAt(replica.itinerary, service.inIndex, positionsOf(entry)),
    outAt: dueAt(replica.itinerary, service.outIndex, positionsOf(entry)),
  };
}

/** The service a car is in or comes to next; after the last one, the last. Null when the event has none. */
export function serviceNow(
  replica: EventReplica,
  entry: EntryReplica,
  now: EpochSeconds,
): ServiceWindow | null {
  const services = servicesOf(replica.itinerary);
  const open = services.find(
    (service) => dueAt(replica.itinerary, service.outIndex, positionsOf(entry)) >= now,
  );
  return open ?? services.at(-1) ?? null;
}
