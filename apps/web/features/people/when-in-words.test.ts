import { describe, expect, it } from 'vitest';
import { whenInWords } from './when-in-words';

describe('whenInWords', () => {
  it('tells day and time in the zone asked for', () => {
    const millis = Date.UTC(2026, 5, 13, 22, 30, 59, 999);
    expect(whenInWords(millis, 'UTC')).toBe('Sat 13 Jun 2026, 22:30');
    expect(whenInWords(millis, 'Europe/Vienna')).toBe('Sun 14 Jun 2026, 00:30');
  });
});
