import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from '../fixtures';
import { controlArrivals } from './control-arrivals';
import { readTimeList } from './read-time-list';

const ITINERARY = goodItinerary(TWO_LEGS);
const HEAD = 'Car,Control,Due,Time,Late';
const arrivalsOf = (rows: readonly string[], itinerary = ITINERARY) => {
  const { passes, problems } = readTimeList([HEAD, ...rows].join('\n'), itinerary);
  expect(problems).toEqual([]);
  return controlArrivals(passes, itinerary);
};
const toldOf = (rows: readonly string[], itinerary = ITINERARY) =>
  arrivalsOf(rows, itinerary).map(({ controlId, lateMinutes, lostMinutes, totalMinutes }) => [
    controlId,
    lateMinutes,
    lostMinutes,
    totalMinutes,
  ]);

// From the table: TC0 13:00, TC1 13:35, SS1 13:38, TC2 28 minutes after it, SS2 5 minutes after TC2, TC2A 20 after it.
const BY_TARGET = [
  '7,TC0,13:00,13:00',
  '7,TC1,13:35,13:39',
  '7,TC2,14:10,14:10',
  '7,TC2A,14:35,14:37',
  '7,TC2B,14:52,14:55',
  '7,TC3,15:20,15:20',
];
/** The same clocks, written against the timetable. */
const BY_TIMETABLE = [
  '7,TC0,13:00,13:00',
  '7,TC1,13:35,13:39',
  '7,TC2,14:06,14:10',
  '7,TC2A,14:31,14:37',
  '7,TC2B,14:46,14:55',
  '7,TC3,15:11,15:20',
];

describe('controlArrivals', () => {
  it('finds what was lost on each way and in all, where due times run from the control before', () => {
    expect(toldOf(BY_TARGET)).toEqual([
      ['TC0', 0, 0, 0],
      ['TC1', 4, 4, 4],
      ['TC2', 0, 0, 4],
      ['TC2A', 2, 2, 6],
      // Three minutes were lost in the service, which is told elsewhere but counts.
      ['TC3', 0, 0, 9],
    ]);
  });

  it('finds the same losses where the list reckons from the timetable', () => {
    expect(toldOf(BY_TIMETABLE)).toEqual([
      ['TC0', 0, 0, 0],
      ['TC1', 4, 4, 4],
      ['TC2', 4, 0, 4],
      ['TC2A', 6, 2, 6],
      ['TC3', 9, 0, 9],
    ]);
  });

  it('keeps what was lost in all when time is made up', () => {
    expect(toldOf(['7,TC0,13:00,13:06', '7,TC1,13:35,13:38', '7,TC2,14:06,14:06'])).toEqual([
      ['TC0', 6, 6, 6],
      ['TC1', 3, 0, 6],
      ['TC2', 0, 0, 6],
    ]);
  });

  it('starts anew where a regroup or a leg does', () => {
    const rows = [
      '7,TC4,15:42,15:50',
      // Car 7 came 10 late and stood 11 minutes of 20; its new due time is what it is late against.
      '7,TC4A,16:34,16:44',
      '7,TC4B,16:54,16:55',
      '7,TC4C,17:39,17:41',
      '7,TC4D,17:49,17:51',
      '7,TC4E,7:30,7:33',
    ];
    expect(toldOf(rows)).toEqual([
      ['TC4', 8, null, null],
      ['TC4A', 10, 2, null],
      ['TC4B', 1, 1, 1],
      ['TC4D', 2, 0, 2],
      ['TC4E', 3, 3, 3],
    ]);
  });

  it.each([
    ['a stage start was held back', ['7,TC1,13:35,13:35', '7,TC2,14:25,14:26'], 1],
    ['it came early', ['7,TC1,13:35,13:35', '7,TC2,14:06,14:04'], 0],
    ['it went past midnight', ['7,TC1,23:50,23:50', '7,TC2,0:21,0:25'], 4],
    ['only minutes are known, in time before', ['7,TC1,,,0', '7,TC2,,,3'], 3],
    ['only minutes are known, late before', ['7,TC1,,,2', '7,TC2,,,3'], null],
    ['the control before is missing', ['7,TC0,13:00,13:00', '7,TC2,14:06,14:09'], null],
    ['the control before is missing, but it was in time', ['7,TC0,13:00,13:00', '7,TC2,14:06,14:06'], 0],
  ])('tells the loss of a car when %s', (_, rows, lost) => {
    expect(arrivalsOf(rows).find(({ controlId }) => controlId === 'TC2')?.lostMinutes).toBe(lost);
  });

  it('tells only who was in time before where the road is timed from a stage’s finish', () => {
    const fromFinish = { ...ITINERARY, roadTimedFrom: 'stageFinish' as const };
    const rows = ['7,TC1,13:35,13:35', '7,TC2,14:10,14:12', '8,TC1,13:36,13:38', '8,TC2,14:12,14:14'];
    const lost = arrivalsOf(rows, fromFinish)
      .filter(({ controlId }) => controlId === 'TC2')
      .map(({ lostMinutes }) => lostMinutes);
    expect(lost).toEqual([2, null]);
  });

  it('goes in driving order, and passes over controls that are no more', () => {
    const gone = { carNumber: '7', controlId: 'TC99', lateMinutes: 3, atMinute: null };
    const { passes } = readTimeList(`${HEAD}\n7,TC3,,,1\n8,TC1,,,0\n7,TC1,,,0`, ITINERARY);
    expect(
      controlArrivals([gone, ...passes], ITINERARY).map(
        ({ carNumber, controlId }) => `${carNumber} ${controlId}`,
      ),
    ).toEqual(['7 TC1', '8 TC1', '7 TC3']);
  });

  it('gives back what each way cost, whichever way the list reckons its due times', () => {
    // A car at its start position's own times: leg 1 up to the first regroup, with a loss on each way.
    const ways = ['TC0', 'TC1', 'TC2', 'TC2A', 'TC2B', 'TC3', 'TC4', 'TC4A'];
    const planned = ways.map((id) => {
      const point = ITINERARY.points.find((one) => one.id === id);
      return ((point?.firstCarAt ?? 0) - (ITINERARY.points[0]?.firstCarAt ?? 0)) / 60 + 13 * 60;
    });
    const losses = fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(losses, fc.boolean(), (lost, byTarget) => {
        let behind = 0;
        const passes = ways.map((controlId, index) => {
          behind += lost[index] ?? 0;
          const lateMinutes = byTarget ? (lost[index] ?? 0) : behind;
          return { carNumber: '7', controlId, lateMinutes, atMinute: (planned[index] ?? 0) + behind };
        });
        const told = controlArrivals(passes, ITINERARY);
        const seen = ways.flatMap((controlId, index) =>
          controlId === 'TC2B' ? [] : [{ controlId, lost: lost[index] }],
        );
        expect(told.map(({ controlId, lostMinutes }) => ({ controlId, lost: lostMinutes }))).toEqual(seen);
        expect(told.at(-1)?.totalMinutes).toBe(behind);
      }),
    );
  });
});
