/**
 * What is done at every service before anything else, of `fullStarterCards`: it fits two people in twenty minutes even
 * at the pace of a team that is still learning (common practice, no source).
 *
 * @example
 * starterEssentialIds.has('starter:wheel-nuts') // true
 */
export const starterEssentialIds: ReadonlySet<string> = new Set(
  [
    'wheel-nuts',
    'front-left-corner',
    'front-right-corner',
    'rear-left-corner',
    'rear-right-corner',
    'oil-level',
    'under-front',
    'walk-round',
  ].map((id) => `starter:${id}`),
);
