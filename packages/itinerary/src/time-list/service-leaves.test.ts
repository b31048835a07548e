import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from '../fixtures';
import { readTimeList } from './read-time-list';
import { serviceLeaves } from './service-leaves';

// From the table: service A is TC2A to TC2B (15 min), B is TC4B to TC4C (45 min), C is TC4E to TC4F (15 min).
const ITINERARY = goodItinerary(TWO_LEGS);
const leavesOf = (...rows: string[]) => {
  const { passes, problems } = readTimeList(['Car,Control,Due,Time,Late', ...rows].join('\n'), ITINERARY);
  expect(problems).toEqual([]);
  return serviceLeaves(passes, ITINERARY);
};
const overOf = (...rows: string[]) =>
  leavesOf(...rows).map(({ lateMinutes, overMinutes }) => [lateMinutes, overMinutes]);

describe('serviceLeaves', () => {
  it('names cars by service in driving order, and passes over other controls', () => {
    expect(leavesOf('7,TC4C,,,3', '7,TC3,,,9', '8,TC2B,,,0')).toEqual([
      { carNumber: '8', serviceId: 'A', lateMinutes: 0, overMinutes: 0 },
      { carNumber: '7', serviceId: 'B', lateMinutes: 3, overMinutes: null },
    ]);
  });

  it.each([
    ['came in time and stayed 47 minutes of 45', ['7,TC4B,16:54,16:54', '7,TC4C,17:39,17:41'], [2, 2]],
    [
      'came 6 late, and its way out is timed from there',
      ['7,TC4B,16:54,17:00', '7,TC4C,17:45,17:45'],
      [0, 0],
    ],
    [
      'came 6 late, and its way out stands: nothing overran',
      ['7,TC4B,16:54,17:00', '7,TC4C,17:39,17:45'],
      [6, 0],
    ],
    ['came 6 late and overran by 3 more', ['7,TC4B,16:54,17:00', '7,TC4C,17:39,17:48'], [9, 3]],
    ['was let in 5 early and left 1 late', ['7,TC4B,16:54,16:49', '7,TC4C,17:39,17:40'], [1, 1]],
    ['left early', ['7,TC4B,16:54,16:54', '7,TC4C,17:39,17:38'], [-1, 0]],
    ['stayed past midnight', ['7,TC4B,23:40,23:40', '7,TC4C,00:25,00:29'], [4, 4]],
    ['came in time, minutes only', ['7,TC4B,,,0', '7,TC4C,,,4'], [4, 4]],
    ['came late, minutes only: nobody can say', ['7,TC4B,,,2', '7,TC4C,,,4'], [4, null]],
  ])('tells of a car that %s', (_, rows, told) => {
    expect(overOf(...rows)).toEqual([told]);
  });
});
