import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyItinerary, goodItinerary, TWO_LEGS } from './fixtures';
import type { StageRun } from './model';
import { routeCounters, routeMetresAt } from './route-counters';
import { segmentsBetween } from './route-segments';

const twoLegs = goodItinerary(TWO_LEGS);
const last = twoLegs.points.length - 1;
const indexOf = (id: string) => twoLegs.points.findIndex((point) => point.id === id);
const run = (stageId: string, driven: boolean): [string, StageRun] => [
  stageId,
  { stageId, driven, conditions: {} },
];

describe('routeCounters', () => {
  it('adds up the whole event as its printed totals do', () => {
    expect(routeCounters(twoLegs, 0, last, new Map())).toMatchObject({
      stages: 7,
      stageMetres: 80_650,
      totalMetres: 312_680,
      services: 4,
      days: 1,
      events: 0,
    });
  });

  it('counts engine time by the clock, without service, regroup, parc fermé and the night', () => {
    // Leg 1 by its printed clock: 13:00 to 17:49 less remote service 15, regroup 20 and service 45 minutes.
    const legOne = routeCounters(twoLegs, 0, indexOf('TC4D'), new Map());
    expect(legOne.engineSeconds).toBe((4 * 60 + 49 - 15 - 20 - 45) * 60);
    expect(routeCounters(twoLegs, indexOf('TC4D'), indexOf('TC4E'), new Map()).engineSeconds).toBe(0);
  });

  it('counts a stage only when the car passes beyond it', () => {
    expect(routeCounters(twoLegs, 0, indexOf('SS1'), new Map())).toMatchObject({
      stages: 0,
      stageMetres: 0,
      totalMetres: 24_300,
    });
    expect(routeCounters(twoLegs, indexOf('SS1'), indexOf('TC2'), new Map())).toMatchObject({
      stages: 1,
      stageMetres: 9800,
      totalMetres: 21_000,
    });
  });

  it('adds nothing for a stage that was not driven, but its road', () => {
    const runs = new Map([run('SS1', false), run('SS2', true)]);
    const way = [indexOf('SS1'), indexOf('TC2A')] as const;
    expect(routeCounters(twoLegs, ...way, runs)).toMatchObject({
      stages: 1,
      stageMetres: 7850,
      totalMetres: 11_200 + 7850 + 6600,
    });
  });

  it('counts services and days on arrival, not on departure', () => {
    const arrival = indexOf('TC4E');
    expect(routeCounters(twoLegs, arrival - 1, arrival, new Map())).toMatchObject({ services: 1, days: 1 });
    expect(routeCounters(twoLegs, arrival, arrival + 1, new Map())).toMatchObject({ services: 0, days: 0 });
  });

  it('is the sum of the segments of the way for any itinerary, any cut and any cancelled stages', () => {
    fc.assert(
      fc.property(
        anyItinerary,
        fc.nat(),
        fc.nat(),
        fc.func(fc.boolean()),
        (itinerary, one, other, isDriven) => {
          const [from = 0, to = 0] = [one, other]
            .map((cut) => cut % itinerary.points.length)
            .sort((a, b) => a - b);
          const stages = itinerary.points.filter((point) => point.kind === 'stage');
          const runs = new Map(stages.map((stage) => run(stage.id, isDriven(stage.id))));
          const driven = segmentsBetween(itinerary, from, to).filter(
            (one) => one.stageId === null || runs.get(one.stageId)?.driven,
          );
          const sum = (of: (segment: (typeof driven)[number]) => number) =>
            driven.reduce((total, segment) => total + of(segment), 0);
          expect(routeCounters(itinerary, from, to, runs)).toEqual({
            stages: sum((one) => (one.kind === 'stage' ? 1 : 0)),
            stageMetres: sum((one) => (one.kind === 'stage' ? one.metres : 0)),
            totalMetres: sum((one) => one.metres),
            services: sum((one) => Number(one.startsService)),
            days: sum((one) => Number(one.startsLeg)),
            events: 0,
            engineSeconds: sum((one) => (one.engineOn ? one.endsAt - one.startsAt : 0)),
          });
        },
      ),
      { numRuns: 100 },
    );
  }, 60_000);
});

describe('routeMetresAt', () => {
  it('is the way driven on arrival', () => {
    expect(routeMetresAt(twoLegs, 0)).toBe(0);
    expect(routeMetresAt(twoLegs, indexOf('SS1'))).toBe(24_300);
    expect(routeMetresAt(twoLegs, last)).toBe(312_680);
    expect(() => routeMetresAt(twoLegs, last + 1)).toThrow(/^routeMetresAt: /);
  });
});
