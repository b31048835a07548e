import { describe, expect, it } from 'vitest';
import { type CardTableCode, MOST_TABLE_CARDS, MOST_TABLE_CHARACTERS } from './model';
import { readCardTable } from './read-card-table';

const HEAD = 'Name;Place;Every;Minutes';
const ROW = 'Wheel nuts;all four corners;every service;2';

/** What is wrong, the table, and the one problem: row, column, code, words of the sentence that say what to do. */
const MALFORMED: [string, string, number | null, number | null, CardTableCode, string][] = [
  ['nothing', '', null, null, 'empty', 'Paste the table'],
  ['blank rows', '\n  \n\n', null, null, 'empty', 'Paste the table'],
  ['headings alone', HEAD, null, null, 'empty', 'one card a row'],
  ['no headings', `${ROW};x`, 1, 1, 'headingUnknown', 'Take the column out'],
  ['a column nobody knows', `${HEAD};Colour\n${ROW};red`, 1, 5, 'headingUnknown', 'call it one of: Name'],
  ['a column twice', `${HEAD};Where\n${ROW};boot`, 1, 5, 'headingTwice', 'column 2 already. Take one'],
  [
    'no column for the place',
    'Name;Every;Minutes\nNuts;1 day;2',
    1,
    null,
    'headingMissing',
    'column Place. Add it',
  ],
  [
    'no column for a limit',
    'Name;Place;Minutes\nNuts;boot;2',
    1,
    null,
    'headingMissing',
    'column Every. Add it',
  ],
  ['a quote that never ends', `${HEAD}\n${ROW}\n"Nuts;boot;1 day;2\n`, 3, 1, 'quote', 'one at each end'],
  ['text behind a quote', `${HEAD}\nNuts;"boot"x;1 day;2`, 2, 2, 'quote', 'each one inside it twice'],
  ['a cell under no heading', `${HEAD}\n${ROW}\n\n${ROW};left`, 4, 5, 'cellsBeyond', 'heading or clear it'],
  [
    'a comma that cut a number',
    'Name,Place,Every,Minutes\nNuts,boot,1 day,2,5',
    2,
    5,
    'cellsBeyond',
    'double quotes',
  ],
  ['no name', `${HEAD}\n;boot;1 day;2`, 2, 1, 'missing', 'Write one, or clear the whole row'],
  [
    'a long name',
    `${HEAD}\n${'n'.repeat(81)};boot;1 day;2`,
    2,
    1,
    'textTooLong',
    '80 is the most. Shorten it',
  ],
  ['no place', `${HEAD}\nNuts;;1 day;2`, 2, 2, 'missing', 'Write engine bay, '],
  [
    'a place no car has',
    `${HEAD}\nNuts;roof rack;1 day;2`,
    2,
    2,
    'notAChoice',
    'cockpit, body, boot or whole car',
  ],
  ['no limit', `${HEAD}\nNuts;boot;;2`, 2, 3, 'missing', 'or on request for one that'],
  ['a limit without a unit', `${HEAD}\nNuts;boot;60;2`, 2, 3, 'notAChoice', 'Write a number and services, '],
  ['half a service', `${HEAD}\nNuts;boot;0,5 services;2`, 2, 3, 'notANumber', 'Write it in figures'],
  [
    'a limit of nothing',
    `${HEAD}\nNuts;boot;0 stage km;2`,
    2,
    3,
    'outOfRange',
    'more than 0 and at most 10000. Mend it',
  ],
  [
    'six limits',
    `${HEAD}\nNuts;boot;${Array(6).fill('1 day').join('|')};2`,
    2,
    3,
    'tooManyItems',
    'Take some out',
  ],
  [
    'two tolerances for one limit',
    `${HEAD};Tolerance\nNuts;boot;1 day;2;1|2`,
    2,
    5,
    'contradiction',
    'one for each limit',
  ],
  [
    'a tolerance of words',
    `${HEAD};Tolerance\nNuts;boot;1 day;2;some`,
    2,
    5,
    'notANumber',
    'Write it in figures',
  ],
  [
    'a tolerance in another unit',
    `${HEAD};Tolerance\nNuts;boot;1 day;2;5 stages`,
    2,
    5,
    'contradiction',
    'in days too',
  ],
  ['a tolerance below nothing', `${HEAD};Tolerance\nNuts;boot;1 day;2;-1`, 2, 5, 'outOfRange', '0 or more'],
  [
    'a day no calendar has',
    'Name;Place;Due date;Minutes\nBelt;cockpit;2027-02-30;2',
    2,
    3,
    'notADate',
    'Write it as 2027-03-31',
  ],
  [
    'a date with slashes',
    'Name;Place;Due date;Minutes\nBelt;cockpit;03/04/2027;2',
    2,
    3,
    'notADate',
    'Write it as',
  ],
  [
    'a date too far',
    'Name;Place;Due date;Minutes\nBelt;cockpit;2207-01-01;2',
    2,
    3,
    'outOfRange',
    'Mend the year',
  ],
  ['no minutes', `${HEAD}\nNuts;boot;1 day;`, 2, 4, 'missing', 'Write a number, such as 4'],
  ['minutes in words', `${HEAD}\nNuts;boot;1 day;two`, 2, 4, 'notANumber', 'Write one, such as 4'],
  ['minutes with two commas', `${HEAD}\nNuts;boot;1 day;1.000,5`, 2, 4, 'notANumber', 'Write one'],
  ['a job of five hours', `${HEAD}\nNuts;boot;1 day;300`, 2, 4, 'outOfRange', 'from 0.5 to 240'],
  ['half a person', `${HEAD};People\nNuts;boot;1 day;2;1.5`, 2, 5, 'notANumber', 'a whole number'],
  ['nine people', `${HEAD};People\nNuts;boot;1 day;2;9`, 2, 5, 'outOfRange', 'from 1 to 8'],
  [
    'a condition beyond belief',
    `${HEAD};Dust %\nNuts;boot;1 day;2;900`,
    2,
    5,
    'outOfRange',
    'from -75 to 400',
  ],
  [
    'neither yes nor no',
    `${HEAD};Second signature\nNuts;boot;1 day;2;maybe`,
    2,
    5,
    'notAChoice',
    'Write yes or no',
  ],
  [
    'a round without looks',
    `${HEAD};Kind;Looks\nNuts;boot;1 day;2;round;`,
    2,
    6,
    'contradiction',
    'or make it a job',
  ],
  [
    'a job with looks',
    `${HEAD};Kind;Looks\nNuts;boot;1 day;2;job;rims`,
    2,
    6,
    'contradiction',
    'or make it a round',
  ],
  ['a kind nobody knows', `${HEAD};Kind\nNuts;boot;1 day;2;check`, 2, 5, 'notAChoice', 'Write job or round'],
  ['a long look', `${HEAD};Looks\nNuts;boot;1 day;2;a|${'b'.repeat(121)}`, 2, 5, 'textTooLong', 'Shorten it'],
  [
    'too many tools',
    `${HEAD};Tools\nNuts;boot;1 day;2;${Array(21).fill('bar').join('|')}`,
    2,
    5,
    'tooManyItems',
    '20 is the most',
  ],
  [
    'a reading without a kind',
    `${HEAD};Readings\nNuts;boot;1 day;2;"Gap"`,
    2,
    5,
    'notAChoice',
    'wear, level, set value',
  ],
  [
    'two readings run together',
    `${HEAD};Readings\nNuts;boot;1 day;2;"Gap: wear; at FL; low 1; high 2; needed; Play: wear; at FR; low 1"`,
    2,
    5,
    'tooManyItems',
    'Divide readings by |',
  ],
  [
    'a round that fits a new part',
    `${HEAD};New part;Looks\nNuts;boot;1 day;2;yes;rims`,
    2,
    5,
    'contradiction',
    'Write no, or make a job of it.',
  ],
  [
    'a new part nobody can say',
    `${HEAD};New part\nNuts;boot;1 day;2;perhaps`,
    2,
    5,
    'notAChoice',
    'Write yes or no.',
  ],
  [
    'a reading upside down',
    `${HEAD};Readings\nNuts;boot;1 day;2;"Gap: wear; low 4; high 3"`,
    2,
    5,
    'contradiction',
    'Swap them',
  ],
  [
    'finer than its decimals',
    `${HEAD};Readings\nNuts;boot;1 day;2;"Gap: wear; low 4,25"`,
    2,
    5,
    'notANumber',
    'at most 0 decimals',
  ],
  [
    'a reading’s part nobody knows',
    `${HEAD};Readings\nNuts;boot;1 day;2;"Gap: wear; colour red"`,
    2,
    5,
    'notAChoice',
    'Write unit, ',
  ],
];

