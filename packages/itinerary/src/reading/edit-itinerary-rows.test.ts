import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { VIENNA } from '../fixtures';
import { ALL_SHAPES } from '../shapes/all-shapes';
import { dropItineraryRow, putItineraryRow } from './edit-itinerary-rows';
import { readItinerary } from './read-itinerary';
import type { ReadTable } from './read-itinerary-model';
import { readTableToText } from './read-table-to-text';

const TEXT = `Rally Au
TC/SS;Location;SS km;Road km;First car due
TC0;Start;;;09:00
TC1;Moorwald;;12,40;09:20
SS1;Moorwald;8,10;;09:23
TC1A;Finish;;6,20;09:45
`;

function tableOf(text: string): ReadTable {
  const { table } = readItinerary(text, VIENNA);
  if (!table) throw new Error('no table');
  return table;
}

const rowsOf = (table: ReadTable) => table.rows.map((row) => row.cells.map((cell) => cell.text));

describe('putItineraryRow', () => {
  it('puts rows before another and at the end, and reads them where they stand', () => {
    const fuel = putItineraryRow(tableOf(TEXT), {
      rowIndex: 3,
      cells: [' RZ1 ', 'Refuel\nAu', '', '1,00'],
      instead: false,
    });
    expect(rowsOf(tableOf(fuel))[3]).toEqual(['RZ1', 'Refuel Au', '', '1,00', '']);
    const { parsed } = readItinerary(fuel, VIENNA);
    expect(parsed.ok && parsed.itinerary.points[3]).toMatchObject({ roles: ['refuel'], roadMetres: 1000 });

    const longer = putItineraryRow(tableOf(TEXT), {
      rowIndex: 4,
      cells: ['TC1B', 'Parc fermé in', '', '2,00', '09:55'],
      instead: false,
    });
    const read = readItinerary(longer, VIENNA).parsed;
    expect(read.ok && read.itinerary.points.map((point) => point.id)).toEqual([
      'TC0',
      'TC1',
      'SS1',
      'TC1A',
      'TC1B',
    ]);
  });

  it('tells what is wrong with a new row in its own cells', () => {
    const text = putItineraryRow(tableOf(TEXT), {
      rowIndex: 1,
      cells: ['TC0A', 'Refuel', '', '1,O0', '09:0S'],
      instead: false,
    });
    const row = tableOf(text).rows[1];
    expect(row?.cells.flatMap((cell, index) => cell.problems.map(({ code }) => [index, code]))).toEqual([
      [3, 'number-malformed'],
      [4, 'time-malformed'],
    ]);
  });

  it('writes a row anew', () => {
    const text = putItineraryRow(tableOf(TEXT), {
      rowIndex: 2,
      cells: ['SS1', 'Moorwald', '9,30', '', '09:23'],
      instead: true,
    });
    expect(rowsOf(tableOf(text))).toHaveLength(4);
    const { parsed } = readItinerary(text, VIENNA);
    expect(parsed.ok && parsed.itinerary.points[2]).toMatchObject({ stageMetres: 9300 });
  });

  it('throws a sentence where there is no such place, or too many cells', () => {
    const table = tableOf(TEXT);
    for (const rowIndex of [-1, 5, 0.5]) {
      const put = () => putItineraryRow(table, { rowIndex, cells: [], instead: false });
      expect(put).toThrow(/^putItineraryRow: there is no place/);
    }
    expect(() => putItineraryRow(table, { rowIndex: 4, cells: [], instead: true })).toThrow(/no place 4/);
    const cells = Array.from({ length: 6 }, () => '1');
    expect(() => putItineraryRow(table, { rowIndex: 0, cells, instead: false })).toThrow(/6 cells/);
  });
});

describe('dropItineraryRow', () => {
  it('takes out one row and leaves the others', () => {
    expect(rowsOf(tableOf(dropItineraryRow(tableOf(TEXT), 1))).map(([id]) => id)).toEqual([
      'TC0',
      'SS1',
      'TC1A',
    ]);
    expect(() => dropItineraryRow(tableOf(TEXT), 4)).toThrow(/^dropItineraryRow: there is no place 4/);
  });

  it('is undone by putting the row back, in a text of whatever shape', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ALL_SHAPES), fc.nat(), ({ text, options }, pick) => {
        const { table } = readItinerary(text, options);
        if (!table || table.rows.length < 3) return;
        const rowIndex = pick % table.rows.length;
        const cells = table.rows[rowIndex]?.cells.map((cell) => cell.text) ?? [];
        const dropped = readItinerary(dropItineraryRow(table, rowIndex), options).table;
        expect(dropped?.rows).toHaveLength(table.rows.length - 1);
        const whole = dropped && putItineraryRow(dropped, { rowIndex, cells, instead: false });
        expect(whole).toBe(readTableToText(table));
      }),
      { numRuns: 100 },
    );
  }, 60_000);
});
