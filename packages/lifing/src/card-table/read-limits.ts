import { CARD_LIMITS } from '../card-limits';
import type { Interval } from '../model';
import { COUNTER_WORDS, choiceOf, choicesInWords, ON_REQUEST_WORDS } from './choice-words';
import { readDate } from './date-text';
import { foldWords } from './fold-words';
import { splitList } from './list-text';
import type { TableCard } from './model';
import { quoted, type RowCells } from './row-cells';
import { readScaled, writeScaled } from './scaled-number';
import { COUNTER_SCALE } from './units';

/** How often a card is due: the columns "Every", "Tolerance" and "Due date" together. */
export function readLimits(cells: RowCells): Pick<TableCard, 'intervals' | 'dateLimit'> {
  const dateLimit = readDateLimit(cells);
  if (isOnRequest(cells.text('every'))) return { intervals: [], dateLimit };
  const items = splitList(cells.text('every'), '|\n\r');
  if (items.length === 0 && cells.text('dueDate') === '') {
    cells.refuse(
      'every',
      'missing',
      `The card has no limit. Write how often, such as 60 stage km, or a due date; or ${ON_REQUEST_WORDS[0]} for one that only a reading, what happens or a person calls for.`,
    );
  }
  if (items.length > CARD_LIMITS.intervals) {
    cells.refuse(
      'every',
      'tooManyItems',
      `There are ${items.length} limits, and ${CARD_LIMITS.intervals} is the most. Take some out.`,
    );
    return { intervals: [], dateLimit };
  }
  const limits = items.map((item) => readLimit(cells, item));
  return { intervals: withTolerances(cells, limits), dateLimit };
}

function isOnRequest(text: string): boolean {
  return ON_REQUEST_WORDS.some((words) => foldWords(words) === foldWords(text));
}

function readDateLimit(cells: RowCells): TableCard['dateLimit'] {
  const text = cells.text('dueDate');
  if (text === '') return null;
  const dueAt = readDate(text);
  if (dueAt === null) {
    cells.refuse('dueDate', 'notADate', `${quoted(text)} is no date. Write it as 2027-03-31.`);
    return null;
  }
  if (dueAt < 0 || dueAt > CARD_LIMITS.dueAt)
    cells.refuse('dueDate', 'outOfRange', `${quoted(text)} is not between 1970 and 2100. Mend the year.`);
  return { dueAt };
}

/** `60 stage km`, `every service`, `2 days`. */
function readLimit(cells: RowCells, item: string): Interval | null {
  const match = /^(?:every\s+)?(?<amount>[+-]?[\d.,]*)\s*(?<unit>.*)$/isu.exec(item);
  const unit = match?.groups?.unit ?? '';
  const written = match?.groups?.amount ?? '';
  const counter = choiceOf(unit, COUNTER_WORDS);
  if (counter === null) {
    const units = choicesInWords(COUNTER_WORDS);
    const message = `${quoted(item)} does not say what is counted. Write a number and ${units}.`;
    cells.refuse('every', 'notAChoice', message);
    return null;
  }
  const { factor, decimals } = COUNTER_SCALE[counter];
  const every = readScaled(written === '' ? '1' : written, factor);
  if (every === null) {
    const kind = factor === 1 ? 'a whole number' : 'a number';
    cells.refuse('every', 'notANumber', `In ${quoted(item)} the amount is not ${kind}. Write it in figures.`);
    return null;
  }
  if (every < 1 || every > CARD_LIMITS.amount) {
    const most = writeScaled(Math.floor(CARD_LIMITS.amount / factor) * factor, factor, decimals);
    const message = `In ${quoted(item)} the amount must be more than 0 and at most ${most}. Mend it.`;
    cells.refuse('every', 'outOfRange', message);
  }
  return { counter, every, tolerance: 0 };
}

/** One tolerance for each limit in the same order and unit, or none at all. */
function withTolerances(cells: RowCells, limits: readonly (Interval | null)[]): Interval[] {
  const items = splitList(cells.text('tolerance'), '|\n\r');
  if (items.length > 0 && items.length !== limits.length) {
    const message = `There are ${items.length} tolerances for ${limits.length} limits. Write one for each limit, divided by |, or leave the cell empty.`;
    cells.refuse('tolerance', 'contradiction', message);
    return [];
  }
  return limits.flatMap((limit, index) => {
    const item = items[index];
    if (limit === null) return [];
    return [item === undefined ? limit : { ...limit, tolerance: readTolerance(cells, item, limit) }];
  });
}

function readTolerance(cells: RowCells, item: string, { counter }: Interval): number {
  const match = /^(?<amount>[+-]?[\d.,]+)\s*(?<unit>.*)$/su.exec(item);
  const { factor } = COUNTER_SCALE[counter];
  const unit = match?.groups?.unit ?? '';
  const [named] = COUNTER_WORDS[counter];
  const tolerance = readScaled(match?.groups?.amount ?? '', factor);
  if (tolerance === null) {
    const kind = factor === 1 ? 'a whole number' : 'a number';
    cells.refuse(
      'tolerance',
      'notANumber',
      `${quoted(item)} is not ${kind} of ${named}. Write it in figures.`,
    );
    return 0;
  }
  if (unit !== '' && choiceOf(unit, COUNTER_WORDS) !== counter) {
    const message = `${quoted(item)} belongs to a limit in ${named}. Write the tolerance in ${named} too.`;
    cells.refuse('tolerance', 'contradiction', message);
  }
  if (tolerance < 0 || tolerance > CARD_LIMITS.amount) {
    const message = `The tolerance ${quoted(item)} must be 0 or more, and less than the car will ever do. Mend it.`;
    cells.refuse('tolerance', 'outOfRange', message);
  }
  return tolerance;
}
