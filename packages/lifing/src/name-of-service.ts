import type { ServiceId, ServiceWindow } from '@halfshaft/itinerary';

export function nameOfService(id: ServiceId, serviceName?: (id: ServiceId) => string): string {
  return serviceName === undefined ? `Service ${id}` : serviceName(id);
}

/** Said of a card that cannot be done at a service; the same words as `reasonInWords` has. */
export function notHereInWords(next: ServiceWindow | null, serviceName?: (id: ServiceId) => string): string {
  return next === null
    ? 'cannot be done at this service, and no later one will do'
    : `cannot be done at this service, next chance ${nameOfService(next.id, serviceName)}`;
}
