import { describe, expect, it } from 'vitest';
import type { ReadingSpec } from '../job-card';
import { judgeConsumption } from './judge-consumption';
import { judgeReading } from './judge-reading';
import { axleOfPosition, wearGroup } from './wear-group';

function spec(own: Partial<ReadingSpec>): ReadingSpec {
  return {
    id: 'pads',
    name: 'Pads',
    kind: 'wear',
    unit: 'mm',
    decimals: 1,
    positions: ['FL', 'FR', 'RL', 'RR'],
    low: 30,
    high: null,
    required: false,
    ...own,
  };
}
const read = (values: Record<string, number>) =>
  Object.entries(values).map(([position, value]) => ({ position, value }));

describe('judgeReading', () => {
  it('wear: the thinnest rules', () => {
    expect(judgeReading(spec({}), read({ FL: 62, FR: 28, RL: 80, RR: 70 }))).toEqual({
      worstPosition: 'FR',
      worstValue: 28,
      state: 'low',
      counts: true,
      words: 'Pads FR: 2.8 mm, at least 3.0',
    });
  });

  it('wear: all above the limit is in order, and one on it too', () => {
    const judged = judgeReading(spec({}), read({ FL: 62, RR: 30 }));
    expect(judged).toMatchObject({ worstPosition: 'RR', state: 'inOrder', words: 'Pads RR: 3.0 mm' });
  });

  it('an upper limit: the largest rules', () => {
    const runOut = spec({ name: 'Run-out', kind: 'level', decimals: 2, low: null, high: 10 });
    const judged = judgeReading(runOut, read({ FL: 4, FR: 12, RL: 2 }));
    expect(judged).toMatchObject({
      worstPosition: 'FR',
      state: 'high',
      words: 'Run-out FR: 0.12 mm, at most 0.10',
    });
  });

  it('a set value: the one furthest out of its band rules, on whichever side', () => {
    const toe = spec({ name: 'Toe', kind: 'setValue', positions: ['front', 'rear'], low: -10, high: 10 });
    expect(judgeReading(toe, read({ front: 12, rear: -14 }))).toMatchObject({
      worstPosition: 'rear',
      state: 'low',
      words: 'Toe rear: -1.4 mm, at least -1.0',
    });
  });

  it('a set value without a band is in order whatever it is', () => {
    const pressure = spec({ name: 'Pressure', kind: 'setValue', unit: 'bar', decimals: 2, low: null });
    const judged = judgeReading(pressure, read({ FL: 210, FR: 195 }));
    expect(judged).toMatchObject({ worstPosition: 'FR', state: 'inOrder', words: 'Pressure FR: 1.95 bar' });
  });

  it('pass or fail: one that failed rules', () => {
    const free = spec({ name: 'Free of play', kind: 'passFail', unit: '', decimals: 0, low: 1 });
    expect(judgeReading(free, read({ FL: 1, FR: 0 }))).toMatchObject({
      worstPosition: 'FR',
      state: 'low',
      words: 'Free of play FR: failed',
    });
    expect(judgeReading(free, read({ FL: 1, FR: 1 }))).toMatchObject({ state: 'inOrder' });
  });

  it('a hint has a state and does not count', () => {
    const volts = spec({ name: 'Battery', kind: 'hint', unit: 'V', positions: [], low: 124 });
    expect(judgeReading(volts, [{ position: null, value: 122 }])).toEqual({
      worstPosition: null,
      worstValue: 122,
      state: 'low',
      counts: false,
      words: 'Battery: 12.2 V, at least 12.4 (a hint only)',
    });
  });

  it('equal places: the first of the reading; two values of a place: the later one', () => {
    expect(judgeReading(spec({}), read({ RR: 40, FL: 40 }))?.worstPosition).toBe('FL');
    const twice = [
      { position: 'FL', value: 20 },
      { position: 'FL', value: 50 },
    ];
    expect(judgeReading(spec({}), twice)).toMatchObject({ worstValue: 50, state: 'inOrder' });
  });

  it('nothing read: nothing said', () => {
    expect(judgeReading(spec({}), [])).toBeNull();
  });

  it('refuses a place it does not have, and a fraction', () => {
    expect(() => judgeReading(spec({}), read({ roof: 40 }))).toThrow('not read at roof');
    expect(() => judgeReading(spec({}), [{ position: null, value: 40 }])).toThrow('not read at no place');
    expect(() => judgeReading(spec({}), read({ FL: 4.5 }))).toThrow('whole number');
  });
});

describe('judgeConsumption', () => {
  const oil = { name: 'Oil added', unit: 'l', decimals: 1 };
  it('flags more than the limit on 100 stage km', () => {
    // 0.4 l on 48 stage km is 0.83 l on 100.
    expect(judgeConsumption({ spec: oil, added: 4, stageMetres: 48_000, limit: 5 })).toEqual({
      perHundredKilometres: 8,
      state: 'high',
      words: 'Oil added: 0.8 l on 100 stage km, at most 0.5',
    });
  });

  it('exactly the limit is in order, a trace more is not', () => {
    const judge = (stageMetres: number) =>
      judgeConsumption({ spec: oil, added: 2, stageMetres, limit: 5 }).state;
    expect(judge(40_000)).toBe('inOrder');
    expect(judge(39_999)).toBe('high');
  });

  it('does not judge a few km', () => {
    const judged = judgeConsumption({ spec: oil, added: 3, stageMetres: 8_000, limit: 5 });
    expect(judged).toMatchObject({ perHundredKilometres: null, state: 'tooEarly' });
    expect(judgeConsumption({ spec: oil, added: 3, stageMetres: 0, limit: 5 }).state).toBe('tooEarly');
  });

  it('refuses a negative amount', () => {
    expect(() => judgeConsumption({ spec: oil, added: -1, stageMetres: 1, limit: 5 })).toThrow('added');
  });
});

describe('wearGroup and axleOfPosition', () => {
  it('keeps axle, surface and compound apart', () => {
    const keys = (['front', 'rear'] as const).flatMap((axle) =>
      ['gravel', 'tarmac'].flatMap((surface) =>
        ['soft', 'hard'].map((compound) => wearGroup({ axle, surface, compound })),
      ),
    );
    expect(new Set(keys).size).toBe(8);
    const sly = wearGroup({ axle: 'front', surface: 'a|b', compound: 'c' });
    expect(sly).not.toBe(wearGroup({ axle: 'front', surface: 'a', compound: 'b|c' }));
  });

  it('knows the axle of a place', () => {
    expect(['FL', 'FR inner', 'RL', 'RR outer', 'front', 'roof'].map(axleOfPosition)).toEqual([
      'front',
      'front',
      'rear',
      'rear',
      null,
      null,
    ]);
  });
});
