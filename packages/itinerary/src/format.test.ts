import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatClock, formatDay, formatKilometres } from './format';
import { zoned } from './wall-clock';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const AT = Date.parse('2026-06-13T06:13:59Z') / 1000;

describe('for screens', () => {
  it('shows the time and day of the event, not of the machine, and cuts seconds', () => {
    expect(formatClock(AT, 'Europe/Vienna')).toBe('08:13');
    expect(formatClock(AT, 'Asia/Kathmandu')).toBe('11:58');
    expect(formatDay(AT, 'Europe/Vienna')).toBe('Sat 13 Jun 2026');
    expect(formatDay(AT, 'America/Los_Angeles')).toBe('Fri 12 Jun 2026');
  });

  it('says the same as Temporal (TC39 proposal, by its polyfill) in every zone of this runtime', () => {
    const zone = fc.constantFrom(...Intl.supportedValuesOf('timeZone'));
    const instant = fc.integer({ min: 0, max: Date.parse('2100-01-01T00:00:00Z') / 1000 });
    const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
    fc.assert(
      fc.property(instant, zone, (at, timeZone) => {
        const local = zoned(at, timeZone);
        expect(formatClock(at, timeZone)).toBe(local.toPlainTime().toString({ smallestUnit: 'minute' }));
        const [weekday, day, month, year] = formatDay(at, timeZone).split(' ');
        expect(weekday).toBe(weekdays[local.dayOfWeek - 1]);
        expect(`${year} ${month} ${day}`).toBe(`${local.year} ${MONTHS[local.month - 1]} ${local.day}`);
      }),
      { numRuns: 2000 },
    );
    expect(() => formatClock(AT, 'Europe/Nowhere')).toThrow(RangeError);
  });

  it('shows kilometres with two decimals', () => {
    expect([0, 5, 994, 12_340, 12_345, 1_301_250].map(formatKilometres)).toEqual([
      '0.00',
      '0.01',
      '0.99',
      '12.34',
      '12.35',
      '1301.25',
    ]);
    expect(() => formatKilometres(Number.NaN)).toThrow('formatKilometres: NaN is no distance');
  });
});
