import type { EntryReplica } from '@halfshaft/contract';
import { type JobCard, newPartCardIds } from '@halfshaft/lifing';

/**
 * The jobs a part changed on the road may belong to. Those whose new parts are looked at again come first; a team's own
 * jobs may be fitted too, and are not left out.
 */
export function fittableCards({ cards }: Pick<EntryReplica, 'cards'>): JobCard[] {
  const newParts = newPartCardIds(cards);
  const jobs = cards.filter((card) => card.kind === 'job');
  return [...jobs.filter((card) => newParts.has(card.id)), ...jobs.filter((card) => !newParts.has(card.id))];
}
