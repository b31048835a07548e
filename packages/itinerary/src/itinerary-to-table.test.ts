import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkItinerary } from './check-itinerary';
import { anyItinerary, goodItinerary, TWO_LEGS, VIENNA } from './fixtures';
import { itineraryToTable } from './itinerary-to-table';

describe('itineraryToTable', () => {
  it('writes the published columns', () => {
    const lines = itineraryToTable(goodItinerary(TWO_LEGS)).split('\n');
    expect(lines.slice(0, 4)).toEqual([
      'TC/SS\tLocation\tSS km\tRoad km\tTotal km\tTarget time\tFirst car due\tGap\tSection',
      'Leg 1, 2026-06-12',
      'TC0\tStart Lindach\t\t0.00\t0.00\t\t13:00\t\t1',
      'RZ1\tRefuel, distance to next refuel\t\t0.00\t0.00\t\t13:00\t\t1',
    ]);
  });

  it('reads back to the same itinerary, twice', () => {
    const once = goodItinerary(TWO_LEGS);
    const twice = goodItinerary(itineraryToTable(once));
    expect(twice).toEqual(once);
    expect(itineraryToTable(twice)).toBe(itineraryToTable(once));
  });

  it('reads back to an equal itinerary whatever the names, roles, zones, nights and clock changes', () => {
    fc.assert(
      fc.property(anyItinerary, (itinerary) => {
        expect(checkItinerary(itinerary).filter((problem) => problem.severity === 'error')).toEqual([]);
        const { timeZone, roadTimedFrom } = itinerary;
        const options = { timeZone, roadTimedFrom, startDate: VIENNA.startDate };
        expect(goodItinerary(itineraryToTable(itinerary), options)).toEqual(itinerary);
      }),
      { numRuns: 150 },
    );
  }, 60_000);

  it('does not change the itinerary', () => {
    const itinerary = goodItinerary(TWO_LEGS);
    const before = JSON.parse(JSON.stringify(itinerary)) as unknown;
    itineraryToTable(itinerary);
    expect(itinerary).toEqual(before);
  });
});
