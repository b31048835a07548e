import type { Drive, Surface } from '../job-card';
import { cardIdsThatFit } from '../triggers/card-ids-that-fit';
import { fullStarterCards } from './full-starter-cards';

const DRIVES: readonly Drive[] = ['front', 'rear', 'four'];
const SURFACES: readonly Surface[] = ['gravel', 'tarmac', 'snow'];

/** Made once, when first asked for: a team may have hundreds of cards from before they said it themselves. */
let idsThatFit: ReadonlySet<string> | undefined;

/**
 * Whether a card that does not say it, since it was saved before cards did, began as a starter card that fits a new part.
 *
 * @param starterId null for a team's own
 * @example
 * beganWithNewPart('starter:front-pads') // true
 */
export function beganWithNewPart(starterId: string | null): boolean {
  idsThatFit ??= new Set(
    DRIVES.flatMap((drive) =>
      SURFACES.flatMap((surface) => cardIdsThatFit(fullStarterCards(drive, surface))),
    ),
  );
  return starterId !== null && idsThatFit.has(starterId);
}
