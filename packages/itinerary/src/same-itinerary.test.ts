import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from './fixtures';
import { sameItinerary } from './same-itinerary';

const itinerary = goodItinerary(TWO_LEGS);

describe('sameItinerary', () => {
  it('looks past the order of keys', () => {
    const { points, ...rest } = itinerary;
    const turned = points.map((point) => Object.fromEntries(Object.entries(point).reverse()) as typeof point);
    expect(sameItinerary(itinerary, { points: turned, ...rest })).toBe(true);
  });

  it.each([
    ['a point less', { ...itinerary, points: itinerary.points.slice(1) }],
    ['another zone', { ...itinerary, timeZone: 'Europe/London' }],
    [
      'another minute',
      {
        ...itinerary,
        points: itinerary.points.map((point) => ({ ...point, firstCarAt: point.firstCarAt + 60 })),
      },
    ],
    ['another interval', { ...itinerary, startBlocks: [] }],
  ])('sees %s', (_what, changed) => {
    expect(sameItinerary(itinerary, changed)).toBe(false);
    expect(sameItinerary(changed, itinerary)).toBe(false);
  });
});
