/**
 * Cards of `fullStarterCards` that the two of the crew can do on the road or at a halt outside service, with what a
 * car usually has aboard (common practice, no source). Where work outside service is allowed, and what, the event's
 * regulations say.
 *
 * @example
 * outsideServiceIds.has('starter:wheel-nuts-again') // true
 */
export const outsideServiceIds: ReadonlySet<string> = new Set(
  [
    'wheel-nuts-again',
    'wheel-change',
    'after-an-off',
    'after-a-puncture',
    'after-a-hard-landing',
    'after-a-ford',
    'fuel-smell',
    'look-at-new-part',
    'pressures-before-stage',
    'oil-level',
    'air-filter',
    'aux-belt',
    'throttle',
    'refuel',
  ].map((id) => `starter:${id}`),
);
