import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from '../fixtures';
import type { ControlPass } from './model';
import { readTimeList } from './read-time-list';
import { timeListCells } from './time-list-cells';

const ITINERARY = goodItinerary(TWO_LEGS);
const HEAD = 'Car\tControl\tDue\tTime\tMinutes late';
const read = (...rows: string[]) => readTimeList([HEAD, ...rows].join('\n'), ITINERARY);
const toldOf = (...rows: string[]) =>
  read(...rows).problems.map(({ row, column, code }) => `${row} ${column} ${code}`);

describe('readTimeList', () => {
  it('reads clocks, minutes, and both where they agree', () => {
    const { passes, problems } = read(
      '7\tTC3\t15:11\t15:14',
      '7\ttc 4\t\t\t2',
      '8\tTC3\t15:12\t15:11:50\t-1',
      '9\tTC3\t\t15:20\t+6 min',
    );
    expect(problems).toEqual([]);
    expect(passes).toEqual([
      { carNumber: '7', controlId: 'TC3', lateMinutes: 3, atMinute: 914 },
      { carNumber: '7', controlId: 'TC4', lateMinutes: 2, atMinute: null },
      { carNumber: '8', controlId: 'TC3', lateMinutes: -1, atMinute: 911 },
      { carNumber: '9', controlId: 'TC3', lateMinutes: 6, atMinute: 920 },
    ]);
  });

  it('takes the nearer way past midnight', () => {
    const minutes = read('7\tTC3\t23:58\t00:03', '8\tTC3\t00:02\t23:59').passes.map(
      ({ lateMinutes }) => lateMinutes,
    );
    expect(minutes).toEqual([5, -3]);
  });

  it('reads a CSV file with other headings', () => {
    const text = '\uFEFFNumber,Time control,Scheduled,Actual\r\n7,TC3,15:11,15:14\r\n';
    expect(readTimeList(text, ITINERARY)).toEqual({
      passes: [{ carNumber: '7', controlId: 'TC3', lateMinutes: 3, atMinute: 914 }],
      problems: [],
    });
  });

  it.each([
    ['\tTC3\t\t\t1', ['2 1 car-missing']],
    ['7\t\t\t\t1', ['2 2 control-missing']],
    ['7\tSS3\t\t\t1', ['2 2 control-is-stage']],
    ['7\tTC99\t\t\t1', ['2 2 control-unknown']],
    ['7\tTC3\t25:00\t15:14', ['2 3 due-malformed']],
    ['7\tTC3\t15:11\tlunch', ['2 4 time-malformed']],
    ['7\tTC3\t\t\tlots', ['2 5 late-malformed']],
    ['7\tTC3\t\t\t1.5', ['2 5 late-malformed']],
    ['7\tTC3\t\t15:14', ['2 3 due-missing']],
    ['7\tTC3\t15:11', ['2 4 time-missing']],
    ['7\tTC3', ['2 5 late-missing']],
    ['7\tTC3\t15:11\t15:14\t5', ['2 5 late-disagrees']],
    ['7\tTC3\t\t\t1\n7\tTC4\t\t\t1\n7\tTC3\t\t\t2', ['4 null time-twice']],
  ])('tells of %j where it is wrong', (rows, told) => {
    expect(toldOf(rows)).toEqual(told);
  });

  it('says what to do in a sentence', () => {
    expect(read('7\tTC3\t\t15:14').problems[0]?.message).toBe(
      'Row 2 does not say when car 7 was due. Add the due time, or the minutes late.',
    );
  });

  it('reads what is right beside what is wrong, and tells of both cars', () => {
    const { passes, problems } = read('1\tTC3\t\t\t0', '2\tTC99\t\t\t0', '3\tTC3\t\t\tx');
    expect(passes.map(({ carNumber }) => carNumber)).toEqual(['1']);
    expect(problems.map(({ row }) => row)).toEqual([3, 4]);
  });

  it('reads back every list that is in order', () => {
    const controls = ITINERARY.points.filter(({ kind }) => kind === 'control').map(({ id }) => id);
    const pass: fc.Arbitrary<ControlPass> = fc.record({
      carNumber: fc.integer({ min: 1, max: 200 }).map(String),
      controlId: fc.constantFrom(...controls),
      lateMinutes: fc.integer({ min: -720, max: 720 }),
      atMinute: fc.option(fc.integer({ min: 0, max: 1439 })),
    });
    const lists = fc.uniqueArray(pass, {
      minLength: 1,
      selector: ({ carNumber, controlId }) => `${carNumber} ${controlId}`,
    });
    fc.assert(
      fc.property(lists, fc.constantFrom('\t', ';', ','), (passes, delimiter) => {
        const text = timeListCells(passes)
          .map((cells) => cells.join(delimiter))
          .join('\n');
        expect(readTimeList(text, ITINERARY)).toEqual({ passes, problems: [] });
      }),
    );
  });
});
