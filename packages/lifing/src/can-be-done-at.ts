import type { ServiceWindow } from '@halfshaft/itinerary';
import type { LifingCard } from './model';

/**
 * Whether a card can be done at a service as far as its length and kind are concerned. Ten minutes in a remote
 * service are no chance for a pad change.
 *
 * @example
 * canBeDoneAt({ leastServiceSeconds: 1200, remoteAllowed: false }, service) // false for any remote service
 */
export function canBeDoneAt(
  card: Pick<LifingCard, 'leastServiceSeconds' | 'remoteAllowed'>,
  service: Pick<ServiceWindow, 'kind' | 'allowedSeconds'>,
): boolean {
  const longEnough = service.allowedSeconds >= card.leastServiceSeconds;
  return longEnough && (service.kind === 'service' || card.remoteAllowed);
}
