import { readItinerary } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { SETTINGS } from './fixtures';
import { rowName, withoutRow, withRow } from './mend-row';

const TEXT = {
  source: `Rally Au;;;;
TC/SS;Location;SS km;Road km;First car due
TC0;Start;;;09:00
TC1;Moorwald;;12,40;09:20
SS1;Moorwald;8,10;;09:23
TC1A;Finish;;6,20;09:45
`,
  ...SETTINGS,
};

const firstCells = (source: string | null) => source?.split('\n').map((line) => line.split('\t')[0]);

describe('withRow', () => {
  it('puts a row in where it was asked for, and writes one anew', () => {
    const fuel = { rowIndex: 1, cells: ['RZ1', 'Refuel', '', '1,00'] };
    const put = withRow(TEXT, { ...fuel, instead: false });
    expect(firstCells(put)).toEqual(['TC/SS', 'TC0', 'RZ1', 'TC1', 'SS1', 'TC1A', '']);
    const anew = withRow(TEXT, { ...fuel, instead: true });
    expect(firstCells(anew)).toEqual(['TC/SS', 'TC0', 'RZ1', 'SS1', 'TC1A', '']);
  });

  it('refuses what is no row, and what has no place', () => {
    const put = (rowIndex: number, cells: string[], instead = false) =>
      withRow(TEXT, { rowIndex, cells, instead });
    expect(put(1, ['', ' ', '', '', ''])).toBeNull();
    expect(put(9, ['TC2', 'Hollow'])).toBeNull();
    expect(put(4, ['TC1A', 'Finish', '', '5,00'], true)).toBeNull();
    expect(
      withRow({ ...TEXT, timeZone: 'nowhere' }, { rowIndex: 1, cells: ['TC2'], instead: false }),
    ).toBeNull();
  });
});

describe('withoutRow', () => {
  it('takes a row out, and knows when it is gone', () => {
    expect(firstCells(withoutRow(TEXT, 2))).toEqual(['TC/SS', 'TC0', 'TC1', 'TC1A', '']);
    expect(withoutRow(TEXT, 4)).toBeNull();
  });
});

it('calls a row by its number and its first words', () => {
  const { table } = readItinerary(TEXT.source, {
    timeZone: 'Europe/Vienna',
    startDate: '2026-06-12',
    roadTimedFrom: 'stageStart',
  });
  const row = table?.rows[2];
  expect(row && rowName(row)).toBe('Row 5, SS1 Moorwald');
  expect(row && rowName({ ...row, cells: [] })).toBe('Row 5');
});
