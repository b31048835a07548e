import type { EntryReplica } from '@halfshaft/contract';
import type { JobCard } from '@halfshaft/lifing';

/**
 * The jobs a part changed on the road may belong to. Those that fit a new part come first; the others may have a
 * part too, and are not left out.
 */
export function fittableCards({ cards }: Pick<EntryReplica, 'cards'>): JobCard[] {
  const jobs = cards.filter((card) => card.kind === 'job');
  return [...jobs.filter((card) => card.fitsNewPart), ...jobs.filter((card) => !card.fitsNewPart)];
}
