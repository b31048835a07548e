import type { Drive, Surface } from '../job-card';
import { cardIdsThatFit } from '../triggers/card-ids-that-fit';
import type { Trigger } from '../triggers/model';
import { fullStarterCards } from './full-starter-cards';
import { triggersAmong } from './triggers-among';

/**
 * What calls for cards of `fullStarterCards` beside their intervals. Every call returns fresh objects; cards that the
 * set for this drive and surface does not have are left out. Common practice, no source.
 *
 * @example
 * starterTriggers('four', 'gravel').find((trigger) => trigger.id === 'soft-pedal')
 */
export function starterTriggers(drive: Drive, surface: Surface): Trigger[] {
  const cards = fullStarterCards(drive, surface);
  return triggersAmong(new Set(cards.map((card) => card.id)), cardIdsThatFit(cards));
}
