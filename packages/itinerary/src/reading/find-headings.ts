import { controlCode } from './control-code';
import { foldWords } from './fold-words';
import { headingMeaning } from './heading-meaning';
import type { CutTable } from './read-itinerary-model';

export interface FoundHeadings {
  /** 0-based row of the headings, of the first of two. */
  row: number;
  span: 1 | 2;
  headings: CutTable['headings'];
  /** How many different columns they name. */
  known: number;
  /** The rows as written, to know them again on the next page. */
  texts: string[][];
}

/**
 * The headings of a table: the row, or the two rows one above the other, that name the most columns. In two rows the
 * upper may be merged over several columns ("Distance (km)" above "SS", "Liaison", "Total"), which a spreadsheet leaves
 * as blank cells to its right. Null when no row names a column.
 */
export function findHeadings(rows: readonly string[][]): FoundHeadings | null {
  const singles = rows.map((cells, row) =>
    found(
      row,
      1,
      cells.map((cell) => [cell]),
      [cells],
    ),
  );
  let best: FoundHeadings | null = null;
  singles.forEach((single, row) => {
    const [cells, below] = [single.texts[0] ?? [], rows[row + 1]];
    let candidate = single;
    if (below && mayBeHeadings(cells) && mayBeHeadings(below)) {
      const pair = found(row, 2, mergedChoices(cells, below), [cells, below]);
      const either = Math.max(single.known, singles[row + 1]?.known ?? 0);
      const isTelling = isUnits(below) || unitsIn(pair) > unitsIn(singles[row + 1]);
      if (pair.known > either || (isTelling && pair.known === either)) candidate = pair;
    }
    if (candidate.known > (best?.known ?? 0)) best = candidate;
  });
  return best;
}

function unitsIn(headings: FoundHeadings | undefined): number {
  return headings?.headings.filter((heading) => heading.unit !== null).length ?? 0;
}

/** A second heading row that only names units: `(km)`, `(h:mm)`. */
function isUnits(cells: readonly string[]): boolean {
  const unit = /^(?:in )?(?:kms?|kilomet\w+|mi|miles?|hh?|mm|min|minutes|hours|time|dist|distance|due)$/;
  const filled = cells.map(foldWords).filter((cell) => cell !== '');
  return filled.length > 0 && filled.every((cell) => cell.split(' ').every((word) => unit.test(word)));
}

function mayBeHeadings(cells: readonly string[]): boolean {
  return (
    cells.some((cell) => cell !== '') && cells.every((cell) => !/\d[:.,]\d/.test(cell) && !controlCode(cell))
  );
}

/** For each column, the texts its heading may be, the fullest first. */
function mergedChoices(upper: readonly string[], lower: readonly string[]): string[][] {
  let merged = '';
  return Array.from({ length: Math.max(upper.length, lower.length) }, (_, column) => {
    const [above, below] = [upper[column] ?? '', lower[column] ?? ''];
    if (above !== '') merged = above;
    const joined = (one: string) => [one, below].filter((text) => text !== '').join(' ');
    if (below === '') return [above];
    // A unit that stands in the merged cell holds for all columns below it.
    const isSameColumn = headingMeaning(joined(merged)).key === headingMeaning(below).key;
    return above === '' && isSameColumn
      ? [joined(merged), below]
      : [joined(above), joined(merged), below, above];
  });
}

function found(row: number, span: 1 | 2, choices: readonly string[][], texts: string[][]): FoundHeadings {
  const taken = new Set<string>();
  const headings = choices.map((texts) => {
    const read = texts.map((text) => ({ text, ...headingMeaning(text) }));
    const chosen = read.find(({ key }) => key !== null && !taken.has(key)) ?? read[0];
    const key = chosen?.key ?? null;
    if (key !== null) taken.add(key);
    return { text: chosen?.text ?? '', meaning: key, unit: chosen?.unit ?? null };
  });
  return { row, span, headings, known: taken.size, texts };
}
