import type { CarFact, TyreId, TyrePlace, TyreUse } from '@halfshaft/worklog';

type TyreFact = Extract<CarFact, { kind: 'tyre' }>;

/** A fact about a tyre as it is, with what is new about it. */
export function tyreFact(
  { tyreId, mark, compound, place }: Pick<TyreUse, 'tyreId' | 'mark' | 'compound' | 'place'>,
  news: Partial<TyreFact> = {},
): TyreFact {
  const nothing = { treadTenths: null, coldMillibar: null, hotMillibar: null };
  return { kind: 'tyre', tyreId, mark, compound, place, ...nothing, ...news };
}

/**
 * What is to be recorded when a tyre goes to a place. Where another tyre is there, the two change places: the punctured
 * one lands where the spare was, and of two swapped from side to side neither is lost.
 *
 * @example
 * moveTyre(tyres, 'spare', 'FL').map(({ mark, place }) => [mark, place]) // [['S1', 'FL'], ['L1', 'spare1']]
 */
export function moveTyre(tyres: readonly TyreUse[], tyreId: TyreId, place: TyrePlace): TyreFact[] {
  const mover = tyres.find((tyre) => tyre.tyreId === tyreId);
  if (!mover || mover.place === place) return [];
  const moved = tyreFact(mover, { place });
  const holdsMany = place === 'service' || place === 'scrapped';
  const before = holdsMany ? undefined : tyres.find((tyre) => tyre.place === place);
  // A tyre given up is no place to go to.
  const freed = mover.place === 'scrapped' ? 'service' : mover.place;
  return before ? [moved, tyreFact(before, { place: freed })] : [moved];
}
