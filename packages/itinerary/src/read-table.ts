import { rolesOf } from './control-roles';
import type { TableHeader } from './find-header';
import type { ItineraryProblem, StageId } from './model';
import { type ItineraryProblemCode, WARNING_CODES } from './problem-code';
import { readDuration, readGap, readIntervals, readKilometres, readWallClock } from './read-values';
import { COLUMN_HEADINGS, type ColumnKey, columnOf } from './table-columns';
import type { LegRow, PointRow, TableReading, TableRow, TotalRow } from './table-row';
import { isCalendarDate } from './wall-clock';

const STAGE_ID = /^(?:SS|SSS|STAGE)(\d{1,3}[A-Z]?)$/;
const CONTROL_ID = /^TC\d{1,3}[A-Z]{0,2}$/;
const REFUEL_ID = /^(?:RZ|REFUEL|REFUELLING|FUEL)(\d{0,3}[A-Z]?)$/;

/** What a row is read with. */
interface RowReader {
  /** The cell's text, empty where the column or the cell is missing. */
  text: (key: ColumnKey) => string;
  /** The cell's value: null where it is empty or cannot be read, which is reported. */
  value: <T>(
    key: ColumnKey,
    read: (cell: string) => T | null,
    code: ItineraryProblemCode,
    toDo: string,
  ) => T | null;
  tell: (key: ColumnKey | null, code: ItineraryProblemCode, message: string) => void;
  unreadable: Set<ColumnKey>;
}

/**
 * Reads the rows under the headings: the standard shape, one control or stage a row. Problems of writing are
 * collected with their cell; what the rows mean together is not looked at here.
 */
export function readTable(cells: string[][], header: TableHeader): TableReading {
  const problems: ItineraryProblem[] = [];
  const rows: TableRow[] = [];
  const placeOf = (key: ColumnKey) => {
    const position = header.columns.get(key);
    return position === undefined
      ? { column: null, field: COLUMN_HEADINGS[key] }
      : { column: position + 1, field: header.headings[position] ?? COLUMN_HEADINGS[key] };
  };
  cells.forEach((row, index) => {
    if (index <= header.row || row.every((cell) => cell === '')) return;
    const reader = createRowReader(row, index + 1, header, placeOf, problems);
    if (isRepeatedHeader(row, header)) return;
    const extra = row.findIndex((cell, position) => position >= header.headings.length && cell !== '');
    if (extra !== -1) {
      const advice =
        header.delimiter === ','
          ? 'If kilometres are written with a comma, put them in double quotes or separate the columns by semicolons or tabs.'
          : 'Delete the cell, or give it a heading.';
      problems.push(
        tellAt(
          index + 1,
          extra + 1,
          null,
          'too-many-cells',
          `Row ${index + 1} has more cells than there are headings. ${advice}`,
        ),
      );
      if (header.delimiter === ',') return;
    }
    const read = readRow(row, index + 1, reader);
    if (read) rows.push(read);
  });
  nameRefuels(rows);
  return { rows, problems, placeOf };
}

function createRowReader(
  cells: string[],
  row: number,
  header: TableHeader,
  placeOf: TableReading['placeOf'],
  problems: ItineraryProblem[],
): RowReader {
  const unreadable = new Set<ColumnKey>();
  const text = (key: ColumnKey) => {
    const position = header.columns.get(key);
    const cell = position === undefined ? '' : (cells[position] ?? '');
    return /^[-–—]$/.test(cell) ? '' : cell;
  };
  const tell = (key: ColumnKey | null, code: ItineraryProblemCode, message: string) => {
    const place = key === null ? { column: null, field: null } : placeOf(key);
    problems.push(tellAt(row, place.column, place.field, code, message));
  };
  const value: RowReader['value'] = (key, read, code, toDo) => {
    const cell = text(key);
    if (cell === '') return null;
    const result = read(cell);
    if (result === null) {
      unreadable.add(key);
      tell(key, code, `“${cell}” cannot be read as ${placeOf(key).field}. ${toDo}`);
    }
    return result;
  };
  return { text, value, tell, unreadable };
}

