import { MAX_TABLE_ROWS } from '../limits';
import { type ParsedItinerary, refusal, severityOf } from '../parsed-itinerary';
import { COLUMN_HEADINGS, NECESSARY_COLUMNS } from '../table-columns';
import { checkFigureCounts } from './check-figure-counts';
import { saysMiles, tooManyRows } from './cut-delimited';
import { joinCellLines } from './join-cell-lines';
import { type FigureHabits, type PrintedRowKind, placeFigures } from './place-figures';
import { type PrintedColumn, PUBLISHED_COLUMNS } from './printed-header';
import { figureKind, type PrintedLine } from './printed-words';
import type { CutTable } from './read-itinerary-model';
import { isTotalTitle } from './row-words';
import { LineSorter } from './sort-lines';
import { spreadMarginSections } from './spread-margin-sections';
import { joinWrapped, mayBeWrapped } from './wrapped-name';

type Refusal = Extract<ParsedItinerary, { ok: false }>;

/**
 * Cuts text copied from a PDF into the cells of a table: columns parted by runs of spaces or by single ones, names that
 * go on in the next line, headings and page lines repeated, section numbers in the right margin.
 */
export function cutPrinted(text: string, near: string): CutTable | Refusal {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\r|\n/)
    .map((line) =>
      line
        .replace(/\t/g, '    ')
        .replace(/[^\S\n]/gu, ' ')
        .trimEnd(),
    );
  if (lines.filter((line) => line !== '').length > MAX_TABLE_ROWS) return tooManyRows();
  const sorter = [lines, joinCellLines(lines)].map((one) => new LineSorter(one, near)).find(hasRows);
  return sorter ? new PrintedCutter(sorter).cut : noTable();
}

function hasRows({ sorted }: LineSorter): boolean {
  const rows = sorted.filter(
    (one) => one.what === 'row' && one.line.code !== '' && one.line.figures.length > 0,
  );
  return rows.length >= 2;
}

function noTable(): Refusal {
  const headings = NECESSARY_COLUMNS.map((key) => COLUMN_HEADINGS[key]).join(', ');
  const message = `No line names the columns, and no rows of controls and stages were found. Put these headings above the table: ${headings}.`;
  return refusal('header-missing', message, 1);
}

/** Puts sorted lines into the cells of one table. */
class PrintedCutter {
  readonly cut: CutTable;
  private readonly columns: readonly PrintedColumn[];
  private readonly habits: FigureHabits;

  constructor(private readonly sorter: LineSorter) {
    this.columns = this.chooseColumns();
    this.habits = { clocksHaveTwoDigits: this.clocksHaveTwoDigits() };
    const isMiles = saysMiles(sorter.titles.join(' '), this.columns.map((column) => column.text).join(' '));
    this.cut = {
      shape: 'printed',
      headingRow: sorter.headingRow,
      headings: this.columns.map(({ text, meaning, unit }) => ({
        text,
        meaning,
        unit:
          unit ??
          (isMiles && (meaning === 'stageKm' || meaning === 'roadKm' || meaning === 'totalKm')
            ? 'miles'
            : null),
      })),
      rows: [],
      leftOut: sorter.leftOut,
      problems: [],
    };
    this.tellAssumed();
    this.placeRows();
    spreadMarginSections(this.cut);
    this.cut.problems.push(...checkFigureCounts(this.cut));
  }

  /** A column the headings leave out, or that stood in a second line between single spaces, goes to its published place. */
  private chooseColumns(): PrintedColumn[] {
    const header = this.sorter.header?.columns.filter(
      (column, index, all) =>
        column.meaning === null || all.findIndex((one) => one.meaning === column.meaning) === index,
    );
    if (!header) return [...PUBLISHED_COLUMNS, sectionColumn()];
    const columns = [...header];
    const has = (key: PrintedColumn['meaning']) => columns.some((column) => column.meaning === key);
    const isSpaced = columns.every((column) => column.place !== null);
    for (const column of PUBLISHED_COLUMNS.slice(0, 2).toReversed())
      if (!has(column.meaning)) columns.unshift(column);
    for (const column of PUBLISHED_COLUMNS.slice(5)) {
      if (!has(column.meaning) && !isSpaced) columns.push(column);
    }
    if (!has('section'))
      columns.push({ ...sectionColumn(), place: isSpaced ? { start: 9999, end: 9999 } : null });
    return columns;
  }

