import { describe, expect, it } from 'vitest';
import { checkText } from './check-text';
import { EXAMPLE_TABLE } from './example-table';
import { SETTINGS } from './fixtures';
import { errorsFirst, placeInWords } from './problem-words';
import { readLegs, totalsInWords } from './read-points';

describe('checkText', () => {
  it('reads the example without a word', () => {
    const checked = checkText({ ...SETTINGS, source: EXAMPLE_TABLE });
    expect(checked).toMatchObject({ state: 'good', warnings: [] });
    if (checked.state !== 'good') return;
    expect(totalsInWords(checked.itinerary)).toBe('3 stages, 33.50 stage km, 140.30 km in all, 1 service');
    const [leg] = readLegs(checked.itinerary);
    expect(leg?.title).toBe('Leg 1, Fri 12 Jun 2026');
    expect(leg?.points.slice(5, 7).map(({ name, what, clock }) => [name, what, clock])).toEqual([
      ['TC2A Service in', '22.00 km of road, Service A · 20 min', '10:49'],
      ['TC2B Service out', 'control', '11:09'],
    ]);
    expect(leg?.points[8]?.what).toBe('stage, 12.40 km, SS1 again');
  });

  it('names row, column and field of a bad cell', () => {
    const checked = checkText({ ...SETTINGS, source: EXAMPLE_TABLE.replace('8.70', 'eight') });
    expect(checked.state).toBe('bad');
    if (checked.state !== 'bad') return;
    const [problem] = errorsFirst(checked.problems);
    expect(problem && placeInWords(problem)).toBe('Row 6, column 3, SS km');
  });

  it('says that there is nothing yet', () => {
    expect(checkText({ ...SETTINGS, source: ' \n' })).toEqual({ state: 'empty' });
  });

  it.each([{ startsOn: '12.6.2026' }, { timeZone: 'Mars/Crater' }, { startIntervalSeconds: Number.NaN }])(
    'does not read with settings like %j',
    (wrong) => {
      expect(checkText({ ...SETTINGS, source: EXAMPLE_TABLE, ...wrong })).toEqual({ state: 'settings' });
    },
  );
});

describe('problems in words', () => {
  const problem = {
    row: null,
    column: null,
    field: null,
    code: 'x',
    message: 'x',
    severity: 'error',
  } as const;

  it('tells a problem of the whole table from one of a row', () => {
    expect(placeInWords(problem)).toBe('The whole table');
    expect(placeInWords({ row: 4, column: null, field: null })).toBe('Row 4');
  });

  it('puts errors before warnings', () => {
    const warning = { ...problem, row: 1, severity: 'warning' } as const;
    const error = { ...problem, row: 2 };
    expect(errorsFirst([warning, error])).toEqual([error, warning]);
  });
});
