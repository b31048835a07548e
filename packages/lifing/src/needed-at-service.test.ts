import { describe, expect, it } from 'vitest';
import { cardWith, threeLoops } from './fixtures';
import type { Interval, LifingCard } from './model';
import { neededAtService } from './needed-at-service';

function card(id: string, counter: Interval['counter'], every: number, tolerance = 0): LifingCard {
  return cardWith({ id, seconds: 100, people: 2, intervals: [{ counter, every, tolerance }] });
}

function atService(serviceIndex: number, cards: LifingCard[]) {
  return neededAtService({
    ...threeLoops(),
    serviceIndex,
    position: 1,
    cards,
    lastDone: new Map(),
    runs: new Map(),
    plannedConditions: new Map(),
  });
}

describe('neededAtService', () => {
  it('counts what is due now and what may be done apart, people times seconds', () => {
    // 24 stage km a loop: at Service B 24 are driven and 48 will be at C.
    const cards = [card('now', 'stageMetres', 30_000), card('maybe', 'stageMetres', 45_000, 5_000)];
    expect(atService(1, cards)).toEqual({
      doNowPersonSeconds: 200,
      ifTimePersonSeconds: 200,
      doNowIds: ['now'],
      ifTimeIds: ['maybe'],
    });
  });

  it('takes what was due at an earlier service as done there', () => {
    const daily = card('daily', 'days', 1);
    expect(atService(0, [daily]).doNowIds).toEqual(['daily']);
    expect(atService(1, [daily]).doNowIds).toEqual([]);
  });

  it('does not take work that was only possible there as done', () => {
    // 48 at C is within 45 + 5; at C it is past.
    expect(atService(2, [card('maybe', 'stageMetres', 45_000, 5_000)]).doNowIds).toEqual(['maybe']);
  });

  it('leaves the history it was given as it was', () => {
    const lastDone = new Map([['daily', { pointIndex: null, carried: {} }]]);
    neededAtService({
      ...threeLoops(),
      serviceIndex: 2,
      position: 1,
      cards: [card('daily', 'days', 1)],
      lastDone,
      runs: new Map(),
      plannedConditions: new Map(),
    });
    expect([...lastDone]).toEqual([['daily', { pointIndex: null, carried: {} }]]);
  });
});
