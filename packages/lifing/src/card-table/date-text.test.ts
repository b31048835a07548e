import { describe, expect, it } from 'vitest';
import { readDate, writeDate } from './date-text';

const DAY = 86_400;

describe('dates of a table', () => {
  // Instants of well-known days, as POSIX counts them: 00:00 UTC, leap seconds left out.
  it.each([
    ['1970-01-01', 0],
    ['2000-02-29', 951_782_400],
    ['2000-03-01', 951_868_800],
    ['2027-03-31', 1_806_451_200],
    ['2100-01-01', 4_102_444_800],
  ])('%s is %i', (text, seconds) => {
    expect(readDate(text)).toBe(seconds);
    expect(writeDate(seconds)).toBe(text);
  });

  it('gives every day from 1970 to 2100 back, each the day after the one before', () => {
    const days = Array.from({ length: 47_482 + 1 }, (_, index) => writeDate(index * DAY));
    expect(days.at(-1)).toBe('2100-01-01');
    expect([...days].sort()).toEqual(days);
    expect(new Set(days).size).toBe(days.length);
    expect(days.map(readDate)).toEqual(days.map((_, index) => index * DAY));
  });

  it('reads dots, and a time of day', () => {
    expect(readDate('31.3.2027')).toBe(1_806_451_200);
    expect(readDate('2027-03-31 14:05')).toBe(1_806_451_200 + 50_700);
    expect(writeDate(1_806_451_200 + 50_707)).toBe('2027-03-31 14:05:07');
  });

  it.each([
    '2027-02-29',
    '2100-02-29',
    '2027-13-01',
    '2027-00-10',
    '2027-04-31',
    '2027-04-00',
    '31/03/2027',
    '2027-03-31 24:00',
    'soon',
    '',
  ])('finds no date in “%s”', (text) => expect(readDate(text)).toBeNull());
});
