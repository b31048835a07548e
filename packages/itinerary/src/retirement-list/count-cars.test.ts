import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from '../fixtures';
import { countCars } from './count-cars';
import { carRecords } from './fixtures';
import { readRetirementList } from './read-retirement-list';

const ITINERARY = goodItinerary(TWO_LEGS);

describe('countCars', () => {
  it('counts by hand', () => {
    const rows = [
      '1,finished',
      '2,out,in SS1,withdrawn',
      '3,out for the day,in SS1,time,,,3',
      '3,finished',
      '4,out for the day,after SS5,off road',
      '5,did not start',
      '6,',
    ];
    const text = `Car,What happened,Where,Cause,Part,Who says so,Back from section\n${rows.join('\n')}`;
    expect(countCars(readRetirementList(text, ITINERARY).records)).toEqual({
      starters: 5,
      finished: 2,
      out: 1,
      outForDay: 1,
      notKnown: 1,
      notStarted: 1,
      cameBack: 1,
      withdrawn: 1,
    });
  });

  it('has every starter in one of the four ends', () => {
    fc.assert(
      fc.property(carRecords(ITINERARY), (records) => {
        const { starters, finished, out, outForDay, notKnown, notStarted } = countCars(records);
        expect(finished + out + outForDay + notKnown).toBe(starters);
        expect(starters + notStarted).toBe(new Set(records.map(({ carNumber }) => carNumber)).size);
      }),
    );
  });
});
