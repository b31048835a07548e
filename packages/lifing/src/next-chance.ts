import type { ServiceWindow } from '@halfshaft/itinerary';
import { canBeDoneAt } from './can-be-done-at';
import type { LifingCard } from './model';

/**
 * The next later service where a card can be done, or null when there is none: then the finish must be reached.
 *
 * @example
 * nextChance(padChange, services, 0)?.id // 'C', when Service B is a remote service of ten minutes
 */
export function nextChance(
  card: Pick<LifingCard, 'leastServiceSeconds' | 'remoteAllowed'>,
  services: readonly ServiceWindow[],
  serviceIndex: number,
): ServiceWindow | null {
  return services.slice(serviceIndex + 1).find((service) => canBeDoneAt(card, service)) ?? null;
}