  private clocksHaveTwoDigits(): boolean {
    const clocks = this.sorter.sorted.flatMap((one) => {
      if (one.what !== 'row') return [];
      const times = one.line.figures.filter((figure) => figure.kind === 'time');
      return times.length === 2 ? [times[1]?.text ?? ''] : [];
    });
    return clocks.length > 0 && clocks.every((clock) => /^\d{2}/.test(clock));
  }

  private tellAssumed(): void {
    if (this.sorter.header) return;
    const order = PUBLISHED_COLUMNS.map((column) => column.text).join(', ');
    const message = `No line names the columns, so they were taken in the order itineraries are published in: ${order}. Check a few rows.`;
    this.cut.problems.push({
      row: null,
      column: null,
      field: null,
      code: 'headings-assumed',
      message,
      severity: severityOf('headings-assumed'),
    });
  }

  private placeRows(): void {
    let last: { row: CutTable['rows'][number]; line: PrintedLine; sourceRow: number } | null = null;
    let waiting: { text: string; sourceRow: number } | null = null;
    for (const [index, one] of this.sorter.sorted.entries()) {
      if (one.what === 'words') {
        this.addWords(one.text, one.sourceRow);
        last = null;
        waiting = null;
      } else if (one.what === 'row') {
        const line = { ...one.line };
        if (waiting?.sourceRow === one.sourceRow - 1 && line.name === '') {
          line.name = waiting.text;
          this.cut.rows.pop();
        }
        last = { row: this.addRow(line, one.sourceRow), line, sourceRow: one.sourceRow };
        waiting = null;
      } else if (this.isNameAhead(index)) {
        waiting = { text: one.text, sourceRow: one.sourceRow };
        this.addWords(one.text, one.sourceRow);
      } else if (last?.sourceRow === one.sourceRow - 1 && mayBeWrapped(one.text, one.start, last.line)) {
        const column = this.indexOf('location');
        last.row.cells[column] = joinWrapped(last.row.cells[column] ?? '', one.text);
        last.sourceRow = one.sourceRow;
      } else {
        this.addWords(one.text, one.sourceRow);
        last = null;
      }
    }
  }

  /** Whether a loose line is the beginning of the name of the row right below it, which has none of its own. */
  private isNameAhead(index: number): boolean {
    const [one, next] = [this.sorter.sorted[index], this.sorter.sorted[index + 1]];
    if (one?.what !== 'loose' || next?.what !== 'row' || next.sourceRow !== one.sourceRow + 1) return false;
    return next.line.name === '' && mayBeWrapped(one.text, one.start, null);
  }

  private addWords(text: string, sourceRow: number): void {
    const cells = this.columns.map(() => '');
    cells[this.indexOf('id')] = text;
    this.cut.rows.push({ sourceRow, cells });
  }

  private addRow(line: PrintedLine, sourceRow: number): CutTable['rows'][number] {
    const cells = this.columns.map(() => '');
    const isTotal = line.code === '' && isTotalTitle(line.name);
    const spoilt = line.code === '' ? /^(\p{L}{1,4} ?\d{1,3}[A-Z]{0,2})\b ?/u.exec(line.name) : null;
    cells[this.indexOf('id')] = isTotal ? line.name : (spoilt?.[1] ?? line.codeText);
    cells[this.indexOf('location')] = isTotal ? '' : line.name.slice(spoilt?.[0].length ?? 0);
    const placed = placeFigures(line.figures, kindOf(line, isTotal), this.columns, this.habits);
    for (const [index, text] of placed.cells) if (figureKind(text) !== 'dash') cells[index] = text;
    if (placed.margin !== null && !isTotal) cells[this.indexOf('section')] = placed.margin;
    if (placed.surplus.length > 0) this.addSurplus(cells, placed.surplus.join(' '));
    const row = { sourceRow, cells };
    this.cut.rows.push(row);
    return row;
  }

  private addSurplus(cells: string[], text: string): void {
    if (this.cut.headings.at(-1)?.meaning !== 'surplus') {
      this.cut.headings.push({ text: '', meaning: 'surplus', unit: null });
    }
    cells[this.cut.headings.length - 1] = text;
  }

  private indexOf(key: PrintedColumn['meaning']): number {
    return this.columns.findIndex((column) => column.meaning === key);
  }
}

function kindOf(line: PrintedLine, isTotal: boolean): PrintedRowKind {
  if (isTotal) return 'total';
  if (line.code.startsWith('SS')) return 'stage';
  if (line.code.startsWith('RZ') || (line.code === '' && /^refuel/i.test(line.name))) return 'refuel';
  return 'control';
}

function sectionColumn(): PrintedColumn {
  return { text: COLUMN_HEADINGS.section, meaning: 'section', unit: null, place: null };
}
