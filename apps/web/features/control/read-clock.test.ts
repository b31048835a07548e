import { formatClock } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { readClock } from './read-clock';

const at = (iso: string) => Date.parse(iso) / 1000;

describe('readClock', () => {
  it('takes hours and minutes as people type them, to the minute', () => {
    const due = at('2026-06-13T11:33:30Z');
    for (const text of ['11:41', '1141', ' 11.41 ', '11 41', '11h41']) {
      expect(readClock(text, due, 'UTC'), text).toBe(at('2026-06-13T11:41:00Z'));
    }
    expect(readClock('9:05', due, 'UTC')).toBe(at('2026-06-13T09:05:00Z'));
  });

  it('means the day nearest to the due time', () => {
    expect(readClock('0:04', at('2026-06-13T23:55:00Z'), 'UTC')).toBe(at('2026-06-14T00:04:00Z'));
    expect(readClock('23:58', at('2026-06-14T00:01:00Z'), 'UTC')).toBe(at('2026-06-13T23:58:00Z'));
  });

  it('reads the clock of the event’s zone', () => {
    expect(readClock('12:41', at('2026-06-13T11:33:00Z'), 'Europe/London')).toBe(at('2026-06-13T11:41:00Z'));
  });

  it('finds the time of day across a change of the clocks, and none in the hour left out', () => {
    // Europe/Vienna goes from 02:00 to 03:00 on 29 March 2026 at 01:00 UTC.
    const due = at('2026-03-29T00:50:00Z');
    const read = readClock('3:05', due, 'Europe/Vienna');
    expect(read).toBe(at('2026-03-29T01:05:00Z'));
    expect(formatClock(read ?? 0, 'Europe/Vienna')).toBe('03:05');
    expect(readClock('2:30', due, 'Europe/Vienna')).toBeNull();
  });

  it('is null for what is no time of day', () => {
    for (const text of ['', '25:00', '11:60', 'eleven', '11:4', '111:30'])
      expect(readClock(text, 0, 'UTC'), text).toBeNull();
  });
});
