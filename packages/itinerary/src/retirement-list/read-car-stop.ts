import { excerpt } from '../excerpt';
import type { Itinerary } from '../model';
import type { ListRow } from '../pasted-list/list-row';
import type { ListColumn } from './list-columns';
import { CAUSE_WORDS, choiceOf, listChoices, SOURCE_WORDS } from './list-words';
import type { CarStop, CauseSource, StatedCause, StopPlace } from './model';
import { readStopPlace } from './read-stop-place';

const PART_CHARACTERS = 40;

/** Where and why the car of a row stopped; null when a cell of it cannot be read, which is told. */
export function readCarStop(row: ListRow<ListColumn>, itinerary: Itinerary): CarStop | null {
  const place = readPlace(row, itinerary);
  const cause = causeIn(row);
  const source = sourceIn(row);
  const part = row.text('part');
  if (part.length > PART_CHARACTERS)
    row.refuse(
      'part',
      'part-too-long',
      `“${excerpt(part)}” in row ${row.row} is too long for a part. One or two words do.`,
    );
  return place && cause && source ? { place, cause, part, source } : null;
}

/** The place a row names; null when it names none or it cannot be read, which is told. */
export function readPlace(
  { row, text, refuse }: ListRow<ListColumn>,
  itinerary: Itinerary,
): StopPlace | null {
  const cell = text('stopped');
  const place =
    cell === ''
      ? `Row ${row} does not say where the car stopped. Write “in” a stage, or “after” a stage or control.`
      : readStopPlace(cell, itinerary);
  if (typeof place !== 'string') return place;
  refuse('stopped', cell === '' ? 'place-missing' : 'place-malformed', place);
  return null;
}

function causeIn({ row, text, refuse }: ListRow<ListColumn>): StatedCause | null {
  const cell = text('cause');
  const cause = choiceOf(CAUSE_WORDS, cell);
  const said =
    cell === '' ? `Row ${row} does not say why the car stopped.` : `“${excerpt(cell)}” is no cause here.`;
  if (cause === null)
    refuse(
      'cause',
      cell === '' ? 'cause-missing' : 'cause-unknown',
      `${said} Write ${listChoices(CAUSE_WORDS)}.`,
    );
  return cause;
}

/** Where nobody is named, nobody is sure. */
function sourceIn({ text, refuse }: ListRow<ListColumn>): CauseSource | null {
  const cell = text('source');
  if (cell === '') return 'unsure';
  const source = choiceOf(SOURCE_WORDS, cell);
  if (source === null)
    refuse(
      'source',
      'source-unknown',
      `“${excerpt(cell)}” does not say who says so. Write ${listChoices(SOURCE_WORDS)}, or nothing.`,
    );
  return source;
}
