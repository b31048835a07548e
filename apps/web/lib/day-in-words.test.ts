import { describe, expect, it } from 'vitest';
import { dayInWords } from './day-in-words';

describe('dayInWords', () => {
  it('tells the day as it stands, in no zone', () => {
    expect(dayInWords('2026-06-13')).toBe('Sat 13 Jun 2026');
    expect(dayInWords('2028-02-29')).toBe('Tue 29 Feb 2028');
  });

  it('throws for what is no day', () => {
    expect(() => dayInWords('soon')).toThrow();
  });
});
