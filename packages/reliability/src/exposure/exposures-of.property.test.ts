import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { failuresOf } from './car-failures';
import type { CarHistory, PartRecord, WatchedEvent } from './car-history';
import { exposuresOf } from './exposures-of';
import { inLine } from './fixtures';
import { historiesByCard } from './histories-by-card';
import { SEASON_PARTS, scriptSeason } from './scripted-season/fixtures';
import { watchCar } from './watch-car';

const someSeason = fc.integer({ min: 0, max: 1_000_000 }).map((seed) => scriptSeason(seed, 'car 12').history);

const someRecord: fc.Arbitrary<PartRecord> = fc
  .record({
    cardId: fc.constantFrom('pads', 'belt', 'filter'),
    position: fc.constantFrom(null, 'FL', 'FR', 'RL', 'RR', 'nowhere'),
    point: fc.nat({ max: 30 }),
    kind: fc.constantFrom('closed', 'broke', 'fitted', 'madeGood', 'modified', 'out'),
    grade: fc.constantFrom('ok', 'watch', 'needsWork', 'temporaryRepair'),
    flag: fc.boolean(),
  })
  .map(({ cardId, position, point, kind, grade, flag }): PartRecord => {
    const place = { cardId, position, point };
    const where = flag ? 'here' : 'sinceLastPoint';
    switch (kind) {
      case 'closed':
        return { kind, cardId, point, findings: [{ position, grade, ...(flag ? { newPart: true } : {}) }] };
      case 'broke':
        return { kind, ...place, where };
      case 'fitted':
        return { kind, ...place, because: flag ? 'broken' : null };
      case 'modified':
        return { kind, ...place, newPart: flag };
      case 'out':
        return { kind, ...place, cause: flag ? 'it broke' : null, where };
      default:
        return { kind, ...place };
    }
  });

