import { excerpt } from '../excerpt';
import type { Itinerary } from '../model';
import type { ListRow } from './list-reader';
import { choiceOf, listChoices, OUTCOME_WORDS } from './list-words';
import type { CarOutcome, CarRecord } from './model';
import { readCarStop, readPlace } from './read-car-stop';

const CAR_NUMBER_CHARACTERS = 8;
const CLASS_CHARACTERS = 20;

/** One row of the list; null when something in it cannot be read, which is told. */
export function readCarRecord(row: ListRow, itinerary: Itinerary): CarRecord | null {
  const carNumber = shortIn(row, 'car', CAR_NUMBER_CHARACTERS);
  const className = shortIn(row, 'className', CLASS_CHARACTERS);
  if (carNumber === '')
    row.refuse('car', 'car-missing', `Row ${row.row} has no car number. Type the one on the doors.`);
  const outcome = outcomeIn(row);
  const hasStopped = outcome === 'out' || outcome === 'outForDay';
  const stop = hasStopped ? readCarStop(row, itinerary) : null;
  const isSeen = outcome === 'notKnown' && row.text('stopped') !== '';
  const reached = isSeen ? readPlace(row, itinerary) : null;
  const backFromSection = backFromIn(row, outcome, itinerary);
  if (!carNumber || className === null || outcome === null || backFromSection === undefined) return null;
  if ((hasStopped && stop === null) || (isSeen && reached === null)) return null;
  return { carNumber, className, outcome, stop, reached, backFromSection };
}

function shortIn({ row, text, refuse }: ListRow, column: 'car' | 'className', most: number): string | null {
  const cell = text(column);
  if (cell.length <= most) return cell;
  const what = column === 'car' ? 'car number' : 'class';
  refuse(column, `${column}-too-long`, `“${excerpt(cell)}” in row ${row} is too long for a ${what}.`);
  return null;
}

function outcomeIn({ text, refuse }: ListRow): CarOutcome | null {
  const cell = text('outcome');
  if (cell === '') return 'notKnown';
  const outcome = choiceOf(OUTCOME_WORDS, cell);
  if (outcome === null)
    refuse(
      'outcome',
      'outcome-unknown',
      `“${excerpt(cell)}” does not say what happened. Write ${listChoices(OUTCOME_WORDS)}.`,
    );
  return outcome;
}

/** `undefined` when it cannot be read. */
function backFromIn(
  { row, text, refuse }: ListRow,
  outcome: CarOutcome | null,
  { points }: Itinerary,
): number | null | undefined {
  const cell = text('backFrom');
  if (cell === '') return null;
  const section = /^(?:section\s*)?(\d{1,2})$/i.exec(cell)?.[1];
  const number = Number(section);
  if (outcome !== null && outcome !== 'outForDay')
    refuse(
      'backFrom',
      'back-unexpected',
      `Row ${row} says from where the car went on. That needs “${OUTCOME_WORDS.outForDay[0]}” in it.`,
    );
  else if (section === undefined || !points.some((point) => point.section === number))
    refuse(
      'backFrom',
      'section-unknown',
      `“${excerpt(cell)}” in row ${row} is no section of the itinerary. Type its number.`,
    );
  else return number;
  return undefined;
}
