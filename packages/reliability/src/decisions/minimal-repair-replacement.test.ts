import { describe, expect, it } from 'vitest';
import { relativeError } from '../fixtures';
import { minimalRepairReplacement } from './minimal-repair-replacement';

const QUESTION = { shape: 2.5, scale: 1000, plannedCost: 1, repairCost: 0.2 };

describe('minimalRepairReplacement', () => {
  it('finds the best distance of Barlow & Hunter 1960 (number computed with R)', () => {
    const advice = minimalRepairReplacement(QUESTION);
    if (advice.policy !== 'replaceAt') throw new Error('Expected a distance.');
    expect(relativeError(advice.distance, 1618.64458)).toBeLessThan(3e-9);
    const costAt = (distance: number) => (1 + 0.2 * (distance / 1000) ** 2.5) / distance;
    expect(advice.costPerDistance).toBeCloseTo(costAt(advice.distance), 12);
    expect(costAt(advice.distance * 1.01)).toBeGreaterThan(advice.costPerDistance);
    expect(costAt(advice.distance * 0.99)).toBeGreaterThan(advice.costPerDistance);
  });

  it('repairs for ever what does not wear, and throws on nonsense', () => {
    expect(minimalRepairReplacement({ ...QUESTION, shape: 1 })).toEqual({
      policy: 'repairOnly',
      because: 'doesNotWear',
    });
    expect(() => minimalRepairReplacement({ ...QUESTION, repairCost: 0 })).toThrow('repairCost must be');
  });
});
