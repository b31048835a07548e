import { describe, expect, it } from 'vitest';
import { formatClock, formatDay, formatKilometres } from './format';

const AT = Date.parse('2026-06-13T06:13:59Z') / 1000;

describe('for screens', () => {
  it('shows the time and day of the event, not of the machine, and cuts seconds', () => {
    expect(formatClock(AT, 'Europe/Vienna')).toBe('08:13');
    expect(formatClock(AT, 'Asia/Kathmandu')).toBe('11:58');
    expect(formatDay(AT, 'Europe/Vienna')).toBe('Sat 13 Jun 2026');
    expect(formatDay(AT, 'America/Los_Angeles')).toBe('Fri 12 Jun 2026');
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
