import fc from 'fast-check';
import { CARD_LIMITS } from '../card-limits';
import type { Drive, Surface } from '../job-card';
import type { TableCard } from './model';

/** For tests only: cards of any content the form would take, awkward letters included. */

export const EVERY_CAR: { drive: Drive; surface: Surface }[] = (['front', 'rear', 'four'] as const).flatMap(
  (drive) => (['gravel', 'tarmac', 'snow'] as const).map((surface) => ({ drive, surface })),
);

const letter = fc.oneof(
  fc.constantFrom(...' \t\n,;:|"\'\\=+-@#%./()', 'a', 'ß', 'é', '字', '🔧', '\u00A0', '\uFF1D'),
  fc.string({ minLength: 1, maxLength: 1 }),
);

function text(least: number, most: number): fc.Arbitrary<string> {
  return fc
    .array(letter, { minLength: least, maxLength: most })
    .map((letters) => letters.join('').slice(0, most).trim())
    .filter((typed) => typed.length >= least);
}

const interval = fc.record({
  counter: fc.constantFrom(
    ...(['stages', 'stageMetres', 'totalMetres', 'engineSeconds', 'services', 'days', 'events'] as const),
  ),
  every: fc.integer({ min: 1, max: CARD_LIMITS.amount }),
  tolerance: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: CARD_LIMITS.amount })),
});

const value = fc.oneof(fc.constant(null), fc.integer({ min: -CARD_LIMITS.value, max: CARD_LIMITS.value }));

const reading = fc
  .record({
    id: fc.constant(''),
    name: text(1, CARD_LIMITS.readingNameCharacters),
    kind: fc.constantFrom('wear', 'level', 'setValue', 'passFail', 'hint'),
    unit: text(0, CARD_LIMITS.unitCharacters),
    decimals: fc.integer({ min: 0, max: CARD_LIMITS.decimals }),
    positions: fc.array(text(1, CARD_LIMITS.positionCharacters), { maxLength: CARD_LIMITS.positions }),
    low: value,
    high: value,
    required: fc.boolean(),
  })
  .filter(({ low, high }) => low === null || high === null || low <= high);

const factor = fc.integer({ min: CARD_LIMITS.leastFactor, max: CARD_LIMITS.mostFactor });

/** With the ids that reading a table gives. */
export const anyCard: fc.Arbitrary<TableCard> = fc
  .record({
    name: text(1, CARD_LIMITS.nameCharacters),
    place: fc.constantFrom('engineBay', 'underCar', 'frontLeft', 'allCorners', 'wholeCar'),
    intervals: fc.array(interval, { maxLength: CARD_LIMITS.intervals }),
    dueAt: fc.oneof(fc.constant(null), fc.integer({ min: 0, max: CARD_LIMITS.dueAt })),
    conditionFactors: fc.record(
      { dust: factor, water: factor, rough: factor, night: factor, jumps: factor },
      { requiredKeys: [] },
    ),
    combineConditions: fc.constantFrom('largest', 'sum'),
    seconds: fc.integer({ min: CARD_LIMITS.leastSeconds, max: CARD_LIMITS.mostSeconds }),
    people: fc.integer({ min: 1, max: CARD_LIMITS.people }),
    leastServiceSeconds: fc.integer({ min: 0, max: CARD_LIMITS.leastServiceSeconds }),
    remoteAllowed: fc.boolean(),
    looks: fc.array(text(1, CARD_LIMITS.lookCharacters), { maxLength: 6 }),
    readings: fc.array(reading, { maxLength: 3 }),
    needsSignature: fc.boolean(),
    caution: text(0, 40),
    tools: fc.array(text(1, CARD_LIMITS.toolCharacters), { maxLength: 4 }),
    instruction: text(0, 40),
    starterId: fc.constantFrom(null, 'starter:wheel-nuts', 'starter:front-pads'),
    fitsNewPart: fc.boolean(),
  })
  .map(({ dueAt, looks, ...card }) =>
    numbered({
      ...card,
      fitsNewPart: card.fitsNewPart && looks.length === 0,
      kind: looks.length > 0 ? 'round' : 'job',
      dateLimit: dueAt === null ? null : { dueAt },
      looks: looks.map((words) => ({ id: '', words })),
    }),
  );

/** The same card as a table gives it back: without its ids, looks and readings numbered. */
export function numbered(card: TableCard & { id?: string }): TableCard {
  const { id: _id, ...body } = card;
  return {
    ...body,
    looks: card.looks.map((look, index) => ({ ...look, id: `look-${index + 1}` })),
    readings: card.readings.map((spec, index) => ({ ...spec, id: `reading-${index + 1}` })),
  };
}
