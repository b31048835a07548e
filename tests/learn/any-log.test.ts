import { parseItineraryTable, servicesOf } from '@halfshaft/itinerary';
import { exposuresOf, failuresOf, observationsOf } from '@halfshaft/reliability';
import {
  type CarFact,
  carLivesOf,
  type FactPlace,
  type LifeQuestion,
  type LoggedEvent,
  type RecordedFact,
  taskIdOf,
} from '@halfshaft/worklog';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { ITINERARY } from '../support/event';

const parsed = parseItineraryTable(ITINERARY.source, { ...ITINERARY, startDate: ITINERARY.startsOn });
if (!parsed.ok) throw new Error('The fixture itinerary has a problem.');
const { itinerary } = parsed;
const STAGES = itinerary.points.flatMap((point) => (point.kind === 'stage' ? [point] : []));
const ROUTE_METRES = STAGES.reduce((sum, { stageMetres }) => sum + stageMetres, 0);
/** One of each is not in the itinerary: an amendment took it out after it was written down. */
const stageId = fc.constantFrom(...STAGES.map(({ id }) => id), 'SS99');
const serviceId = fc.constantFrom(...servicesOf(itinerary).map(({ id }) => id), 'Z');
const cardId = fc.constantFrom('pads', 'belt');
const position = fc.constantFrom(null, 'FL', 'FR', 'FL inner', 'XX');
const lookId = fc.constantFrom(null, 'hose');

const QUESTIONS: LifeQuestion[] = [
  { cardId: 'pads', positions: ['FL', 'FR'], counter: 'stageMetres', doneRenews: true, shows: 'atOnce' },
  { cardId: 'belt', positions: [], counter: 'totalMetres', doneRenews: false, shows: 'whenLooked' },
  { cardId: 'belt~hose', positions: [], counter: 'stages', doneRenews: false, shows: 'whenLooked' },
];

const place: fc.Arbitrary<FactPlace> = fc.oneof(
  serviceId.map((id): FactPlace => ({ kind: 'service', serviceId: id })),
  fc.option(stageId).map((id): FactPlace => ({ kind: 'road', afterStageId: id })),
);
const words = fc.constant('');
const because = fc.constantFrom(undefined, 'wornOut' as const, 'broke' as const, 'planned' as const);
const otherKind = fc.constantFrom(undefined, true as const);
const cause = fc.constantFrom(null, 'mechanical' as const, 'offRoad' as const);
const fact: fc.Arbitrary<CarFact> = fc.oneof(
  fc.record({ kind: fc.constant('fitted' as const), cardId, position, words, because, otherKind }),
  fc.record({ kind: fc.constant('modified' as const), cardId, position, words }),
  fc.record({
    kind: fc.constant('out' as const),
    forDay: fc.boolean(),
    cause,
    cardId: fc.option(cardId),
    words,
  }),
  fc.record({ kind: fc.constant('restarted' as const), words }),
  fc.record({ kind: fc.constant('prepared' as const), cardIds: fc.array(cardId, { minLength: 1 }) }),
  fc.record({
    kind: fc.constant('incident' as const),
    code: fc.constant('off' as const),
    place: fc.constantFrom(null, 'frontLeft', 'boot'),
    words,
    brokenCardId: fc.option(cardId, { nil: undefined }),
  }),
  fc.tuple(serviceId, cardId).map(([service, card]): CarFact => {
    const source = { kind: 'card' as const, cardId: card };
    return { kind: 'madeGood', of: taskIdOf({ entryId: 'car', serviceId: service, source }), words: '' };
  }),
);
const grade = fc.constantFrom(
  'ok' as const,
  'watch' as const,
  'needsWork' as const,
  'temporaryRepair' as const,
);
const finding = fc.record(
  { lookId, position, grade, words, newPart: fc.constant(true as const) },
  { requiredKeys: ['lookId', 'position', 'grade', 'words'] },
);

const logged: fc.Arbitrary<LoggedEvent> = fc
  .record({
    isOver: fc.boolean(),
    stages: fc.array(fc.record({ stageId, driven: fc.boolean() }), { maxLength: 12 }),
    times: fc.array(
      fc.record({ controlId: fc.constantFrom('TC4', 'SS5', 'TC99'), finish: fc.constant(undefined) }),
      { maxLength: 2 },
    ),
    workedAt: fc.array(serviceId, { maxLength: 3 }),
    done: fc.array(fc.record({ serviceId, cardId, findings: fc.array(finding, { maxLength: 3 }) }), {
      maxLength: 8,
    }),
    said: fc.array(fc.tuple(place, fact), { maxLength: 10 }),
  })
  .map(({ said, ...event }) => ({ ...event, eventId: 'event', itinerary, facts: said.map(recordedOf) }));

function recordedOf([at, said]: [FactPlace, CarFact], index: number): RecordedFact {
  const who = { recordedBy: 'mia', changedBy: 'mia', withdrawn: false };
  return { factId: `f${index}`, entryId: 'car', at, fact: said, changedSeq: index + 1, ...who };
}

it('makes lives of any log, however it contradicts itself, and never of more than the route', () => {
  fc.assert(
    fc.property(fc.array(logged, { maxLength: 4 }), (events) => {
      const lives = carLivesOf({ carId: 'car', events, carried: { pads: { stageMetres: 7 } } }, QUESTIONS);
      for (const { counted } of lives.events) {
        expect(counted.stageMetres?.at(-1)).toBeLessThanOrEqual(ROUTE_METRES);
        expect(counted.stageMetres).toHaveLength(itinerary.points.length);
      }
      for (const question of QUESTIONS) {
        const exposures = exposuresOf([lives], [question]);
        for (const { from, to, goodTo } of exposures) {
          expect(to).toBeGreaterThanOrEqual(from);
          expect(goodTo).toBeLessThanOrEqual(to);
        }
        observationsOf(exposures);
        failuresOf(lives, question);
      }
    }),
    { numRuns: 2000 },
  );
});
