import { describe, expect, it } from 'vitest';
import { causeInWords } from './cause-words';
import {
  carsInWords,
  growthInWords,
  noneInWords,
  partsInWords,
  rangeInWords,
  rateInWords,
  shareInWords,
} from './figures-in-words';

const rate = (
  stops: number,
  perThousand: { rate: number; bounds: { low: number; high: number } } | null,
) => ({
  stops,
  unsure: 0,
  perThousand,
});

describe('rates in words', () => {
  it.each([
    [rate(3, { rate: 2.46, bounds: { low: 0.51, high: 7.2 } }), '2.5', '0.5 to 7.2'],
    [rate(0, { rate: 0, bounds: { low: 0, high: 1.84 } }), '0.0', 'at most 1.8'],
    [rate(1, { rate: 1.02, bounds: { low: 0.03, high: 5.7 } }), '1.0', 'at most 5.7'],
    [rate(1, null), '–', 'nothing driven'],
  ])('of %j', (one, number, range) => {
    expect([rateInWords(one), rangeInWords(one)]).toEqual([number, range]);
  });
});

describe('noneInWords', () => {
  it('names what stopped nobody, with what it may be', () => {
    const none = rate(0, { rate: 0, bounds: { low: 0, high: 1.64 } });
    const rows = [
      { name: 'Off road', rate: none },
      { name: 'Time', rate: none },
    ];
    expect(noneInWords(rows)).toBe('No stop by off road, time: each at most 1.6.');
    expect(noneInWords(rows.slice(1))).toBe('No stop by time: at most 1.6.');
    expect(noneInWords([{ name: 'Time', rate: rate(0, null) }])).toBe('No stop by time.');
  });
});

describe('growthInWords', () => {
  const grown = (direction: 'improving' | 'worsening' | 'noTrend', rateNow: number | null) =>
    growthInWords({ ok: true, direction, failures: 9, rateSoFar: 0.003, rateNow });
  it('says which way, how sure, or why not', () => {
    expect(grown('improving', 0.0012)).toBe('falling: 1.2 lately; unlikely to be chance');
    expect(grown('worsening', null)).toBe('rising; unlikely to be chance');
    expect(grown('noTrend', 0.003)).toBe('no change beyond chance');
    expect(growthInWords({ ok: false, reason: 'tooFewEvents', says: '' })).toBe('needs a second event');
    expect(growthInWords({ ok: false, reason: 'tooFewFailures', says: '' })).toBe('too few to tell');
  });
});

describe('shares, parts, cars and causes in words', () => {
  it('says shares with their range', () => {
    expect(shareInWords({ cause: 'time', share: 0.121, bounds: { low: 0.04, high: 0.288 } })).toBe(
      '12 % (4 to 29)',
    );
    expect(shareInWords({ cause: 'time', share: 1, bounds: null })).toBe('100 %');
    expect(shareInWords({ cause: 'time', share: 0, bounds: null })).toBe('0');
  });

  it('names the parts', () => {
    expect(
      partsInWords([
        { part: 'gearbox', count: 3 },
        { part: '', count: 2 },
      ]),
    ).toBe('gearbox 3, not said 2');
  });

  it('tells what became of the cars', () => {
    const none = {
      starters: 0,
      finished: 0,
      out: 0,
      outForDay: 0,
      notKnown: 0,
      notStarted: 0,
      cameBack: 0,
      withdrawn: 0,
    };
    expect(carsInWords({ ...none, notStarted: 1 })).toEqual(['No car started.', '1 car did not start.']);
    expect(carsInWords({ ...none, starters: 4, finished: 2, out: 1, notKnown: 1, cameBack: 2 })).toEqual([
      '4 cars started: 2 finished, 1 out, 1 not known yet.',
      '2 cars came back after being out for the day.',
    ]);
  });

  it('names the causes', () => {
    expect(causeInWords('offRoad')).toBe('Off road');
  });
});
