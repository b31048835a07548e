import { servicesOf } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { cardWith, eventOf, threeLoops } from './fixtures';
import type { WearQuestion } from './questions';
import { wearBetween } from './wear-between';

const NEW = { pointIndex: null, carried: {} };

function question(own: Partial<WearQuestion>): WearQuestion {
  return {
    ...threeLoops(),
    runs: new Map(),
    plannedConditions: new Map(),
    card: cardWith(),
    lastDone: NEW,
    toIndex: 0,
    ...own,
  };
}

// Points of a loop: 0 in, 1 out, 2 time control, 3 SS1, 4 time control, 5 SS2, 6 in, …
describe('wearBetween', () => {
  it('uses the services the itinerary itself finds', () => {
    const { itinerary, services } = threeLoops();
    expect(servicesOf(itinerary)).toEqual(services);
  });

  it('counts a loop on every counter', () => {
    expect(wearBetween(question({ toIndex: 6 }))).toEqual({
      stages: 2,
      stageMetres: 24_000,
      totalMetres: 54_000,
      // 54 minutes from service out to service in: 30 km of road, 18 min of stages, two gaps of 3 min
      engineSeconds: 54 * 60,
      services: 2,
      days: 1,
      events: 0,
    });
  });

  it('counts from the service the card was done in, that arrival not included', () => {
    const wear = wearBetween(question({ lastDone: { pointIndex: 6, carried: null }, toIndex: 12 }));
    expect(wear).toMatchObject({ stages: 2, stageMetres: 24_000, services: 1, days: 0 });
    const here = wearBetween(question({ lastDone: { pointIndex: 6, carried: null }, toIndex: 6 }));
    expect(Object.values(here).every((amount) => amount === 0)).toBe(true);
  });

  it('adds what was carried, conditions included', () => {
    const carried = { stageMetres: 12_345, events: 3 };
    const wear = wearBetween(question({ lastDone: { pointIndex: null, carried }, toIndex: 4 }));
    expect(wear).toMatchObject({ stageMetres: 28_345, events: 3 });
  });

  it('multiplies what happens on stages by the conditions, never the road, services or days', () => {
    const wear = wearBetween(
      question({
        card: cardWith({ conditionFactors: { dust: 2000 } }),
        plannedConditions: new Map([['SS1', { dust: 500 }]]),
        toIndex: 6,
      }),
    );
    expect(wear).toEqual({
      // 1.5 + 1 stages, cut
      stages: 2,
      stageMetres: 24_000 + 8_000,
      totalMetres: 30_000 + 24_000 + 8_000,
      // SS1 takes 12 min of the 54
      engineSeconds: 54 * 60 + 6 * 60,
      services: 2,
      days: 1,
      events: 0,
    });
  });

  it('believes the crew before the plan', () => {
    const card = cardWith({ conditionFactors: { dust: 2000 } });
    const plannedConditions = new Map([
      ['SS1', { dust: 1000 }],
      ['SS2', { dust: 1000 }],
    ]);
    const runs = new Map([['SS1', { stageId: 'SS1', driven: true, conditions: {} }]]);
    const wear = wearBetween(question({ card, plannedConditions, runs, toIndex: 6 }));
    expect(wear.stageMetres).toBe(16_000 + 2 * 8_000);
  });

  it('adds nothing for a stage that was not driven, but its road and its service', () => {
    const runs = new Map([['SS1', { stageId: 'SS1', driven: false, conditions: { dust: 1000 } }]]);
    const wear = wearBetween(question({ runs, toIndex: 6 }));
    expect(wear).toEqual({
      stages: 1,
      stageMetres: 8_000,
      totalMetres: 38_000,
      engineSeconds: 54 * 60 - 12 * 60,
      services: 2,
      days: 1,
      events: 0,
    });
  });

  it('counts a day for each leg that starts', () => {
    const event = eventOf([
      { service: 20 },
      { stage: 'SS1', metres: 5_000, road: 1_000 },
      { service: 30, road: 1_000 },
      { overnight: true },
      { service: 20 },
      { finish: true, road: 1_000 },
    ]);
    const lastDone = { pointIndex: 0, carried: null };
    expect(wearBetween(question({ ...event, lastDone, toIndex: 4 })).days).toBe(0);
    expect(wearBetween(question({ ...event, lastDone, toIndex: 6 })).days).toBe(1);
    expect(wearBetween(question({ ...event, toIndex: 6 })).days).toBe(2);
  });

  it('counts only the services where the card can be done', () => {
    const event = eventOf([
      { service: 20 },
      { service: 10, road: 5_000 },
      { service: 20, remote: true, road: 5_000 },
      { service: 20, road: 5_000 },
      { finish: true },
    ]);
    const lastDone = { pointIndex: 0, carried: null };
    const card = cardWith({ leastServiceSeconds: 900, remoteAllowed: false });
    expect(wearBetween(question({ ...event, card, lastDone, toIndex: 6 })).services).toBe(1);
    expect(wearBetween(question({ ...event, lastDone, toIndex: 6 })).services).toBe(3);
  });

  it('refuses a way that is none', () => {
    expect(() => wearBetween(question({ toIndex: 999 }))).toThrow(/wearBetween: there is no point 999/);
    expect(() => wearBetween(question({ toIndex: 0, lastDone: { pointIndex: 6, carried: null } }))).toThrow(
      /wearBetween: the card was last done at point 6, after point 0/,
    );
    expect(() => wearBetween(question({ lastDone: { pointIndex: null, carried: { stages: -1 } } }))).toThrow(
      /wearBetween: the carried amount of stages/,
    );
  });
});
