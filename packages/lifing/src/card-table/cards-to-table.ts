import type { Counter, Interval } from '../model';
import {
  COUNTER_WORDS,
  KIND_WORDS,
  ON_REQUEST_WORDS,
  PLACE_WORDS,
  TOGETHER_WORDS,
  YES_NO_WORDS,
} from './choice-words';
import { FIELDS, HEADINGS } from './columns';
import { csvText } from './csv-text';
import { writeDate } from './date-text';
import { writeItem } from './list-text';
import type { CardField, TableCard } from './model';
import { writeScaled } from './scaled-number';
import { COUNTER_SCALE, MINUTE_DECIMALS, PER_MILLE_IN_PERCENT, SECONDS_IN_MINUTE } from './units';
import { writeReading } from './write-reading';

const BETWEEN_ITEMS = ' | ';

/**
 * Cards as a table for a spreadsheet: a row of headings, then a row a card, by RFC 4180 with commas and CRLF. Amounts
 * are in the units people use (km, hours, minutes, percent). Several limits, looks, readings and tools stand in one
 * cell, divided by `|`. Text that a spreadsheet would run as a formula is made harmless. `readCardTable` gives the same
 * cards back, with the ids of looks and readings numbered afresh.
 *
 * @example
 * cardsToTable(starterCards('front', 'gravel')).split('\r\n')[1]
 */
export function cardsToTable(cards: readonly TableCard[]): string {
  const rows = [
    FIELDS.map((field) => HEADINGS[field]),
    ...cards.map((card) => {
      const cells = cellsOf(card);
      return FIELDS.map((field) => cells[field]);
    }),
  ];
  return csvText(rows);
}

function cellsOf(card: TableCard): Record<CardField, string> {
  const minutes = (seconds: number) => writeScaled(seconds, SECONDS_IN_MINUTE, MINUTE_DECIMALS);
  return {
    name: card.name,
    kind: KIND_WORDS[card.kind][0],
    place: PLACE_WORDS[card.place][0],
    every: everyCell(card),
    tolerance: card.intervals.some(({ tolerance }) => tolerance > 0)
      ? card.intervals.map(({ counter, tolerance }) => amount(counter, tolerance)).join(BETWEEN_ITEMS)
      : '',
    dueDate: card.dateLimit === null ? '' : writeDate(card.dateLimit.dueAt),
    minutes: minutes(card.seconds),
    people: String(card.people),
    shortestService: card.leastServiceSeconds === 0 ? '' : minutes(card.leastServiceSeconds),
    remote: yesNo(card.remoteAllowed),
    ...conditionCells(card.conditionFactors),
    together: TOGETHER_WORDS[card.combineConditions][0],
    newPart: card.fitsNewPart === undefined ? '' : yesNo(card.fitsNewPart),
    looks: card.looks.map((look) => writeItem(look.words, '|')).join(BETWEEN_ITEMS),
    readings: card.readings.map(writeReading).join(BETWEEN_ITEMS),
    signature: yesNo(card.needsSignature),
    caution: card.caution,
    tools: card.tools.map((tool) => writeItem(tool, '|')).join(BETWEEN_ITEMS),
    instruction: card.instruction,
    starter: card.starterId ?? '',
  };
}

/** An empty cell would be taken for a slip. */
function everyCell({ intervals, dateLimit }: TableCard): string {
  if (intervals.length === 0 && dateLimit === null) return ON_REQUEST_WORDS[0];
  return intervals.map(limit).join(BETWEEN_ITEMS);
}

function limit({ counter, every }: Interval): string {
  const [many, one = many] = COUNTER_WORDS[counter];
  const written = amount(counter, every);
  return `${written} ${written === '1' ? one : many}`;
}

function amount(counter: Counter, whole: number): string {
  const { factor, decimals } = COUNTER_SCALE[counter];
  return writeScaled(whole, factor, decimals);
}

function yesNo(value: boolean): string {
  return YES_NO_WORDS[value ? 'yes' : 'no'][0];
}

/** By how much more it wears at each condition's worst, in percent. */
function conditionCells(factors: TableCard['conditionFactors']) {
  const percent = (factor: number | undefined) =>
    factor === undefined ? '' : writeScaled(factor - 1000, PER_MILLE_IN_PERCENT, 1);
  return {
    dust: percent(factors.dust),
    water: percent(factors.water),
    rough: percent(factors.rough),
    night: percent(factors.night),
    jumps: percent(factors.jumps),
  };
}
