import { describe, expect, it } from 'vitest';
import { ratioQuantile } from '../fit/ratio-quantile';
import { adviseLimit } from './advise-limit';

/** NIST/SEMATECH e-Handbook 8.4.1.3: ten of twenty units failed by 500 h. */
const NIST = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386];
const lives = [
  ...NIST.map((distance) => ({ kind: 'failedAt' as const, distance })),
  ...Array.from({ length: 10 }, () => ({ kind: 'goodAt' as const, distance: 500 })),
];

describe('adviseLimit', () => {
  it('gives the distance by which one in ten has failed, with its bounds', () => {
    // The distance as fittedQuantile gives it for these lives, checked there against R's survreg; its bounds are those of
    // ratioQuantile, checked there against a net of all likelihoods.
    const advice = adviseLimit(lives);
    expect(advice).toMatchObject({ ok: true, failedShare: 0.1 });
    if (!advice.ok) throw new Error(advice.says);
    expect(advice.distance).toBeCloseTo(164.022439, 4);
    expect(advice.bounds).toEqual(ratioQuantile(lives, advice.fit, 0.1).bounds);
  });

  it('says whether the lives show wear, by the bounds of the shape', () => {
    const steep = [90, 95, 100, 105, 110, 115].map((distance) => ({ kind: 'failedAt' as const, distance }));
    expect(adviseLimit(steep)).toMatchObject({ ok: true, wears: true });
    const few = [20, 60, 100].map((distance) => ({ kind: 'failedAt' as const, distance }));
    expect(adviseLimit(few)).toMatchObject({ ok: true, wears: false });
  });

  it('refuses what fails young or by chance, and too few failures', () => {
    const young = [1, 2, 40, 300, 900].map((distance) => ({ kind: 'failedAt' as const, distance }));
    expect(adviseLimit(young)).toMatchObject({ ok: false, reason: 'notByWear' });
    expect(adviseLimit(lives.slice(0, 2))).toMatchObject({ ok: false, reason: 'tooFewFailures' });
    expect(adviseLimit([])).toMatchObject({ ok: false, reason: 'tooFewFailures' });
  });
});
