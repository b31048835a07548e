import type { ItineraryProblem } from '../model';
import type { Starter } from './start-list';

const HEADINGS = ['Car number', 'Start position', 'From section'] as const;
const CAR_NUMBER_CHARACTERS = 8;
export const MAX_START_POSITION = 300;
export const MAX_START_SECTION = 99;

/** One row of a start list: the starter, or what is wrong with which of its cells. */
export function readStarter(
  cells: readonly string[],
  row: number,
  section: number,
): Starter | ItineraryProblem[] {
  const problems: ItineraryProblem[] = [];
  const refuse = (column: number, code: string, message: string) =>
    problems.push({ row, column, field: HEADINGS[column - 1] ?? null, code, message, severity: 'error' });
  const [carNumber = '', place = '', from = '', ...more] = cells;
  const position = wholeIn(place, MAX_START_POSITION);
  const startsFrom = from === '' ? section : wholeIn(from, MAX_START_SECTION);
  if (carNumber === '') refuse(1, 'car-missing', `Row ${row} has no car number. Type the one on the doors.`);
  if (carNumber.length > CAR_NUMBER_CHARACTERS)
    refuse(1, 'car-malformed', `“${carNumber}” in row ${row} is too long for a car number.`);
  if (position === null)
    refuse(
      2,
      'position-malformed',
      `${said(place)} in row ${row} is no start position. Type a number from 1 to 300.`,
    );
  if (startsFrom === null)
    refuse(3, 'section-malformed', `${said(from)} in row ${row} is no section. Type a number from 1 to 99.`);
  if (more.some((cell) => cell !== ''))
    refuse(
      4,
      'too-many-cells',
      `Row ${row} has more than car number, position and section. Take the rest out.`,
    );
  if (problems.length > 0 || position === null || startsFrom === null) return problems;
  return { carNumber, position, section: startsFrom };
}

function wholeIn(text: string, most: number): number | null {
  const value = /^\d{1,4}\.?$/.test(text) ? Number.parseInt(text, 10) : 0;
  return value >= 1 && value <= most ? value : null;
}

function said(text: string): string {
  return text === '' ? 'An empty cell' : `“${text}”`;
}
