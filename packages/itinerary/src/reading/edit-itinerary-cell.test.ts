import { describe, expect, it } from 'vitest';
import { VIENNA } from '../fixtures';
import { editItineraryCell } from './edit-itinerary-cell';
import { readItinerary } from './read-itinerary';
import type { ReadTable } from './read-itinerary-model';

const TEXT = `Rally Au
TC/SS;Location;SS km;Road km;First car due;Weather
TC0;Start;;;09:00;
TC1;Moorwald;;12,40;09:20;
SS1;Moorwald;8,1O;;09:23;
TC1A;Finish;;6,20;09:4S;
`;

function tableOf(text: string): ReadTable {
  const { table } = readItinerary(text, VIENNA);
  if (!table) throw new Error('no table');
  return table;
}

describe('editItineraryCell', () => {
  it('shows each problem beside its cell and lets it be mended there, cell by cell', () => {
    const table = tableOf(TEXT);
    const cell = (row: number, column: number) =>
      table.rows.find((one) => one.sourceRow === row)?.cells[column - 1];
    expect(cell(5, 3)).toMatchObject({
      text: '8,1O',
      problems: [{ code: 'number-malformed', row: 5, column: 3, field: 'SS km' }],
    });
    expect(cell(6, 5)).toMatchObject({ text: '09:4S', problems: [{ code: 'time-malformed' }] });
    expect(table.headings[5]).toMatchObject({
      text: 'Weather',
      meaning: null,
      problems: [{ code: 'column-unknown' }],
    });
    const first = editItineraryCell(table, { sourceRow: 5, column: 3, text: ' 8,10 ' }, VIENNA);
    expect(first.parsed).toMatchObject({
      ok: false,
      problems: [{ code: 'column-unknown' }, { row: 6, column: 5 }],
    });
    if (!first.table) throw new Error('no table');
    const second = editItineraryCell(first.table, { sourceRow: 6, column: 5, text: '09:45' }, VIENNA);
    expect(second.parsed).toMatchObject({ ok: true, warnings: [{ code: 'column-unknown' }] });
    expect(table.rows.find((one) => one.sourceRow === 5)?.cells[2]?.text).toBe('8,1O');
  });

  it('reads a heading that is written anew', () => {
    const text = TEXT.replace('8,1O', '8,10').replace('09:4S', '09:45').replace('Road km', 'Raod km');
    const table = tableOf(text);
    expect(table.headings[3]?.problems).toMatchObject([{ code: 'column-unknown' }]);
    const { parsed } = editItineraryCell(table, { sourceRow: null, column: 4, text: 'Road miles' }, VIENNA);
    expect(parsed.ok && parsed.itinerary.points[1]).toMatchObject({ roadMetres: 19_956 });
  });

  it('drops a row whose cells are cleared', () => {
    const table = tableOf(
      TEXT.replace('8,1O', '8,10').replace('09:4S', '09:45').replace('TC1;', 'XX;Where;;;;\nTC1;'),
    );
    const told = table.rows.find((row) => row.sourceRow === 4);
    expect(told?.cells[0]?.problems).toMatchObject([{ code: 'unknown-row-kind' }]);
    const half = editItineraryCell(table, { sourceRow: 4, column: 1, text: '' }, VIENNA);
    expect(half.parsed).toMatchObject({
      ok: true,
      warnings: [{ code: 'column-unknown' }, { code: 'line-left-out' }],
    });
    const whole = half.table && editItineraryCell(half.table, { sourceRow: 4, column: 2, text: '' }, VIENNA);
    expect(whole?.parsed).toMatchObject({ ok: true, warnings: [{ code: 'column-unknown' }] });
  });

  it('keeps what was told when the text was cut, but not for the row that is edited', () => {
    const printed = `TC/SS Location SS km Road km Total km Target time First car due
TC0 Start Au 09:00
TC1 Moorwald 12,40 12,40 0:20 09:20
SS1 Moorwald 8,10 8,10 09:23
TC2 Hollergraben 17,10 0:32 09:55
SS2 Hollergraben 11,55 11,55 09:58
TC2A Finish Au 7,45 19,00 0:32 10:30
`;
    const table = tableOf(printed);
    const codes = (sourceRow: number, column: number, text: string) => {
      const { parsed } = editItineraryCell(table, { sourceRow, column, text }, VIENNA);
      return parsed.ok ? parsed.warnings.map((one) => one.code) : [];
    };
    expect(codes(7, 2, 'Finish')).toEqual(['figure-missing']);
    expect(codes(5, 4, '9,00')).toEqual([]);
  });

  it('throws a sentence where there is no such cell', () => {
    const table = tableOf(TEXT);
    expect(() => editItineraryCell(table, { sourceRow: 99, column: 1, text: '' }, VIENNA)).toThrow(
      /^editItineraryCell: .*row 99/,
    );
    expect(() => editItineraryCell(table, { sourceRow: 5, column: 9, text: '' }, VIENNA)).toThrow(
      /^editItineraryCell: .*column 9/,
    );
  });
});
