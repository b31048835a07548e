import { beganWithNewPart } from './full-starter/began-with-new-part';
import type { JobCard } from './job-card';

/** A card as a page or a table sends it. Those from before `fitsNewPart` do not say it. */
export type CardAsSent = Omit<JobCard, 'id' | 'fitsNewPart'> & Partial<Pick<JobCard, 'fitsNewPart'>>;

/**
 * The card as it is kept. Where it is not said whether a new part is fitted, the card stays as it was before; a new one is
 * as the starter card it began as, and a team's own fits none. A round never does.
 *
 * @param before the card it takes the place of; null for a new one
 * @example
 * completeCard(sentByAnOlderPage, before).fitsNewPart // before.fitsNewPart
 */
export function completeCard(
  card: CardAsSent,
  before: Pick<JobCard, 'fitsNewPart'> | null,
): Omit<JobCard, 'id'> {
  const said = card.fitsNewPart ?? before?.fitsNewPart ?? beganWithNewPart(card.starterId);
  return { ...card, fitsNewPart: card.kind === 'job' && said };
}
