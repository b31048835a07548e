import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from '../fixtures';
import { drivenStretches } from './driven-stretches';
import { carRecords } from './fixtures';
import { readRetirementList } from './read-retirement-list';
import { stageMetresOf } from './stage-metres';

// By hand from the table: SS1 9.80, SS2 7.85, SS3 9.80, SS4 7.85 (35.30 km before Section 2); SS5 16.65, SS6 12.05,
// SS7 16.65 (80.65 km in all). Sections 1 and 2 meet at TC4B, Section 3 begins at TC4E, Section 4 at TC6B.
const ITINERARY = goodItinerary(TWO_LEGS);
const recordsOf = (rows: string) =>
  readRetirementList(`Car,What happened,Where,Cause,Part,Who says so,Back from section\n${rows}`, ITINERARY)
    .records;
const drivenBy = (rows: string) =>
  drivenStretches(recordsOf(rows), ITINERARY).stretches.map(({ fromMetres, toMetres }) => [
    fromMetres,
    toMetres,
  ]);

describe('drivenStretches', () => {
  it.each([
    ['a finisher: every stage', '7,finished', [[0, 80_650]]],
    ['after a stage: the whole of it', '7,out,after SS2,time', [[0, 17_650]]],
    ['in a stage: half of it', '7,out,in SS2,time', [[0, 13_725]]],
    ['after a control: the stages before it', '7,out,after TC3,time', [[0, 17_650]]],
    ['before the first stage: nothing', '7,out,after TC1,mechanical', [[0, 0]]],
    ['did not start: no stretch', '7,did not start', []],
    ['not known: no stretch', '7,', []],
    ['still running when seen last: up to there', '7,running,after SS2', [[0, 17_650]]],
    [
      'came back and finished',
      '7,out for the day,in SS1,time,,,3\n7,finished',
      [
        [0, 4_900],
        [35_300, 80_650],
      ],
    ],
    ['came back and nobody knows more', '7,out for the day,in SS1,time,,,3\n7,', [[0, 4_900]]],
    [
      'came back and stopped again',
      '7,out for the day,after SS5,time,,,4\n7,out,in SS7,other',
      [
        [0, 51_950],
        [64_000, 72_325],
      ],
    ],
    ['out for the day and not back', '7,out for the day,after SS1,time', [[0, 9_800]]],
  ])('of %s', (_, rows, driven) => {
    expect(drivenBy(rows)).toEqual(driven);
  });

  it('leaves out a car whose stage a bulletin took away, and names it', () => {
    const records = recordsOf('7,out,in SS6,time\n9,finished');
    const cancelled = { ...ITINERARY, points: ITINERARY.points.filter(({ id }) => id !== 'SS6') };
    const { stretches, leftOut } = drivenStretches(records, cancelled);
    expect(leftOut).toEqual(['7']);
    expect(stretches).toMatchObject([{ carNumber: '9', toMetres: 68_600 }]);
  });

  it('keeps every stop of an unchanged itinerary, in order and inside the event', () => {
    fc.assert(
      fc.property(carRecords(ITINERARY), (records) => {
        const { stretches, leftOut } = drivenStretches(records, ITINERARY);
        expect(leftOut).toEqual([]);
        const stopsOf = (list: readonly { stop: unknown }[]) =>
          list.flatMap(({ stop }) => (stop ? [stop] : []));
        expect(stopsOf(stretches)).toEqual(stopsOf(records));
        for (const { fromMetres, toMetres } of stretches) {
          expect(fromMetres).toBeGreaterThanOrEqual(0);
          expect(toMetres).toBeGreaterThanOrEqual(fromMetres);
          expect(toMetres).toBeLessThanOrEqual(stageMetresOf(ITINERARY));
        }
      }),
    );
  });
});
