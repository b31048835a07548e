import { type ChoiceWords, choiceOf, choicesInWords } from './choice-words';
import { HEADINGS } from './columns';
import { readHarmless } from './harmless-cell';
import type { CardField, CardTableCode } from './model';
import { readScaled } from './scaled-number';

/** Tells that the cell of this column is wrong. The table is then refused, so what a reader returns besides counts no more. */
export type Refuse = (field: CardField, code: CardTableCode, message: string) => void;

/** The cells of one card, by column, and what to call when one is wrong. */
export interface RowCells {
  /** '' where the table has no such column. */
  text: (field: CardField) => string;
  refuse: Refuse;
}

const MOST_QUOTED = 30;

/** A cell as it is quoted in a sentence. */
export function quoted(text: string): string {
  const line = text.replace(/\s+/g, ' ');
  return `“${line.length > MOST_QUOTED ? `${line.slice(0, MOST_QUOTED)}…` : line}”`;
}

export function readText(cells: RowCells, field: CardField, most: number): string {
  const text = cells.text(field);
  if (text.length > most) {
    const message = `${HEADINGS[field]} is ${text.length} characters long, and ${most} is the most. Shorten it.`;
    cells.refuse(field, 'textTooLong', message);
  }
  return text;
}

export function readChoice<Choice extends string>(
  cells: RowCells,
  field: CardField,
  choices: ChoiceWords<Choice>,
  whenEmpty: Choice | null,
): Choice | null {
  const text = cells.text(field);
  if (text === '' && whenEmpty !== null) return whenEmpty;
  const choice = choiceOf(text, choices);
  if (choice !== null) return choice;
  const asked = `Write ${choicesInWords(choices)}.`;
  if (text === '') cells.refuse(field, 'missing', `${HEADINGS[field]} is empty. ${asked}`);
  else cells.refuse(field, 'notAChoice', `${quoted(text)} is not known here. ${asked}`);
  return null;
}

export interface NumberRule {
  /** How many of the card's own units one typed unit is. */
  factor: number;
  /** In the typed unit. */
  least: number;
  most: number;
  /** Null when it must be there. */
  whenEmpty: number | null;
  example: string;
}

/** In the card's own unit. */
export function readAmount(cells: RowCells, field: CardField, rule: NumberRule): number {
  const text = cells.text(field);
  const name = HEADINGS[field];
  if (text === '') {
    if (rule.whenEmpty === null)
      cells.refuse(field, 'missing', `${name} is empty. Write a number, such as ${rule.example}.`);
    return rule.whenEmpty ?? 0;
  }
  const amount = readScaled(text, rule.factor);
  if (amount === null) {
    const kind = rule.factor === 1 ? 'a whole number' : 'a number';
    cells.refuse(field, 'notANumber', `${quoted(text)} is not ${kind}. Write one, such as ${rule.example}.`);
    return 0;
  }
  if (amount < rule.least * rule.factor || amount > rule.most * rule.factor) {
    const range = `a number from ${rule.least} to ${rule.most}`;
    cells.refuse(field, 'outOfRange', `${name} is ${quoted(text)}. Write ${range}.`);
  }
  return amount;
}

/** The cells of one row, each freed of the apostrophe that made it harmless. */
export function rowCells(
  cells: readonly string[],
  columns: ReadonlyMap<CardField, number>,
  refuse: Refuse,
): RowCells {
  const text = (field: CardField) => {
    const column = columns.get(field);
    return readHarmless(column === undefined ? '' : (cells[column] ?? '')).trim();
  };
  return { text, refuse };
}
