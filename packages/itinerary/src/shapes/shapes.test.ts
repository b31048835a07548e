import { describe, expect, it } from 'vitest';
import type { ItineraryProblem } from '../model';
import { parseItineraryTable } from '../parse-itinerary-table';
import { editItineraryCell } from '../reading/edit-itinerary-cell';
import { readItinerary } from '../reading/read-itinerary';
import { readTableToText } from '../reading/read-table-to-text';
import { ALL_SHAPES } from './all-shapes';
import type { ItineraryShape } from './shape';

function problemsOf({ text, options }: ItineraryShape): ItineraryProblem[] {
  const { parsed } = readItinerary(text, options);
  return parsed.ok ? parsed.warnings : parsed.problems;
}

const READABLE = ALL_SHAPES.filter((shape) => shape.plain !== null);

describe('every shape of itinerary', () => {
  it('is at least twelve', () => {
    expect(new Set(ALL_SHAPES.map((shape) => shape.title)).size).toBeGreaterThanOrEqual(12);
  });

  it.each(ALL_SHAPES)('tells exactly what is wrong: $title', (shape) => {
    const told = problemsOf(shape).map(({ row, column, code }) => `${row ?? ''}:${column ?? ''} ${code}`);
    expect(told).toEqual(shape.problems);
  });

  it.each(READABLE)('means the same as a plain table: $title', ({ text, plain, options }) => {
    const { parsed } = readItinerary(text, options);
    const strict = parseItineraryTable(plain ?? '', { ...options, printedFor: 'positionOne' });
    expect(parsed.ok ? [] : parsed.problems).toEqual([]);
    expect(strict.ok ? [] : strict.problems).toEqual([]);
    expect(parsed.ok && parsed.itinerary).toEqual(strict.ok && strict.itinerary);
  });

  it.each(ALL_SHAPES)('has each problem beside its cell and nowhere twice: $title', (shape) => {
    const { table } = readItinerary(shape.text, shape.options);
    const beside = [
      ...(table?.problems ?? []),
      ...(table?.headings.flatMap((heading) => heading.problems) ?? []),
      ...(table?.rows.flatMap((row) => [...row.cells.flatMap((cell) => cell.problems), ...row.problems]) ??
        []),
    ];
    expect(beside).toHaveLength(shape.problems.length);
    expect(new Set(beside)).toEqual(new Set(problemsOf(shape)));
    expect(table?.rows.every((row) => row.cells.length === table.headings.length)).toBe(true);
  });

  it.each(READABLE)(
    'is the same again from its own cells, and from them as text: $title',
    ({ text, options }) => {
      const { parsed, table } = readItinerary(text, options);
      if (!table || !parsed.ok) throw new Error('not read');
      const first = table.rows[0];
      const same = editItineraryCell(
        table,
        { sourceRow: first?.sourceRow ?? 0, column: 1, text: first?.cells[0]?.text ?? '' },
        options,
      );
      expect(same.table).toEqual(table);
      const again = readItinerary(readTableToText(table), options);
      expect(again.parsed.ok && again.parsed.itinerary).toEqual(parsed.itinerary);
    },
  );
});
