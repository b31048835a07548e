import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from '../fixtures';
import { carRecords } from './fixtures';
import { readRetirementList } from './read-retirement-list';
import { retirementListCells } from './retirement-list-cells';

const ITINERARY = goodItinerary(TWO_LEGS);
const HEAD = 'Car\tClass\tWhat happened\tWhere\tCause\tPart\tWho says so\tBack from section';
const read = (...rows: string[]) => readRetirementList([HEAD, ...rows].join('\n'), ITINERARY);
const toldOf = (text: string) =>
  readRetirementList(text, ITINERARY).problems.map(({ row, column, code }) => `${row} ${column} ${code}`);

describe('readRetirementList', () => {
  it('reads who finished, who stopped, and who came back', () => {
    const { records, problems } = read(
      '1\tR\tfinished',
      '2\t\tout\tin SS5\tmechanical\tgearbox\tcrew',
      '3\tN\tOut for the day\tafter TC2\toff road\t\tofficial\t3',
      '3\tN\tout\tafter SS6\ttime',
      '4\t\tdid not start',
      '5',
      '6\t\trunning\tafter TC4',
    );
    expect(problems).toEqual([]);
    expect(records).toEqual([
      {
        carNumber: '1',
        className: 'R',
        outcome: 'finished',
        stop: null,
        reached: null,
        backFromSection: null,
      },
      {
        carNumber: '2',
        className: '',
        outcome: 'out',
        stop: {
          place: { relation: 'in', pointId: 'SS5' },
          cause: 'mechanical',
          part: 'gearbox',
          source: 'crew',
        },
        reached: null,
        backFromSection: null,
      },
      {
        carNumber: '3',
        className: 'N',
        outcome: 'outForDay',
        stop: {
          place: { relation: 'after', pointId: 'TC2' },
          cause: 'offRoad',
          part: '',
          source: 'official',
        },
        reached: null,
        backFromSection: 3,
      },
      {
        carNumber: '3',
        className: 'N',
        outcome: 'out',
        stop: { place: { relation: 'after', pointId: 'SS6' }, cause: 'time', part: '', source: 'unsure' },
        reached: null,
        backFromSection: null,
      },
      {
        carNumber: '4',
        className: '',
        outcome: 'notStarted',
        stop: null,
        reached: null,
        backFromSection: null,
      },
      {
        carNumber: '5',
        className: '',
        outcome: 'notKnown',
        stop: null,
        reached: null,
        backFromSection: null,
      },
      {
        carNumber: '6',
        className: '',
        outcome: 'notKnown',
        stop: null,
        reached: { relation: 'after', pointId: 'TC4' },
        backFromSection: null,
      },
    ]);
  });

  it.each([
    ['commas and other words', 'Result,Number,Reason,Where stopped\nRetired,7,Accident,On ss 1'],
    [
      'semicolons, empty rows and a byte order mark',
      '\uFEFF\nNo.;What happened;Where;Cause\n\n7;OUT;in SS1;Off-road;\n',
    ],
    ['a dash for nothing', 'Car\tWhat happened\tWhere\tCause\tPart\n7\tout for good\tin SS1\toff\t–'],
  ])('reads a list with %s', (_, text) => {
    const { records, problems } = readRetirementList(text, ITINERARY);
    expect(problems).toEqual([]);
    expect(records).toMatchObject([
      {
        carNumber: '7',
        outcome: 'out',
        stop: { place: { relation: 'in', pointId: 'SS1' }, cause: 'offRoad', part: '' },
      },
    ]);
  });

  it.each([
    ['', ['null null empty-list']],
    ['Car\tWhat happened', ['null null empty-list']],
    [
      '7\tfinished',
      ['1 1 column-unknown', '1 2 column-unknown', '1 null column-missing', '1 null column-missing'],
    ],
    ['Car\tDriver\tWhat happened\n7\tA. Nother\tfinished', ['1 2 column-unknown']],
    ['Car\tNumber\tWhat happened\n7\t7\tfinished', ['1 2 column-twice']],
    ['Car\n7', ['1 null column-missing']],
    ['Car\tWhat happened\n"7\tfinished', ['null null open-quote']],
  ])('tells of the headings of %j what is wrong', (text, told) => {
    expect(toldOf(text)).toEqual(told);
  });

  it.each([
    ['\t\tfinished', ['2 1 car-missing']],
    ['123456789\t\tfinished', ['2 1 car-too-long']],
    ['7\tabcdefghijklmnopqrstu\tfinished', ['2 2 className-too-long']],
    ['7\t\tvanished', ['2 3 outcome-unknown']],
    ['7\t\tout', ['2 4 place-missing', '2 5 cause-missing']],
    ['7\t\tout\tSS5\toff road', ['2 4 place-malformed']],
    ['7\t\tout\tin TC5\toff road', ['2 4 place-malformed']],
    ['7\t\tout\tafter SS44\toff road', ['2 4 place-malformed']],
    ['7\t\trunning\tSS5', ['2 4 place-malformed']],
    ['7\t\tout\tin SS5\tbad luck', ['2 5 cause-unknown']],
    ['7\t\tout\tin SS5\ttime\t\ta friend', ['2 7 source-unknown']],
    [`7\t\tout\tin SS5\ttime\t${'x'.repeat(41)}`, ['2 6 part-too-long']],
    ['7\t\tout\tin SS5\ttime\t\t\t3', ['2 8 back-unexpected']],
    ['7\t\tout for the day\tin SS1\ttime\t\t\t9', ['2 8 section-unknown']],
    ['7\t\tfinished\n7\t\tfinished', ['3 null car-twice']],
    ['7\t\tout for the day\tin SS1\ttime\t\t\t3', ['2 null end-missing']],
    ['7\t\tout for the day\tin SS5\ttime\t\t\t2\n7\t\tfinished', ['2 null back-too-early']],
    ['7\t\tout for the day\tin SS1\ttime\t\t\t3\n7\t\tout\tin SS2\ttime', ['3 null stops-too-early']],
    ['7\t\tout for the day\tin SS1\ttime\t\t\t3\n7\t\tdid not start', ['3 null started-before']],
  ])('tells of %j where it is wrong', (rows, told) => {
    expect(toldOf(`${HEAD}\n${rows}`)).toEqual(told);
  });

  it('asks which of the two a stage alone means', () => {
    expect(read('7\t\tout\tSS5\ttime').problems[0]?.message).toBe(
      '“SS5” may mean in the stage or after it. Write “in SS5” or “after SS5”.',
    );
  });

  it('reads what is right beside what is wrong', () => {
    expect(read('1\t\tfinished', '2\t\tvanished').records).toHaveLength(1);
  });

  it('stops at a list of more than 1000 rows, and says so', () => {
    const rows = Array.from({ length: 1001 }, (_, index) => `${index + 1}\t\tfinished`);
    expect(read(...rows).problems.map(({ code }) => code)).toEqual(['too-many-rows']);
    expect(read(...rows.slice(0, 1000)).problems).toEqual([]);
  });

  it('reads back every list that is in order', () => {
    fc.assert(
      fc.property(carRecords(ITINERARY), fc.constantFrom('\t', ';', ','), (records, delimiter) => {
        const text = retirementListCells(records)
          .map((cells) => cells.join(delimiter))
          .join('\n');
        expect(readRetirementList(text, ITINERARY)).toEqual({ records, problems: [] });
      }),
    );
  });

  it('never throws, and places each problem of a row in the text', () => {
    const cell = fc.constantFrom(
      '7',
      'out',
      'out for the day',
      'in SS5',
      'after TC1',
      'time',
      '3',
      '',
      '"',
      'x',
      '\n',
      '\t',
      ',',
    );
    fc.assert(
      fc.property(fc.array(cell, { maxLength: 40 }), (cells) => {
        const text = `${HEAD}\n${cells.join('\t')}`;
        const { records, problems } = readRetirementList(text, ITINERARY);
        expect(records.length + problems.length).toBeGreaterThan(0);
        const last = text.split('\n').length;
        for (const { row } of problems) expect(row ?? 1).toBeLessThanOrEqual(last);
      }),
    );
  });
});
