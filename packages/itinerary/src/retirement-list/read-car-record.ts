import { excerpt } from '../excerpt';
import type { Itinerary } from '../model';
import type { ListRow } from '../pasted-list/list-row';
import { readCarNumber } from '../pasted-list/read-car-number';
import type { ListColumn } from './list-columns';
import { choiceOf, listChoices, OUTCOME_WORDS } from './list-words';
import type { CarOutcome, CarRecord } from './model';
import { readCarStop, readPlace } from './read-car-stop';

const CLASS_CHARACTERS = 20;

/** One row of the list; null when something in it cannot be read, which is told. */
export function readCarRecord(row: ListRow<ListColumn>, itinerary: Itinerary): CarRecord | null {
  const carNumber = readCarNumber(row);
  const className = classIn(row);
  const outcome = outcomeIn(row);
  const hasStopped = outcome === 'out' || outcome === 'outForDay';
  const stop = hasStopped ? readCarStop(row, itinerary) : null;
  const isSeen = outcome === 'notKnown' && row.text('stopped') !== '';
  const reached = isSeen ? readPlace(row, itinerary) : null;
  const backFromSection = backFromIn(row, outcome, itinerary);
  if (carNumber === null || className === null || outcome === null || backFromSection === undefined)
    return null;
  if ((hasStopped && stop === null) || (isSeen && reached === null)) return null;
  return { carNumber, className, outcome, stop, reached, backFromSection };
}

function classIn({ row, text, refuse }: ListRow<ListColumn>): string | null {
  const cell = text('className');
  if (cell.length <= CLASS_CHARACTERS) return cell;
  refuse('className', 'className-too-long', `“${excerpt(cell)}” in row ${row} is too long for a class.`);
  return null;
}

function outcomeIn({ text, refuse }: ListRow<ListColumn>): CarOutcome | null {
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
  { row, text, refuse }: ListRow<ListColumn>,
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
