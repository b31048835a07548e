import { describe, expect, it } from 'vitest';
import { readDuration, readGap, readIntervals, readKilometres, readWallClock } from './read-values';

describe('cells', () => {
  it.each([
    ['16.65', 16_650],
    ['16,65', 16_650],
    ['0', 0],
    ['-0', 0],
    ['7', 7000],
    ['1.2345', 1235],
    ['97.54 km', 97_540],
    ['-3.2', -3200],
    ['−3,2', -3200],
    ['0.29', 290],
    ['1,301.25', null],
    ['', null],
    ['abc', null],
    ['1.', null],
    ['12345678', null],
  ])('reads “%s” as metres', (cell, metres) => {
    expect(readKilometres(cell)).toBe(metres);
  });

  it.each([
    ['0:44', 2640],
    ['1:30', 5400],
    ['01:30:15', 5415],
    ['1h30', 5400],
    ['0:60', null],
    ['44', null],
    ['-0:30', null],
  ])('reads “%s” as a length of time', (cell, seconds) => {
    expect(readDuration(cell)).toBe(seconds);
  });

  it.each([
    ['3', 180],
    ['8 min', 480],
    ['0:03', 180],
    ['soon', null],
  ])('reads “%s” as a gap', (cell, seconds) => {
    expect(readGap(cell)).toBe(seconds);
  });

  it.each([
    ['8:13', { secondOfDay: 29_580, offsetSeconds: null }],
    ['08:13:30', { secondOfDay: 29_610, offsetSeconds: null }],
    ['02:30+01:00', { secondOfDay: 9000, offsetSeconds: 3600 }],
    ['02:30 -03:30', { secondOfDay: 9000, offsetSeconds: -12_600 }],
    ['24:00', null],
    ['08:60', null],
    ['8.13', null],
    ['02:30+19:00', null],
  ])('reads “%s” as a time of day', (cell, clock) => {
    expect(readWallClock(cell)).toEqual(clock);
  });

  it('reads start intervals', () => {
    expect(readIntervals('60')).toEqual([{ fromPosition: 1, intervalSeconds: 60 }]);
    expect(readIntervals('2 min, from 11: 60 s')).toEqual([
      { fromPosition: 1, intervalSeconds: 120 },
      { fromPosition: 11, intervalSeconds: 60 },
    ]);
    expect(['from 2: 60 s', '60 s, 30 s', 'fast', ''].map(readIntervals)).toEqual([null, null, null, null]);
  });
});
