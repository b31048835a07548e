import { HEADINGS } from './columns';
import { type CutRow, cutCells, delimiterOf } from './cut-cells';
import {
  type CardField,
  type CardTableCode,
  type CardTableProblem,
  MOST_TABLE_CARDS,
  MOST_TABLE_CHARACTERS,
  MOST_TABLE_PROBLEMS,
  type ReadCardTable,
  type TableCard,
} from './model';
import { readCardRow } from './read-card-row';
import { readHeadings } from './read-headings';
import { rowCells } from './row-cells';

/**
 * Reads a table of cards as `cardsToTable` writes it and as people change it: divided by commas, semicolons or tabs,
 * columns in any order, decimal comma or point, cells in quotes by RFC 4180. Columns that are left out, and cells that
 * are empty, get what most cards have; name, place, minutes and a limit must be there. All of it or nothing: one wrong
 * cell refuses the table, and every wrong cell, up to `MOST_TABLE_PROBLEMS`, is named by row and column with what to do. Ids of looks and readings are
 * numbered (`look-1`, `reading-1`).
 *
 * @example
 * readCardTable('Name,Place,Every,Minutes\nWheel nuts,all four corners,every service,2') // { ok: true, cards: [...] }
 */
export function readCardTable(text: string): ReadCardTable {
  if (text.length > MOST_TABLE_CHARACTERS) {
    const message = `The table has ${text.length} characters, and ${MOST_TABLE_CHARACTERS} is the most. Bring it in in parts.`;
    return refused([wholeTable('tooLong', message)]);
  }
  const rows = cutCells(text, delimiterOf(text));
  const badQuotes = rows.flatMap(quoteProblems);
  // Cells behind a wrong quote are not where they seem, so nothing else is worth saying.
  if (badQuotes.length > 0) return refused(badQuotes);
  const at = rows.findIndex((row) => !isEmpty(row));
  const head = rows[at];
  if (!head)
    return refused([wholeTable('empty', 'There is nothing to read. Paste the table, headings first.')]);
  const { columns, problems } = readHeadings(head.cells, at + 1);
  if (problems.length > 0) return refused(problems);
  return readRows(rows, at + 1, columns, head.cells);
}

function readRows(
  rows: readonly CutRow[],
  first: number,
  columns: ReadonlyMap<CardField, number>,
  headings: readonly string[],
): ReadCardTable {
  const count = rows.slice(first).filter((row) => !isEmpty(row)).length;
  if (count > MOST_TABLE_CARDS) {
    const message = `The table has ${count} cards, and ${MOST_TABLE_CARDS} is the most. Bring it in in parts.`;
    return refused([wholeTable('tooManyRows', message)]);
  }
  const cards: TableCard[] = [];
  const problems: CardTableProblem[] = [];
  rows.forEach((row, index) => {
    if (index < first || isEmpty(row)) return;
    const number = index + 1;
    const beyond = cellsBeyond(row, number, headings);
    // Cells that slid one column on would each be told as wrong.
    if (beyond) problems.push(beyond);
    else {
      const refuse = (field: CardField, code: CardTableCode, message: string) => {
        const column = columns.get(field);
        const place = { row: number, column: column === undefined ? null : column + 1 };
        problems.push({ ...place, field: HEADINGS[field], code, message });
      };
      cards.push(readCardRow(rowCells(row.cells, columns, refuse)));
    }
  });
  if (problems.length > 0) return refused(problems);
  if (cards.length === 0)
    return refused([
      wholeTable('empty', 'There are headings and no cards. Write one card a row below them.'),
    ]);
  return { ok: true, cards };
}

function cellsBeyond(row: CutRow, number: number, headings: readonly string[]): CardTableProblem | null {
  const column = row.cells.findIndex((cell, index) => cell !== '' && (headings[index] ?? '') === '');
  if (column === -1) return null;
  const message =
    'This cell stands under no heading. Give the column a heading or clear it. If a comma inside a cell cut it in two, put that cell in double quotes.';
  return { row: number, column: column + 1, field: '', code: 'cellsBeyond', message };
}

function quoteProblems(row: CutRow, index: number): CardTableProblem[] {
  if (row.badQuote === null) return [];
  const message =
    'The double quotes of this cell are not closed right. Put one at each end of the cell, and write each one inside it twice.';
  return [{ row: index + 1, column: row.badQuote + 1, field: '', code: 'quote', message }];
}

function isEmpty(row: CutRow): boolean {
  return row.cells.every((cell) => cell === '');
}

function wholeTable(code: CardTableCode, message: string): CardTableProblem {
  return { row: null, column: null, field: '', code, message };
}

function refused(problems: CardTableProblem[]): ReadCardTable {
  return { ok: false, problems: problems.slice(0, MOST_TABLE_PROBLEMS) };
}
