import type { PlacedProblem } from '../events/contract-resolver';
import type { CardForm } from './card-form';
import { COUNTER_UNITS } from './units';

/** The contract's field → the form's, where they are called otherwise. */
const RENAMED: readonly [RegExp, string][] = [
  [/^intervals/, 'limits'],
  [/^seconds$/, 'minutes'],
  [/^leastServiceSeconds$/, 'leastServiceMinutes'],
  [/^dateLimit.*/, 'dueDate'],
  [/^conditionFactors/, 'conditions'],
  [/^looks.*/, 'looks'],
  [/^tools.*/, 'tools'],
  [/^(readings\.\d+)\.id$/, '$1.name'],
  [/^(readings\.\d+\.positions).*/, '$1'],
];

const LIMIT = /^limits\.(\d+)\.(every|tolerance)$/;
const READING_LIMIT = /^readings\.(\d+)\.(low|high)$/;
const CONDITION = /^conditions\./;

/**
 * A problem of the contract at the field of the form it stands in, in the unit typed there: the contract counts metres
 * and seconds, the form km and minutes. `path` may begin with `card.`, as in an answer of the server.
 */
export function placeCardProblem({ path, message }: PlacedProblem, form: CardForm): PlacedProblem {
  const own = path.replace(/^card\./, '');
  const placed = RENAMED.reduce((name, [pattern, next]) => name.replace(pattern, next), own);
  return { path: placed, message: inUnitsOfForm(placed, form) ?? message };
}

function inUnitsOfForm(path: string, form: CardForm): string | null {
  const [, limitAt, side] = LIMIT.exec(path) ?? [];
  if (limitAt !== undefined) return limitSentence(form, Number(limitAt), side === 'tolerance');
  if (path === 'minutes') return 'The time must be from 0.5 to 240 minutes.';
  if (path === 'leastServiceMinutes') return 'The shortest service must be from 0 to 600 minutes.';
  if (path === 'dueDate') return 'Type the date as year-month-day, such as 2026-06-13, or leave it empty.';
  if (CONDITION.test(path)) return 'Type how many percent faster, from −75 to 400, or leave it empty.';
  const [, readingAt] = READING_LIMIT.exec(path) ?? [];
  return readingAt === undefined ? null : readingSentence(form, Number(readingAt));
}

function limitSentence(form: CardForm, index: number, isTolerance: boolean): string {
  const unit = COUNTER_UNITS[form.limits[index]?.counter ?? 'services'];
  const whole = unit.factor === 1 ? 'a whole number' : 'a number';
  return isTolerance
    ? `The tolerance must be ${whole} of ${unit.label}, 0 or more.`
    : `How often must be ${whole} of ${unit.label} above 0, such as ${unit.example}.`;
}

function readingSentence(form: CardForm, index: number): string | null {
  const reading = form.readings[index];
  const low = Number(reading?.low.replace(',', '.'));
  const high = Number(reading?.high.replace(',', '.'));
  // Both are numbers and in the wrong order: the contract's own sentence says so.
  if (reading?.low && reading.high && low > high) return null;
  const figures = Number(reading?.decimals);
  return figures === 0
    ? 'This limit must be a whole number, or empty. For a fraction, choose how the reading is shown.'
    : `This limit must be a number with at most ${figures} ${figures === 1 ? 'figure' : 'figures'} after the point, or empty.`;
}
