import { CARD_LIMITS } from '../card-limits';
import type { ReadingSpec } from '../job-card';
import { choiceOf, choicesInWords, READING_KIND_WORDS } from './choice-words';
import { readItem, splitList } from './list-text';
import type { CardTableCode } from './model';
import { quoted, type RowCells } from './row-cells';
import { readScaled } from './scaled-number';

/** Unit, decimals, positions, low, high, needed. */
const MOST_PARTS = 6;
const EXAMPLE = 'Pad thickness: wear; unit mm; decimals 1; at FL FR; low 3.0; needed';

/** The readings of one card: divided by `|`, each as its `EXAMPLE`. Ids are numbered. */
export function readReadings(cells: RowCells): ReadingSpec[] {
  const items = splitList(cells.text('readings'), '|\n\r');
  if (items.length > CARD_LIMITS.readings) {
    const message = `There are ${items.length} readings, and ${CARD_LIMITS.readings} is the most. Take some out.`;
    cells.refuse('readings', 'tooManyItems', message);
    return [];
  }
  return items.map((item, index) => readReading(cells, item, `reading-${index + 1}`));
}

type Say = (code: CardTableCode, message: string) => void;

function readReading(cells: RowCells, item: string, id: string): ReadingSpec {
  const [head = '', ...tail] = splitKeepingEmpty(item);
  const name = readItem(head);
  const say: Say = (code, message) =>
    cells.refuse('readings', code, `In the reading ${quoted(name)}: ${message}`);
  if (name === '') say('missing', `its name is missing. Write it before a colon, such as ${EXAMPLE}.`);
  if (name.length > CARD_LIMITS.readingNameCharacters)
    say('textTooLong', `the name has more than ${CARD_LIMITS.readingNameCharacters} characters. Shorten it.`);
  const [kindWords = '', ...parts] = splitList(tail.join(':'), ';');
  const kind = choiceOf(readItem(kindWords), READING_KIND_WORDS);
  if (kind === null)
    say(
      'notAChoice',
      `behind the colon comes ${choicesInWords(READING_KIND_WORDS)} first. Write it such as ${EXAMPLE}.`,
    );
  const spec = { id, name, kind: kind ?? 'hint', ...readParts(parts, say) };
  if (spec.low !== null && spec.high !== null && spec.low > spec.high)
    say('contradiction', 'low is above high. Swap them.');
  return spec;
}

/** The name and what follows its colon. */
function splitKeepingEmpty(item: string): string[] {
  const colon = /^(?<name>(?:\\[\s\S]|[^\\:])*)(?::(?<rest>[\s\S]*))?$/u.exec(item);
  return [(colon?.groups?.name ?? '').trim(), colon?.groups?.rest ?? ''];
}

type ReadingParts = Omit<ReadingSpec, 'id' | 'name' | 'kind'>;

function readParts(parts: readonly string[], say: Say): ReadingParts {
  const read: ReadingParts = { unit: '', decimals: 0, positions: [], low: null, high: null, required: false };
  if (parts.length > MOST_PARTS) {
    say(
      'tooManyItems',
      `there are ${parts.length} parts behind its kind, and ${MOST_PARTS} is the most. Divide readings by |.`,
    );
    return read;
  }
  // Limits are in the unit's last figure, so the number of decimals is wanted first.
  const decimals = parts.find((part) => /^decimals\b/i.test(part));
  if (decimals !== undefined) read.decimals = readDecimals(decimals, say);
  for (const part of parts) if (part !== decimals) readPart(part, read, say);
  return read;
}

function readDecimals(part: string, say: Say): number {
  const decimals = readScaled(part.slice('decimals'.length), 1);
  if (decimals !== null && decimals >= 0 && decimals <= CARD_LIMITS.decimals) return decimals;
  say(
    'outOfRange',
    `${quoted(part)} is not a number of decimals. Write decimals and a number from 0 to ${CARD_LIMITS.decimals}.`,
  );
  return 0;
}

function readPart(part: string, read: ReadingParts, say: Say): void {
  const match = /^(?<word>unit|at|low|high|needed)(?:\s+(?<value>[\s\S]*))?$/iu.exec(part);
  const value = match?.groups?.value ?? '';
  switch (match?.groups?.word?.toLowerCase()) {
    case 'unit':
      read.unit = readItem(value);
      if (read.unit.length > CARD_LIMITS.unitCharacters)
        say('textTooLong', `the unit has more than ${CARD_LIMITS.unitCharacters} characters. Shorten it.`);
      return;
    case 'at':
      read.positions = readPositions(value, say);
      return;
    case 'low':
      read.low = readValue(value, read.decimals, say);
      return;
    case 'high':
      read.high = readValue(value, read.decimals, say);
      return;
    case 'needed':
      read.required = true;
      return;
    default:
      say('notAChoice', `${quoted(part)} is not known. Write unit, decimals, at, low, high or needed.`);
  }
}

function readPositions(value: string, say: Say): string[] {
  const positions = splitList(value, ' ').map(readItem);
  if (positions.length > CARD_LIMITS.positions)
    say('tooManyItems', `there are more than ${CARD_LIMITS.positions} positions. Take some out.`);
  if (positions.some((position) => position.length > CARD_LIMITS.positionCharacters))
    say('textTooLong', `a position has more than ${CARD_LIMITS.positionCharacters} characters. Shorten it.`);
  return positions;
}

function readValue(text: string, decimals: number, say: Say): number | null {
  const value = readScaled(text, 10 ** decimals);
  const figures = text.trim().split(/[.,]/)[1]?.length ?? 0;
  if (value === null || figures > decimals) {
    say(
      'notANumber',
      `${quoted(text)} is not a number with at most ${decimals} decimals. Mend it, or write more decimals.`,
    );
    return null;
  }
  if (Math.abs(value) > CARD_LIMITS.value) say('outOfRange', `${quoted(text)} is too large. Mend it.`);
  return value;
}
