import { LEG_TOTAL_TOLERANCE_METRES, ROW_TOTAL_TOLERANCE_METRES } from '../limits';
import { readDuration, readGap, readIntervals, readKilometres, readWallClock } from '../read-values';
import { controlCode, isUntimedCode } from '../reading/control-code';
import { readItinerary } from '../reading/read-itinerary';
import type { ColumnMeaning, ReadHeading } from '../reading/read-itinerary-model';
import { isTotalTitle } from '../reading/row-words';
import { writtenDistance } from '../reading/written-distance';
import { writtenClock, writtenDuration } from '../reading/written-time';
import type { ItineraryShape } from './shape';

/** Columns whose figures mean something on the row of a control or stage. */
const BEARING: readonly ColumnMeaning[] = [
  'id',
  'stageKm',
  'roadKm',
  'totalKm',
  'target',
  'due',
  'gap',
  'section',
  'interval',
];
interface FigureCell {
  line: number;
  text: string;
  heading: ReadHeading;
  isSum: boolean;
}

/** Writes one wrong character into one figure of a row: another digit, a letter, one digit more or less. */
export function changeFigure(shape: ItineraryShape, next: (below: number) => number) {
  const lines = shape.text.split(/(?<=\n)/);
  const cells = figureCells(shape).filter((cell) => (lines[cell.line] ?? '').includes(cell.text));
  const cell = cells[next(cells.length)];
  if (!cell) throw new RangeError(`changeFigure: “${shape.title}” has no figures`);
  const line = lines[cell.line] ?? '';
  const spots = [...line.matchAll(new RegExp(cell.text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'), 'g'))];
  const spot = spots[next(spots.length)]?.index ?? 0;
  const changed = changeOne(cell.text, next);
  lines[cell.line] = line.slice(0, spot) + changed + line.slice(spot + cell.text.length);
  return {
    text: lines.join(''),
    isOtherValue: isOtherValue(cell, changed, spots.length > 1),
    what: `row ${cell.line + 1}: “${cell.text}” became “${changed}”`,
  };
}

function figureCells(shape: ItineraryShape): FigureCell[] {
  const { table } = readItinerary(shape.text, shape.options);
  if (!table) return [];
  const idColumn = table.headings.findIndex((heading) => heading.meaning === 'id');
  return table.rows.flatMap((row) => {
    const texts = row.cells.map((cell) => cell.text);
    const title = texts.find((text) => text !== '') ?? '';
    const isSum = isTotalTitle(title) && !controlCode(texts[idColumn] ?? '');
    if (!isSum && !controlCode(texts[idColumn] ?? '')) return [];
    return texts.flatMap((text, column) => {
      const heading = table.headings[column];
      const isBearing =
        heading && BEARING.includes(heading.meaning) && /\d/.test(text) && !text.startsWith('(');
      const isName = heading?.meaning === 'id' && (isSum || isUntimedCode(controlCode(text)?.id ?? ''));
      return isBearing && !isName ? [{ line: row.sourceRow - 1, text, heading, isSum }] : [];
    });
  });
}

function changeOne(text: string, next: (below: number) => number): string {
  const digits = [...text.matchAll(/\d/g)].map((match) => match.index);
  const at = digits[next(digits.length)] ?? 0;
  const digit = Number(text[at]);
  const [before, after] = [text.slice(0, at), text.slice(at + 1)];
  switch (next(4)) {
    case 0:
      return `${before}x${after}`;
    case 1:
      return before + after;
    case 2:
      return `${before}${text[at]}${1 + next(9)}${after}`;
    default:
      return `${before}${(digit + 1 + next(9)) % 10}${after}`;
  }
}

/** Sums are checked with a tolerance; a figure that stands twice in its row may have been changed in the sum. */
function isOtherValue(cell: FigureCell, changed: string, isTwice: boolean): boolean {
  const [one, other] = [worthOf(cell.text, cell.heading), worthOf(changed, cell.heading)];
  if (typeof one !== 'number' || typeof other !== 'number') {
    // An empty cell is not a figure of another value: what it said is often said by the others too.
    return changed !== '' && JSON.stringify(one) !== JSON.stringify(other);
  }
  const isChecked = cell.isSum || cell.heading.meaning === 'totalKm' || isTwice;
  const tolerance = cell.isSum ? LEG_TOTAL_TOLERANCE_METRES : isChecked ? ROW_TOTAL_TOLERANCE_METRES : 0;
  return Math.abs(one - other) > tolerance;
}

/** What a cell says, as far as it can be read; itself where it cannot. */
function worthOf(text: string, { meaning, unit }: ReadHeading): unknown {
  switch (meaning) {
    case 'stageKm':
    case 'roadKm':
    case 'totalKm':
      return readKilometres(writtenDistance(text, unit)) ?? text;
    case 'target':
      return readDuration(writtenDuration(text, unit)) ?? text;
    case 'gap':
      return readGap(writtenDuration(text, unit)) ?? text;
    case 'due':
      return readWallClock(writtenClock(text)) ?? text;
    case 'interval':
      return readIntervals(text) ?? text;
    case 'id':
      return controlCode(text)?.id ?? text;
    default:
      return text;
  }
}
