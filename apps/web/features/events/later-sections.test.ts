import { describe, expect, it } from 'vitest';
import { replicaOf } from '../work/fixtures';
import { laterSections, startInWords } from './later-sections';

const { itinerary } = replicaOf();
const long = {
  ...itinerary,
  points: [1, 2, 3].flatMap((section) => itinerary.points.map((point) => ({ ...point, section }))),
};

describe('where the order is set anew', () => {
  it('names the sections from the second one on', () => {
    expect(laterSections(long)).toEqual([2, 3]);
    expect(laterSections(itinerary)).toEqual([]);
  });

  it('says a position only where it changes', () => {
    const start = (positionsBySection: Record<string, number>) =>
      startInWords(long, { startPosition: 14, positionsBySection });
    expect(start({})).toBe('Start position 14');
    expect(start({ 2: 14, 3: 9 })).toBe('Start position 14, then 9 from Section 3 on');
    expect(start({ 2: 8, 3: 14 })).toBe(
      'Start position 14, then 8 from Section 2 on, then 14 from Section 3 on',
    );
  });

  it('is silent of a section the itinerary no longer has', () => {
    expect(startInWords(itinerary, { startPosition: 14, positionsBySection: { 3: 9 } })).toBe(
      'Start position 14',
    );
  });
});
