import { rolesOf } from '../control-roles';
import { excerpt } from '../excerpt';
import type { TableHeader } from '../find-header';
import type { ItineraryProblem } from '../model';
import { nameRefuels } from '../name-refuels';
import { readTotal } from '../read-leg-row';
import { readPoint } from '../read-point-row';
import { readKilometres } from '../read-values';
import { createRowReader, KILOMETRES_TO_DO, type RowReader } from '../row-reader';
import { COLUMN_HEADINGS, type ColumnKey } from '../table-columns';
import type { PointRow, TableReading, TableRow } from '../table-row';
import { controlCode, isUntimedCode } from './control-code';
import { HaltNamer } from './halt-namer';
import type { CutTable, ReadItineraryOptions } from './read-itinerary-model';
import { readLegLine } from './read-leg-line';
import { rolesWithSharedDirection } from './roles-with-shared-direction';
import { isRemark, isTotalTitle, legOf, sectionOf, totalScope } from './row-words';
import { writtenCells } from './written-cells';
import { writtenDate } from './written-date';

interface RowAtHand {
  sourceRow: number;
  /** As written. */
  raw: readonly string[];
  /** All cells in one line. */
  line: string;
  /** The first cell that holds anything. */
  title: string;
  reader: RowReader;
}

/**
 * Reads the rows of a cut table into what they say, as the strict reader does, with every usual way of writing: units,
 * codes of other languages, legs and dates in words, halts without a code, sums of sections, passage controls.
 */
export function readRows(cut: CutTable, options: ReadItineraryOptions): TableReading {
  const reader = new RowsReader(cut, options);
  for (const row of cut.rows) reader.read(row);
  nameRefuels(reader.rows);
  return { rows: reader.rows, problems: reader.problems, placeOf: reader.placeOf };
}

class RowsReader {
  readonly rows: TableRow[] = [];
  readonly problems: ItineraryProblem[] = [];
  private readonly header: TableHeader;
  private readonly halts: HaltNamer;
  private pendingSection: number | null = null;
  /** Road driven to untimed places since the last control, and the row of the last of them. */
  private carried: { metres: number; sourceRow: number; id: string } | null = null;

  constructor(
    private readonly cut: CutTable,
    private readonly options: ReadItineraryOptions,
  ) {
    const columns = new Map<ColumnKey, number>();
    cut.headings.forEach(({ meaning }, index) => {
      if (meaning !== null && meaning !== 'surplus' && !columns.has(meaning)) columns.set(meaning, index);
    });
    this.header = {
      delimiter: '',
      row: (cut.headingRow ?? 0) - 1,
      headings: cut.headings.map((heading) => heading.text),
      columns,
      problems: [],
    };
    const idColumn = columns.get('id') ?? 0;
    this.halts = new HaltNamer(cut.rows.map((row) => controlCode(row.cells[idColumn] ?? '')?.id ?? ''));
  }

  readonly placeOf = (key: ColumnKey): { column: number | null; field: string } => {
    const position = this.header.columns.get(key);
    if (position === undefined) return { column: null, field: COLUMN_HEADINGS[key] };
    return { column: position + 1, field: this.header.headings[position] || COLUMN_HEADINGS[key] };
  };

  read(row: CutTable['rows'][number]): void {
    const raw = row.cells;
    const filled = raw.filter((cell) => cell !== '');
    const line = filled.join(' ');
    if (line === '' || this.tellSurplus(row)) return;
    const cells = writtenCells(raw, this.cut.headings);
    const reader = createRowReader(cells, row.sourceRow, this.header, this.placeOf, this.problems);
    const at: RowAtHand = { sourceRow: row.sourceRow, raw, line, title: filled[0] ?? '', reader };
    const code = controlCode(this.rawText(at, 'id'));
    if (code && isUntimedCode(code.id)) this.carry(at, code.id);
    else if (code) this.addPoint(at, code.id);
    else if (isTotalTitle(at.title)) this.addTotal(at);
    else if (isRemark(at.line) && at.reader.text('due') === '') return;
    else if (!this.readHeadingLine(at)) this.readUncoded(at, cells);
  }

  /** Lines between the rows that open a leg or a section. */
  private readHeadingLine(at: RowAtHand): boolean {
    const section = sectionOf(at.line);
    if (section !== null) {
      this.pendingSection = section;
      return true;
    }
    const date = legOf(at.line) ? null : writtenDate(at.line, this.options.startDate);
    if (!legOf(at.line) && (date === null || date === 'malformed' || date.rest !== '')) return false;
    const leg = readLegLine(at.line, at.sourceRow, this.options.startDate, at.reader);
    this.pendingSection = leg.section ?? this.pendingSection;
    const last = this.rows.at(-1);
    // The leg and its date are often two lines.
    if (
      last?.type === 'leg' &&
      (last.date === null || leg.row.date === null) &&
      (last.number === null || leg.row.number === null)
    ) {
      last.date ??= leg.row.date;
      last.number ??= leg.row.number;
    } else this.rows.push(leg.row);
    return true;
  }

