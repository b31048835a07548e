import fc from 'fast-check';

export const PHONES = 3;

const KINDS = [
  ...(['act', 'act', 'act', 'act', 'act', 'act', 'act', 'act', 'act', 'act', 'act', 'act'] as const),
  ...(['secondTab', 'secondTab', 'crash', 'crash', 'look'] as const),
  ...(['cut', 'cut', 'mend', 'mend', 'fate', 'fate', 'fate', 'deliverLate', 'pause', 'sleep'] as const),
  ...(['skew', 'passOn', 'update', 'revoke', 'itinerary'] as const),
];

/** What may happen to a phone, its people or the event. `settles`: the next one waits until all that came of it is done. */
export const step = fc.record({
  phone: fc.nat({ max: PHONES - 1 }),
  what: fc.constantFrom(...KINDS),
  pick: fc.nat({ max: 100_000 }),
  settles: fc.integer({ min: 0, max: 3 }).map((drawn) => drawn === 0),
});
export type Step = typeof step extends fc.Arbitrary<infer Value> ? Value : never;