/** A season of anything, the car standing still once it is out. */
const anySeason = fc
  .array(
    fc.record({
      steps: fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 10 }),
      records: fc.array(someRecord, { maxLength: 12 }),
      finished: fc.boolean(),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((events): CarHistory => {
    const carried = [{ cardId: 'pads', position: 'FL', age: { stageMetres: 0 } }];
    return { carId: 'car 12', ranBefore: {}, carried, events: events.map(anyEvent) };
  });

function anyEvent(
  { steps, records, finished }: { steps: number[]; records: PartRecord[]; finished: boolean },
  index: number,
): WatchedEvent {
  const placed = records.map((record) => ({ ...record, point: record.point % steps.length }));
  const outAt = Math.min(...placed.filter(({ kind }) => kind === 'out').map(({ point }) => point));
  let ran = 0;
  const stageMetres = steps.map((step, point) => {
    if (point > 0 && !(point > outAt)) ran += step;
    return ran;
  });
  return { eventId: `event ${index}`, finished, counted: { stageMetres }, records: placed };
}

/** One event told as two: the second begins where the first ends. What a crew wrote at that point stays in the first. */
function split(event: WatchedEvent, at: number): WatchedEvent[] {
  const amounts = event.counted.stageMetres ?? [];
  const point = at % amounts.length;
  const ran = amounts[point] ?? 0;
  const early = event.records.filter((record) => record.point <= point);
  const late = event.records.filter((record) => record.point > point);
  const counted = [
    { stageMetres: amounts.slice(0, point + 1) },
    { stageMetres: amounts.slice(point).map((amount) => amount - ran) },
  ] as const;
  return [
    { ...event, finished: true, counted: counted[0], records: early },
    {
      ...event,
      eventId: `${event.eventId}, continued`,
      counted: counted[1],
      records: late.map((record) => ({ ...record, point: record.point - point })),
    },
  ];
}

/** The new part of a finding as a record of its own, where the finding says which it was and leaves no patch. */
function apart(record: PartRecord): PartRecord[] {
  if (record.kind !== 'closed') return [record];
  const part = SEASON_PARTS.find(({ cardId }) => cardId === record.cardId);
  if (!part || part.doneRenews) return [record];
  const { cardId, point } = record;
  const fitted = record.findings.flatMap(({ position, grade, newPart }): PartRecord[] => {
    const isSaid =
      newPart && grade !== 'temporaryRepair' && (position !== null || part.positions.length === 0);
    return isSaid ? [{ kind: 'fitted', cardId, position, point, because: null }] : [];
  });
  return [{ ...record, findings: record.findings.map(({ newPart: _, ...found }) => found) }, ...fitted];
}

function tell(history: CarHistory) {
  return {
    lines: exposuresOf([history], SEASON_PARTS).map(inLine),
    seen: SEASON_PARTS.map((question) => failuresOf(history, question).map(({ at }) => at)),
  };
}

describe('exposuresOf', () => {
  it.each([
    ['a scripted season', someSeason],
    ['a season of anything', anySeason],
  ])('tells the same of %s, however it is split into events', (_, season) => {
    fc.assert(
      fc.property(season, fc.array(fc.option(fc.nat()), { minLength: 6, maxLength: 6 }), (history, cuts) => {
        const events = history.events.flatMap((event, index) => {
          const at = cuts[index] ?? null;
          return at === null ? [event] : split(event, at);
        });
        expect(tell({ ...history, events })).toEqual(tell(history));
      }),
    );
  });

  it('is what it was before when an entry is taken back', () => {
    fc.assert(
      fc.property(anySeason, someRecord, fc.nat(), fc.nat(), (history, record, which, where) => {
        const events = history.events.map((event, index) => {
          if (index !== which % history.events.length) return event;
          const point = record.point % (event.counted.stageMetres?.length ?? 1);
          const records = event.records.toSpliced(where % (event.records.length + 1), 0, {
            ...record,
            point,
            withdrawn: true,
          });
          return { ...event, records };
        });
        expect(tell({ ...history, events })).toEqual(tell(history));
      }),
    );
  });

  it('never watches one place twice over the same way, nor more than was driven', () => {
    fc.assert(
      fc.property(anySeason, (history) => {
        const total = history.events.reduce(
          (sum, { counted }) => sum + (counted.stageMetres?.at(-1) ?? 0),
          0,
        );
        const last = new Map<string, number>();
        for (const { cardId, position, from, to, goodTo, ending, entryAge } of exposuresOf(
          [history],
          SEASON_PARTS,
        )) {
          const place = `${cardId} ${position}`;
          expect(from).toBeGreaterThanOrEqual(last.get(place) ?? 0);
          expect(to).toBeGreaterThanOrEqual(ending === 'failed' ? from : from + 1);
          expect(goodTo).toBeLessThanOrEqual(to);
          expect(to).toBeLessThanOrEqual(total);
          if (entryAge !== null) expect(entryAge).toBeGreaterThanOrEqual(0);
          last.set(place, to);
        }
      }),
    );
  });

  it('tells of a new part said with a finding what it tells of one fitted right behind it', () => {
    fc.assert(
      fc.property(anySeason, (history) => {
        const events = history.events.map((event) => ({ ...event, records: event.records.flatMap(apart) }));
        expect(tell({ ...history, events })).toEqual(tell(history));
      }),
    );
  });

  it('counts no fewer failures for the car than lives ended as failed', () => {
    fc.assert(
      fc.property(anySeason, (history) => {
        for (const question of SEASON_PARTS) {
          const failed = exposuresOf([history], [question]).filter(({ ending }) => ending === 'failed');
          const seen = failuresOf(history, question);
          expect(seen.length).toBeGreaterThanOrEqual(failed.length);
          const single = question.positions.length === 0;
          if (single) expect(seen.map(({ at }) => at)).toEqual(failed.map(({ to }) => to));
        }
      }),
    );
  });

  it('gives each car its own: the order of cars changes nothing', () => {
    fc.assert(
      fc.property(anySeason, anySeason, (one, other) => {
        const both = exposuresOf(
          [
            { ...one, carId: 'one' },
            { ...other, carId: 'other' },
          ],
          SEASON_PARTS,
        );
        const alone = [one, other].flatMap((history) => exposuresOf([history], SEASON_PARTS));
        expect(both.map(inLine)).toEqual(alone.map(inLine));
      }),
    );
  });
});

describe('a history cut by card', () => {
  const parts = SEASON_PARTS.flatMap((part) => [part, { ...part, shows: 'atOnce' as const }]);

  it('gives the same failures and exposures as the whole', () => {
    fc.assert(
      fc.property(fc.oneof(someSeason, anySeason), (car) => {
        const historyOf = historiesByCard(car);
        for (const part of parts) {
          const [cut, whole] = [historyOf(part.cardId), watchCar(car, part)];
          expect(failuresOf(cut, part)).toEqual(whole.failures);
          const inOrder = [...whole.places.keys()].flatMap((place) =>
            whole.exposures.filter(({ position }) => position === place),
          );
          expect(exposuresOf([car], [part])).toEqual(inOrder);
        }
      }),
      { numRuns: 60 },
    );
  });
});
