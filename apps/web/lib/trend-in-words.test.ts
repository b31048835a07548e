import { describe, expect, it } from 'vitest';
import { trendInWords } from './trend-in-words';

describe('a trend in words', () => {
  it('says which way it goes, or why nobody can say', () => {
    expect(trendInWords({ ok: false, reason: 'tooFewEvents' })).toBe('needs a second event');
    expect(trendInWords({ ok: false, reason: 'tooFewCounted' })).toBe('too few to tell');
    const trend = {
      ok: true as const,
      failures: 9,
      statistic: 2,
      pImproving: 0.9,
      pWorsening: 0.01,
      pEither: 0.02,
    };
    expect(trendInWords({ ...trend, direction: 'worsening' })).toBe('rising; unlikely to be chance');
    expect(trendInWords({ ...trend, direction: 'noTrend' })).toBe('no change beyond chance');
  });
});