  private readUncoded(at: RowAtHand, cells: string[]): void {
    const location = at.reader.text('location') || (this.rawText(at, 'id') === at.title ? at.title : '');
    const written = this.rawText(at, 'id');
    const hasFigure = at.raw.some((cell, index) => /\d/.test(cell) && cells[index] !== at.title);
    const isHalt = rolesOf(location).roles.some(
      (role) => role !== 'refuel' && (role !== 'start' || !this.hasPoints()),
    );
    if (isHalt && hasFigure && (written === '' || written === location)) {
      const id = this.halts.next();
      this.tell(
        at,
        'id',
        'id-assumed',
        `“${excerpt(location)}” has no control number, so it is called ${id} here. Write its own if it has one.`,
      );
      this.addPoint(at, id, location);
    } else if (
      !hasFigure &&
      !at.raw.some((cell) => /^[\p{L}]{2,8} ?\d/u.test(cell)) &&
      at.raw.filter((cell) => cell !== '').length === 1
    ) {
      this.tell(
        at,
        null,
        'line-left-out',
        `“${excerpt(at.line)}” names no control and no stage, so row ${at.sourceRow} was left out. If it is one, write its code and its time.`,
      );
    } else this.addPoint(at, null);
  }

  private hasPoints(): boolean {
    return this.rows.some((row) => row.type === 'point');
  }

  /** `id` replaces what is written in the column of codes, where it is written in another way than the model's. */
  private addPoint(at: RowAtHand, id: string | null, location?: string): void {
    const text: RowReader['text'] = (key) => {
      if (key === 'id' && id !== null) return id;
      if (key === 'location' && location !== undefined) return location;
      if (key === 'location' && id !== null && at.reader.text(key) === '')
        return controlCode(this.rawText(at, 'id'))?.rest ?? '';
      if (key === 'repeatOf') return controlCode(at.reader.text(key))?.id ?? at.reader.text(key);
      return at.reader.text(key);
    };
    const point = readPoint(at.sourceRow, { ...at.reader, text });
    if (!point) return;
    if (id !== null) this.halts.pass(point.id);
    if (point.kind === 'control') point.roles ??= rolesWithSharedDirection(point.name);
    point.section ??= this.pendingSection;
    this.pendingSection = null;
    if (!this.header.columns.has('roadKm') && point.kind === 'control') point.metres ??= 0;
    this.rows.push(this.carried ? this.withCarried(point) : point);
  }

  private addTotal(at: RowAtHand): void {
    const total = readTotal(at.title, at.sourceRow, at.reader);
    this.rows.push({ ...total, scope: totalScope(at.title) });
  }

  private carry(at: RowAtHand, id: string): void {
    const metres = at.reader.value('roadKm', readKilometres, 'number-malformed', KILOMETRES_TO_DO) ?? 0;
    if (metres === 0) return;
    this.carried = { metres: metres + (this.carried?.metres ?? 0), sourceRow: at.sourceRow, id };
    this.tell(
      at,
      'roadKm',
      'untimed-road-added',
      `${id} is not a timed control, so its ${(metres / 1000).toFixed(2)} road km were added to the next control’s. Clear the cell if they are in there already.`,
    );
  }

  private withCarried(point: PointRow): PointRow {
    if (!this.carried || point.kind === 'stage' || point.id.startsWith('RZ')) return point;
    const { metres } = this.carried;
    this.carried = null;
    const isOwnTotal = point.totalMetres !== null && Math.abs(point.totalMetres - (point.metres ?? 0)) <= 10;
    return {
      ...point,
      metres: (point.metres ?? 0) + metres,
      totalMetres: isOwnTotal && point.totalMetres !== null ? point.totalMetres + metres : point.totalMetres,
    };
  }

  private tellSurplus({ sourceRow, cells }: CutTable['rows'][number]): boolean {
    const extra = cells.findIndex(
      (cell, index) => cell !== '' && this.cut.headings[index]?.meaning === 'surplus',
    );
    if (extra === -1) return false;
    this.problems.push({
      row: sourceRow,
      column: extra + 1,
      field: null,
      code: 'too-many-cells',
      message: `“${excerpt(cells[extra] ?? '')}” in row ${sourceRow} stands under no heading, so the row was not read. Clear it or move it to its column.`,
      severity: 'error',
    });
    return true;
  }

  private rawText(at: RowAtHand, key: ColumnKey): string {
    const position = this.header.columns.get(key);
    return position === undefined ? '' : (at.raw[position] ?? '');
  }

  private tell(at: RowAtHand, ...problem: Parameters<RowReader['tell']>): void {
    at.reader.tell(...problem);
  }
}
