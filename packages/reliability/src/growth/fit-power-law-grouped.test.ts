import { describe, expect, it } from 'vitest';
import { answered, frozen, HANDBOOK_FAILURES, refused } from '../fixtures';
import { fitPowerLaw } from './fit-power-law';
import { fitPowerLawGrouped } from './fit-power-law-grouped';

describe('fitPowerLawGrouped', () => {
  it('gives the published example of failures counted in four test runs', () => {
    // Worked example "grouped data" in the Reliability Growth and Repairable System Analysis Reference, after Crow.
    const fit = answered(
      fitPowerLawGrouped(
        frozen([
          { end: 200, failures: 2 },
          { end: 400, failures: 1 },
          { end: 600, failures: 1 },
          { end: 3000, failures: 7 },
        ]),
      ),
    );
    expect(fit.maximumLikelihood.shape.toFixed(4)).toBe('0.6315');
    expect(fit.maximumLikelihood.rate.toFixed(4)).toBe('0.0701');
  });

  it('comes to the fit of the single events when the groups become small', () => {
    const width = 0.01;
    const groups = Array.from({ length: 30_000 }, (_, index) => ({ end: (index + 1) * width, failures: 0 }));
    for (const event of HANDBOOK_FAILURES) {
      const group = groups[Math.round(event / width) - 1];
      if (group) group.failures += 1;
    }
    const grouped = answered(fitPowerLawGrouped(groups));
    const single = answered(fitPowerLaw({ stoppedAt: 'distance', events: HANDBOOK_FAILURES, end: 300 }));
    expect(grouped.failures).toBe(27);
    expect(grouped.maximumLikelihood.shape).toBeCloseTo(single.maximumLikelihood.shape, 3);
    // Without groups the information on the shape is failures / shape squared.
    const halfWidth = Math.log(grouped.shapeBounds.high / grouped.maximumLikelihood.shape);
    expect(halfWidth).toBeCloseTo(1.959964 / Math.sqrt(27), 3);
  });

  it('is at the top of the likelihood of the counts', () => {
    const groups = [
      { end: 80, failures: 9 },
      { end: 150, failures: 0 },
      { end: 260, failures: 4 },
      { end: 400, failures: 3 },
    ];
    const { shape } = answered(fitPowerLawGrouped(groups)).maximumLikelihood;
    const likelihood = (at: number) =>
      groups.reduce((sum, { end, failures }, index) => {
        const from = (groups[index - 1]?.end ?? 0) / 400;
        return sum + failures * Math.log((end / 400) ** at - from ** at);
      }, 0);
    expect(likelihood(shape)).toBeGreaterThan(likelihood(shape * 1.001));
    expect(likelihood(shape)).toBeGreaterThan(likelihood(shape * 0.999));
  });

  it('does not depend on the unit of distance', () => {
    const groups = [
      { end: 10, failures: 3 },
      { end: 30, failures: 2 },
      { end: 100, failures: 1 },
    ];
    const inMiles = groups.map(({ end, failures }) => ({ end: end / 1.609344, failures }));
    const [one, other] = [answered(fitPowerLawGrouped(groups)), answered(fitPowerLawGrouped(inMiles))];
    expect(other.maximumLikelihood.shape).toBeCloseTo(one.maximumLikelihood.shape, 10);
    expect(other.growth.distanceNow * 1.609344).toBeCloseTo(one.growth.distanceNow, 8);
  });

  it('refuses what cannot be read', () => {
    expect(refused(fitPowerLawGrouped([])).reason).toBe('tooFewGroups');
    expect(refused(fitPowerLawGrouped([{ end: 10, failures: 9 }])).reason).toBe('tooFewGroups');
    const pair = (first: number, second: number) =>
      fitPowerLawGrouped([
        { end: 10, failures: first },
        { end: 20, failures: second },
      ]);
    expect(refused(pair(1, 1)).reason).toBe('tooFewFailures');
    expect(refused(pair(9, 0)).reason).toBe('noSpread');
    expect(refused(pair(0, 9)).reason).toBe('noSpread');
  });

  it('throws on nonsense', () => {
    expect(() => fitPowerLawGrouped([{ end: 10, failures: 1.5 }])).toThrow('failures must be a whole number');
    const back = [
      { end: 10, failures: 1 },
      { end: 10, failures: 1 },
    ];
    expect(() => fitPowerLawGrouped(back)).toThrow(
      'fitPowerLawGrouped: a group must end after 10, not at 10.',
    );
  });
});
