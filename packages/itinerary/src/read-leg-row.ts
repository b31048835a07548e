import { excerpt } from './excerpt';
import { readKilometres } from './read-values';
import { KILOMETRES_TO_DO, type RowReader } from './row-reader';
import type { ColumnKey } from './table-columns';
import type { LegRow, TotalRow } from './table-row';
import { isCalendarDate } from './wall-clock';

/** A row that opens a leg: `Leg 2, 2026-06-13`, in one cell or several. */
export function readLeg(line: string, row: number, reader: RowReader): LegRow {
  const rest = line.replace(/^(?:leg|day)[ .:]*/i, '');
  const number = /^(\d{1,3})(?![\d.\-/])/.exec(rest)?.[1];
  const afterNumber = number === undefined ? rest : rest.slice(number.length);
  const date = readDate(afterNumber);
  if (date === 'malformed') {
    reader.tell(
      'id',
      'leg-date-malformed',
      `The date in “${excerpt(line)}” cannot be read. Write it as 2026-06-13, or leave it out.`,
    );
  }
  return {
    type: 'leg',
    row,
    number: number === undefined ? null : Number(number),
    date: date === 'malformed' ? null : date,
  };
}

function readDate(text: string): string | null | 'malformed' {
  // Stage and control names are no dates ("Leg 2, SS5 to SS9").
  if (!/\d/.test(text.replace(/\b(?:SS|TC)s? ?\d+[A-Z]?/gi, ''))) return null;
  const iso = /(?<!\d)(\d{4}-\d{2}-\d{2})(?!\d)/.exec(text)?.[1];
  const dayFirst = /(?<!\d)(\d{1,2})\.(\d{1,2})\.(\d{4})(?!\d)/.exec(text);
  const date =
    iso ??
    (dayFirst ? `${dayFirst[3]}-${dayFirst[2]?.padStart(2, '0')}-${dayFirst[1]?.padStart(2, '0')}` : '');
  return isCalendarDate(date) ? date : 'malformed';
}

/** A row of sums. */
export function readTotal(first: string, row: number, reader: RowReader): TotalRow {
  const kilometres = (key: ColumnKey) =>
    reader.value(key, readBracketedKilometres, 'number-malformed', KILOMETRES_TO_DO);
  return {
    type: 'total',
    row,
    scope: scopeOf(first),
    stageMetres: kilometres('stageKm'),
    roadMetres: kilometres('roadKm'),
    totalMetres: kilometres('totalKm'),
  };
}

function scopeOf(title: string): TotalRow['scope'] {
  if (/event|rally|overall|grand/i.test(title)) return 'event';
  return /leg|day/i.test(title) ? 'leg' : 'either';
}

function readBracketedKilometres(cell: string): number | null {
  return readKilometres(cell.replace(/^\((.*)\)$/, '$1'));
}
