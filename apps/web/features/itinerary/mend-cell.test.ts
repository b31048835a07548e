import { describe, expect, it } from 'vitest';
import { cellsToMend, leftInWords, nextToMend } from './cells-to-mend';
import { checkText } from './check-text';
import { columnsInUse } from './columns-in-use';
import { SETTINGS } from './fixtures';
import { mendCell } from './mend-cell';

/** Copied from a PDF: a title, columns kept apart, a letter O for a 0 and an S for a 5. */
const PRINTED = `Rally Au, bulletin 2
TC/SS   Location        SS km   Road km   First car due
TC0     Start                             09:00
TC1     Moorwald                12,40     09:20
SS1     Moorwald        8,1O              09:23
TC1A    Finish                  6,20      09:4S
`;
const textOf = (source: string) => ({ ...SETTINGS, source });

function tableOf(source: string) {
  const checked = checkText(textOf(source));
  if (checked.state !== 'good' && checked.state !== 'bad') throw new Error(checked.state);
  if (!checked.table) throw new Error('no table');
  return checked.table;
}

describe('mending cell by cell', () => {
  const [first, second] = cellsToMend(tableOf(PRINTED));
  if (!first || !second) throw new Error('two cells should have problems');

  it('goes from the first cell to the last and leaves a text without problems', () => {
    const once = mendCell(textOf(PRINTED), first, '8,10');
    const twice = once && mendCell(textOf(once), second, ' 09:45 ');
    expect(twice).not.toBeNull();
    expect(twice).toContain('SS1\tMoorwald\t8,10');
    expect(twice).not.toContain('bulletin');
    const checked = checkText(textOf(twice ?? ''));
    expect(checked).toMatchObject({ state: 'good' });
    expect(checked.state === 'good' && checked.itinerary.points.at(-1)?.kind).toBe('control');
  });

  it('stays at a cell that is still wrong, goes on from one that is right, and round from the last', () => {
    const stillWrong = mendCell(textOf(PRINTED), first, '8,x') ?? '';
    expect(nextToMend(tableOf(stillWrong), first)).toEqual(first);
    const mended = mendCell(textOf(PRINTED), first, '8,10') ?? '';
    expect(nextToMend(tableOf(mended), first)).toEqual(second);
    const lastMended = mendCell(textOf(PRINTED), second, '09:45') ?? '';
    expect(nextToMend(tableOf(lastMended), second)).toEqual(first);
    const all = mendCell(textOf(mended), second, '09:45') ?? '';
    expect(nextToMend(tableOf(all), second)).toBeNull();
  });

  it('writes a heading, and has nothing to say of a cell that is gone', () => {
    const misspelt = PRINTED.replace('Road km', 'Raod km').replace('8,1O', '8,10').replace('09:4S', '09:45');
    const [heading] = cellsToMend(tableOf(misspelt));
    expect(heading).toMatchObject({ rowIndex: null });
    expect(heading && mendCell(textOf(misspelt), heading, 'Road km')).toMatch(/^TC\/SS\t.*Road km/);
    expect(mendCell(textOf(PRINTED), { rowIndex: 99, column: 1 }, 'x')).toBeNull();
    expect(mendCell(textOf(PRINTED), { rowIndex: 1, column: 99 }, 'x')).toBeNull();
    expect(mendCell({ ...textOf(PRINTED), startsOn: 'soon' }, first, '8,10')).toBeNull();
  });

  it('counts what is left', () => {
    const checked = checkText(textOf(PRINTED));
    expect(checked.state === 'bad' && leftInWords(checked.problems)).toBe('2 left to mend');
    expect(leftInWords([])).toBe('');
    const remark = { row: 1, column: 1, field: null, code: 'x', message: 'x', severity: 'warning' } as const;
    expect(leftInWords([remark])).toBe('1 remark');
  });
});

describe('columnsInUse', () => {
  it('leaves out a column that is empty from top to bottom, but not one of which something is said', () => {
    expect(columnsInUse(tableOf(PRINTED))).toEqual([0, 1, 2, 3, 4]);
    const odd =
      'TC/SS;Location;SS km;Road km;First car due;Gap;Wether\nTC0;Start;;;09:00;;\nTC1;Au;;5;09:20;;\n';
    expect(columnsInUse(tableOf(odd))).toEqual([0, 1, 3, 4, 6]);
  });
});