describe('readCardTable', () => {
  it('takes the least a card needs, and gives it what most cards have', () => {
    const read = readCardTable(`${HEAD}\n${ROW}`);
    expect(read).toEqual({
      ok: true,
      cards: [
        {
          ...{ name: 'Wheel nuts', kind: 'job', place: 'allCorners', seconds: 120, people: 1 },
          intervals: [{ counter: 'services', every: 1, tolerance: 0 }],
          ...{ dateLimit: null, conditionFactors: {}, combineConditions: 'largest' },
          ...{ leastServiceSeconds: 0, remoteAllowed: true, needsSignature: false },
          ...{ looks: [], readings: [], starterId: null, tools: [], caution: '', instruction: '' },
        },
      ],
    });
  });

  it.each([
    [
      'semicolons and decimal commas',
      'name;PLACE;how often;Min\nOil;engine bay;62,5 stage km | 2,5 engine hours;1,5',
    ],
    ['tabs', 'Name\tPlace\tEvery\tMinutes\nOil\tengine bay\t62.5 stage km | 2.5 engine hours\t1.5'],
    [
      'commas and quotes',
      'Minutes,Name,Every,Place\r\n"1,5","Oil","62,5 stage km\n2.5 hours",Engine bay\r\n',
    ],
    [
      'blank cells before the headings',
      ';;;\nName;Place;Every;Minutes\nOil;engine;62,5 stage km|2,5 hours;1,5',
    ],
    [
      'a byte-order mark and blank rows',
      '\uFEFF\n\nName,Place,Every,Minutes\n,,,\nOil,engine,62.5 stage km|2.5 hours,1.50\n\n',
    ],
  ])('reads %s alike', (_what, text) => {
    const intervals = [
      { counter: 'stageMetres', every: 62_500, tolerance: 0 },
      { counter: 'engineSeconds', every: 9000, tolerance: 0 },
    ];
    expect(readCardTable(text)).toMatchObject({
      ok: true,
      cards: [{ name: 'Oil', place: 'engineBay', seconds: 90, intervals }],
    });
  });

  it.each(['on request', 'No limit', 'by reading', 'when called for'])('reads %s as no limit', (words) => {
    const read = readCardTable(`${HEAD}\nFuel smell;whole car;${words};5`);
    expect(read.ok && read.cards.map(({ intervals, dateLimit }) => ({ intervals, dateLimit }))).toEqual([
      { intervals: [], dateLimit: null },
    ]);
  });

  it('reads looks as a round, and readings with their parts in any order', () => {
    const reading = 'Pads: WEAR; low 3,5; needed; at FL FR; decimals 1; unit mm';
    const read = readCardTable(`${HEAD};Looks;Readings\nCorner;FL;1 day;2;rims | tyres;"${reading}"`);
    expect(read).toMatchObject({
      ok: true,
      cards: [
        {
          kind: 'round',
          place: 'frontLeft',
          looks: [
            { id: 'look-1', words: 'rims' },
            { id: 'look-2', words: 'tyres' },
          ],
          readings: [
            {
              ...{ id: 'reading-1', name: 'Pads', kind: 'wear', unit: 'mm', decimals: 1 },
              ...{ positions: ['FL', 'FR'], low: 35, high: null, required: true },
            },
          ],
        },
      ],
    });
  });

  it.each(MALFORMED)('refuses %s', (_what, text, row, column, code, says) => {
    const read = readCardTable(text);
    if (read.ok) throw new Error('It was taken.');
    const [problem] = read.problems;
    expect(problem).toMatchObject({ row, column, code });
    expect(problem?.message).toContain(says);
    expect(problem?.message).toMatch(/\.$/);
  });

  it('names every wrong cell at once, and takes none of the good rows', () => {
    const read = readCardTable(`${HEAD};People\n${ROW};1\nNuts;roof;1 day;two;9\n${ROW};0`);
    if (read.ok) throw new Error('It was taken.');
    const places = read.problems.map(({ row, column, field }) => [row, column, field]);
    expect(places).toEqual([
      [3, 2, 'Place'],
      [3, 4, 'Minutes'],
      [3, 5, 'People'],
      [4, 5, 'People'],
    ]);
  });

  it('counts rows as pasted, a line break inside quotes being none', () => {
    const read = readCardTable(`${HEAD};Caution\nA;boot;1 day;2;"one\ntwo"\nB;boot;1 day;x;`);
    expect(read).toMatchObject({ ok: false, problems: [{ row: 3, column: 4 }] });
  });

  it('has a most, for letters and for cards', () => {
    const rows = (count: number) => readCardTable(`${HEAD}\n${Array(count).fill(ROW).join('\n')}`);
    expect(rows(MOST_TABLE_CARDS)).toMatchObject({ ok: true });
    const most = { row: null, column: null, message: expect.stringContaining('in parts') };
    expect(rows(MOST_TABLE_CARDS + 1)).toMatchObject({
      ok: false,
      problems: [{ ...most, code: 'tooManyRows' }],
    });
    const long = readCardTable('x'.repeat(MOST_TABLE_CHARACTERS + 1));
    expect(long).toMatchObject({ ok: false, problems: [{ ...most, code: 'tooLong' }] });
  });

  it.each([
    ['rows', `${HEAD}\n${'x\n'.repeat(140_000)}`],
    ['headings', ';x'.repeat(140_000)],
    ['one letter over and over', `${HEAD};Readings\nNuts;boot;1 day;2;${'x'.repeat(280_000)}`],
    ['parts of a reading', `${HEAD};Readings\nNuts;boot;1 day;2;"Gap: wear${';x'.repeat(140_000)}"`],
    ['limits', `${HEAD}\nNuts;boot;"${'x|'.repeat(140_000)}";2`],
    ['backslashes', `${HEAD};Looks\nNuts;boot;1 day;2;${'\\\\|'.repeat(90_000)}`],
    ['apostrophes', `${HEAD}\n${"'".repeat(280_000)};boot;1 day;2`],
    ['spaces', `${HEAD}\nNuts;boot;every${' '.repeat(280_000)}x;2`],
    ['quotes', `${HEAD}\n${'"'.repeat(280_000)}`],
  ])(
    'answers a table full of %s shortly and soon',
    (_what, text) => {
      const read = readCardTable(text);
      expect(JSON.stringify(read).length).toBeLessThan(200_000);
    },
    20_000,
  );
});
