import { rolesOf } from '../control-roles';
import { opensLegAbove } from './cut-delimited';
import { foldWords } from './fold-words';
import { type PrintedHeader, printedHeader } from './printed-header';
import { type PrintedLine, printedLine } from './printed-words';
import type { CutTable } from './read-itinerary-model';
import { isTotalTitle, legOf, sectionOf } from './row-words';
import { writtenDate } from './written-date';

const PAGE_NUMBER = /^(?:page|seite|pagina|p|s) \d{1,3}(?: (?:of|von|de|sur|di|\d{1,3}))* ?\d{0,3}$/;

/** A line of the text with what it is. */
export type SortedLine =
  | { what: 'row'; line: PrintedLine; sourceRow: number }
  | { what: 'words'; text: string; sourceRow: number }
  | { what: 'loose'; text: string; start: number; sourceRow: number };

/** Says of each line what it is. */
export class LineSorter {
  readonly sorted: SortedLine[] = [];
  readonly leftOut: CutTable['leftOut'] = [];
  readonly titles: string[] = [];
  header: PrintedHeader | null = null;
  headingRow: number | null = null;
  private readonly titlePatterns = new Set<string>();
  private readonly patternCounts = new Map<string, number>();

  constructor(
    private readonly lines: readonly string[],
    private readonly near: string,
  ) {
    for (const line of lines) {
      const pattern = patternOf(line);
      this.patternCounts.set(pattern, (this.patternCounts.get(pattern) ?? 0) + 1);
    }
    const headers = this.lines.map((line, index) => printedHeader(line, this.lines[index + 1] ?? ''));
    const first = headers.findIndex((header) => header !== null);
    this.header = headers[first] ?? null;
    this.headingRow = first === -1 ? null : first + 1;
    const firstRow = this.lines.findIndex((line) => printedLine(line).code !== '');
    const tableStart = first === -1 ? firstRow : Math.min(first, firstRow === -1 ? first : firstRow);
    for (let index = 0; index < this.lines.length; index += 1) {
      const header = headers[index];
      if (!header) this.sort(index, index < tableStart);
      else {
        if (index !== first) this.leaveOut(index, 'repeatedHeadings');
        index += header.span - 1;
      }
    }
  }

  private sort(index: number, isAbove: boolean): void {
    const line = this.lines[index] ?? '';
    const text = line.trim().replace(/ +/g, ' ');
    if (text === '') return;
    const sourceRow = index + 1;
    const row = printedLine(line);
    if (/^[-=_–—.\s|]{3,}$/.test(text)) this.leaveOut(index, 'ruler');
    else if (row.code !== '' && (row.figures.length > 0 || !isAbove))
      this.sorted.push({ what: 'row', line: row, sourceRow });
    else if (isAbove) {
      if (opensLegAbove(text, this.near)) this.sorted.push({ what: 'words', text, sourceRow });
      else {
        this.titles.push(text);
        this.titlePatterns.add(patternOf(text));
        this.leaveOut(index, 'aboveTable');
      }
    } else if (this.isPageLine(text)) this.leaveOut(index, 'pageLine');
    else if (isTotalTitle(row.name)) this.sorted.push({ what: 'row', line: row, sourceRow });
    else if (this.isHeadingOfPart(text)) this.sorted.push({ what: 'words', text, sourceRow });
    else if (isRowWithoutCode(row)) this.sorted.push({ what: 'row', line: row, sourceRow });
    else
      this.sorted.push({
        what: 'loose',
        text,
        start: line.length - line.trimStart().length,
        sourceRow,
      });
  }

  private isHeadingOfPart(text: string): boolean {
    if (legOf(text) || sectionOf(text) !== null) return true;
    const date = writtenDate(text, this.near);
    return date !== null && date !== 'malformed' && date.rest === '';
  }

  /** A line that stands above the table on the first page too, a page number, or one with figures that comes again. */
  private isPageLine(text: string): boolean {
    const pattern = patternOf(text);
    if (this.titlePatterns.has(pattern) || PAGE_NUMBER.test(foldWords(text))) return true;
    const isTelling = /\d/.test(text) || text.length > 40;
    return isTelling && printedLine(text).figures.length < 2 && (this.patternCounts.get(pattern) ?? 0) > 1;
  }

  private leaveOut(index: number, why: CutTable['leftOut'][number]['why']): void {
    this.leftOut.push({ sourceRow: index + 1, text: (this.lines[index] ?? '').trim(), why });
  }
}

function patternOf(line: string): string {
  return foldWords(line).replace(/\d+/g, '0');
}

/** A halt printed without a code, or a row whose code is spoilt: in doubt a row, so that it is reported and not lost. */
function isRowWithoutCode({ name, figures }: PrintedLine): boolean {
  const telling = figures.filter((figure) => figure.kind !== 'integer' && figure.kind !== 'dash').length;
  const isHalt = rolesOf(name).roles.length > 0 || /^refuel/i.test(name);
  return telling >= 2 || (telling === 1 && (isHalt || /^\p{L}{1,4} ?\d{1,3}[A-Z]{0,2}\b/u.test(name)));
}