function tellAt(
  row: number,
  column: number | null,
  field: string | null,
  code: ItineraryProblemCode,
  message: string,
): ItineraryProblem {
  return { row, column, field, code, message, severity: WARNING_CODES.has(code) ? 'warning' : 'error' };
}

/** Long itineraries print their headings again on each page. */
function isRepeatedHeader(row: string[], header: TableHeader): boolean {
  return (
    row.filter((cell) => cell !== '').length >= 2 &&
    row.every((cell, position) => {
      const heading = header.headings[position] ?? '';
      return cell === heading || (columnOf(cell) !== null && columnOf(cell) === columnOf(heading));
    })
  );
}

function readRow(cells: string[], row: number, reader: RowReader): TableRow | null {
  const first = cells.find((cell) => cell !== '') ?? '';
  if (/^(?:(?:leg|day|event|rally|overall|grand) ?\d{0,3} )?totals?\b/i.test(first))
    return readTotal(first, row, reader);
  if (/^(?:leg|day)(?![a-z])/i.test(first))
    return readLeg(cells.filter((cell) => cell !== '').join(' '), row, reader);
  return readPoint(row, reader);
}

function readLeg(line: string, row: number, reader: RowReader): LegRow {
  const rest = line.replace(/^(?:leg|day)[ .:]*/i, '');
  const number = /^(\d{1,3})(?![\d.\-/])/.exec(rest)?.[1];
  const afterNumber = number === undefined ? rest : rest.slice(number.length);
  const date = readDate(afterNumber);
  if (date === 'malformed') {
    reader.tell(
      'id',
      'leg-date-malformed',
      `The date in “${line}” cannot be read. Write it as 2026-06-13, or leave it out.`,
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
  if (!/\d/.test(text)) return null;
  const iso = /(?<!\d)(\d{4}-\d{2}-\d{2})(?!\d)/.exec(text)?.[1];
  const dayFirst = /(?<!\d)(\d{1,2})\.(\d{1,2})\.(\d{4})(?!\d)/.exec(text);
  const date =
    iso ??
    (dayFirst ? `${dayFirst[3]}-${dayFirst[2]?.padStart(2, '0')}-${dayFirst[1]?.padStart(2, '0')}` : '');
  return isCalendarDate(date) ? date : 'malformed';
}

function readTotal(first: string, row: number, reader: RowReader): TotalRow {
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

const KILOMETRES_TO_DO = 'Write kilometres as 16.65 or 16,65, without a thousands separator.';
const DURATION_TO_DO = 'Write hours and minutes as 0:44.';

function readBracketedKilometres(cell: string): number | null {
  return readKilometres(cell.replace(/^\((.*)\)$/, '$1'));
}

function readPoint(row: number, reader: RowReader): PointRow | null {
  const written = reader.text('id');
  const name = identify(written, reader.text('location'));
  if (!name) {
    const what =
      written === ''
        ? 'no control or stage is named in this row'
        : `“${written}” is no kind of row known here`;
    reader.tell(
      'id',
      'unknown-row-kind',
      `In row ${row}, ${what}. Write a control as TC5B, a stage as SS5, a refuel as RZ1, a new leg as Leg 2, sums as Total, or delete the row.`,
    );
    return null;
  }
  const isStage = name.kind === 'stage';
  const isDistanceToNext = name.id.startsWith('RZ') && /distance to next/i.test(reader.text('location'));
  return {
    type: 'point',
    row,
    kind: name.kind,
    id: name.id,
    name: reader.text('location') || name.id,
    roles: isStage ? null : readRoles(reader),
    ...readDistances(isStage, name.id, isDistanceToNext, reader),
    targetSeconds: reader.value('target', isStage ? readGap : readDuration, 'time-malformed', DURATION_TO_DO),
    clock: reader.value('due', readWallClock, 'time-malformed', 'Write the time of day as 08:13.'),
    gapSeconds: readOnlyOn(isStage, 'gap', 'stage', reader, () =>
      reader.value('gap', readGap, 'time-malformed', 'Write the gap in minutes, as 0:03.'),
    ),
    section: reader.value(
      'section',
      readSection,
      'section-malformed',
      'Write the section as a whole number from 1.',
    ),
    blocks: reader.value(
      'interval',
      readIntervals,
      'interval-malformed',
      'Write start intervals as 60 s, or as 120 s, from 11: 60 s.',
    ),
    repeatOf: isStage ? readRepeat(reader) : undefined,
    unreadable: reader.unreadable,
  };
}

function identify(written: string, location: string): { kind: 'control' | 'stage'; id: string } | null {
  const id = written.toUpperCase().replace(/[\s.\-_]/g, '');
  const stage = STAGE_ID.exec(id);
  if (stage) return { kind: 'stage', id: id.startsWith('SSS') ? id : `SS${stage[1]}` };
  if (CONTROL_ID.test(id)) return { kind: 'control', id };
  const refuel = REFUEL_ID.exec(id);
  if (refuel) return { kind: 'control', id: `RZ${refuel[1]}` };
  return id === '' && /^refuel/i.test(location) ? { kind: 'control', id: 'RZ' } : null;
}

/** A refuel printed without a number gets the lowest one that is free: every control needs a name of its own. */
function nameRefuels(rows: TableRow[]): void {
  const taken = new Set(rows.flatMap((row) => (row.type === 'point' ? [row.id] : [])));
  let number = 1;
  for (const row of rows) {
    if (row.type !== 'point' || row.id !== 'RZ') continue;
    while (taken.has(`RZ${number}`)) number += 1;
    row.name = row.name === 'RZ' ? `RZ${number}` : row.name;
    row.id = `RZ${number}`;
    taken.add(row.id);
  }
}

function readRoles(reader: RowReader) {
  const written = reader.text('role');
  if (written === '') return null;
  const { roles } = rolesOf(written);
  if (roles.length > 0) return roles;
  reader.tell(
    'role',
    'role-unknown',
    `“${written}” is no role known here. Write for example service in, regroup out / service in, or time control, or leave the cell empty.`,
  );
  return null;
}

/**
 * A refuel row prints the distance to the next refuel, in brackets, under SS km, or announced in words; only a plain
 * figure under road km is road driven to get there.
 */
function readDistances(isStage: boolean, id: string, isDistanceToNext: boolean, reader: RowReader) {
  const isNotice =
    id.startsWith('RZ') &&
    (isDistanceToNext || reader.text('stageKm') !== '' || reader.text('roadKm').startsWith('('));
  if (isNotice) return { metres: 0, totalMetres: null };
  const kilometres = (key: ColumnKey) => () =>
    reader.value(key, readKilometres, 'number-malformed', KILOMETRES_TO_DO);
  const stageMetres = readOnlyOn(isStage, 'stageKm', 'stage', reader, kilometres('stageKm'));
  const roadMetres = readOnlyOn(!isStage, 'roadKm', 'control', reader, kilometres('roadKm'));
  return { metres: isStage ? stageMetres : roadMetres, totalMetres: kilometres('totalKm')() };
}

/** Reads a cell that belongs on one kind of row, and reports it on the other unless it is empty or zero. */
function readOnlyOn<T>(
  belongs: boolean,
  key: ColumnKey,
  on: 'stage' | 'control',
  reader: RowReader,
  read: () => T,
): T | null {
  if (belongs) return read();
  const cell = reader.text(key);
  if (cell !== '' && readKilometres(cell) !== 0) {
    const toDo =
      on === 'stage' ? 'Move it to the row of the stage.' : 'Move it to the row of the next control.';
    reader.tell(
      key,
      'cell-misplaced',
      `“${cell}” stands on the row of a ${on === 'stage' ? 'control' : 'stage'}, where it has no meaning. ${toDo}`,
    );
    reader.unreadable.add(key);
  }
  return null;
}

function readSection(cell: string): number | null {
  const number = /^(?:section |sec\.? )?(\d{1,4})$/i.exec(cell);
  return number && Number(number[1]) > 0 ? Number(number[1]) : null;
}

/** Undefined where nothing is written, null where "none" is. */
function readRepeat(reader: RowReader): StageId | null | undefined {
  const written = reader.text('repeatOf');
  if (written === '') return undefined;
  return /^(?:none|no)$/i.test(written) ? null : (identify(written, '')?.id ?? written);
}
