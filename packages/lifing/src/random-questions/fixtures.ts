import type { Conditions, StageRun } from '@halfshaft/itinerary';
import fc from 'fast-check';
import { cardWith, eventOf, type Piece } from '../fixtures';
import type { Counter, Interval, LastDone, LifingCard } from '../model';
import type { CardQuestion } from '../questions';

/** For tests only: random events, cards and histories, small enough to be walked metre by metre. */

export const COUNTERS: readonly Counter[] = [
  'stages',
  'stageMetres',
  'totalMetres',
  'engineSeconds',
  'services',
  'days',
  'events',
];

interface Loop {
  minutes: number;
  remote: boolean;
  stages: { metres: number; road: number }[];
  overnight: boolean;
}

const loop: fc.Arbitrary<Loop> = fc.record({
  minutes: fc.constantFrom(10, 20, 30),
  remote: fc.boolean(),
  stages: fc.array(
    fc.record({ metres: fc.integer({ min: 1, max: 300 }), road: fc.integer({ min: 0, max: 200 }) }),
    {
      maxLength: 3,
      size: 'max',
    },
  ),
  overnight: fc.boolean(),
});

/** Stage names run through the event, so that a longer stage keeps its name. */
export function piecesOf(loops: readonly Loop[]): Piece[] {
  let stages = 0;
  const pieces = loops.flatMap(({ minutes, remote, stages: driven, overnight }, index): Piece[] => [
    { service: minutes, remote, road: index === 0 ? 0 : 50 },
    ...driven.map(({ metres, road }): Piece => {
      stages += 1;
      return { stage: `SS${stages}`, metres, road };
    }),
    ...(overnight ? [{ overnight: true as const }] : []),
  ]);
  return [...pieces, { finish: true, road: 80 }];
}

export const conditions: fc.Arbitrary<Conditions> = fc.record({
  dust: fc.integer({ min: 0, max: 1000 }),
  rough: fc.integer({ min: 0, max: 1000 }),
});

const interval: fc.Arbitrary<Interval> = fc
  .record({
    counter: fc.constantFrom(...COUNTERS, 'stageMetres' as const, 'totalMetres' as const),
    pieces: fc.integer({ min: 1, max: 5 }),
    amount: fc.integer({ min: 1, max: 1200 }),
    share: fc.integer({ min: 0, max: 6 }),
  })
  .map(({ counter, pieces, amount, share }) => {
    const inPieces = ['stages', 'services', 'days', 'events'].includes(counter);
    const every = inPieces ? pieces : amount;
    return { counter, every, tolerance: Math.floor((every * share) / 4) };
  });

export const card: fc.Arbitrary<LifingCard> = fc
  .record({
    intervals: fc.array(interval, { minLength: 1, maxLength: 2 }),
    dust: fc.integer({ min: 1000, max: 3500 }),
    rough: fc.integer({ min: 1000, max: 2500 }),
    combineConditions: fc.constantFrom('largest' as const, 'sum' as const),
    leastServiceSeconds: fc.constantFrom(0, 0, 0, 1200),
    remoteAllowed: fc.constantFrom(true, true, false),
    dueAt: fc.oneof(
      { weight: 5, arbitrary: fc.constant(null) },
      { weight: 1, arbitrary: fc.integer({ min: 25_000, max: 120_000 }) },
    ),
  })
  .map(({ dust, rough, dueAt, ...own }) =>
    cardWith({
      ...own,
      conditionFactors: { dust, rough },
      dateLimit: dueAt === null ? null : { dueAt },
    }),
  );

/** `loops` is kept beside the question so that a test can make the same event longer. */
export interface RandomQuestion {
  loops: Loop[];
  question: CardQuestion;
}

export const randomQuestion: fc.Arbitrary<RandomQuestion> = fc
  .record({
    loops: fc.array(loop, { minLength: 1, maxLength: 5, size: 'max' }),
    card,
    planned: fc.array(conditions, { minLength: 15, maxLength: 15 }),
    confirmed: fc.array(fc.option(fc.record({ driven: fc.boolean(), conditions }), { freq: 2 }), {
      minLength: 15,
      maxLength: 15,
    }),
    place: fc.nat(),
    before: fc.nat(),
    carried: fc.record({
      stageMetres: fc.integer({ min: 0, max: 500 }),
      stages: fc.integer({ min: 0, max: 2 }),
      services: fc.integer({ min: 0, max: 2 }),
      events: fc.integer({ min: 0, max: 2 }),
    }),
    doneInEvent: fc.constantFrom(true, false, false),
    position: fc.integer({ min: 1, max: 40 }),
  })
  .map(({ loops, planned, confirmed, place, before, carried, doneInEvent, ...own }) => {
    const event = eventOf(piecesOf(loops));
    const serviceIndex = place % event.services.length;
    const doneAt = event.services[Math.max(0, serviceIndex - (before % 4))]?.inIndex ?? 0;
    const lastDone: LastDone = doneInEvent
      ? { pointIndex: doneAt, carried: null }
      : { pointIndex: null, carried };
    const runs = new Map<string, StageRun>();
    confirmed.forEach((run, index) => {
      if (run !== null) runs.set(`SS${index + 1}`, { stageId: `SS${index + 1}`, ...run });
    });
    const plannedConditions = new Map(planned.map((each, index) => [`SS${index + 1}`, each]));
    return { loops, question: { ...event, ...own, runs, plannedConditions, serviceIndex, lastDone } };
  });
