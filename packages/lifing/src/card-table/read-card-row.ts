import type { ConditionName } from '@halfshaft/itinerary';
import { CARD_LIMITS } from '../card-limits';
import type { JobCard, Look } from '../job-card';
import { KIND_WORDS, PLACE_WORDS, TOGETHER_WORDS, YES_NO_WORDS } from './choice-words';
import { HEADINGS } from './columns';
import { readItem, splitList } from './list-text';
import type { CardField, TableCard } from './model';
import { readLimits } from './read-limits';
import { readReadings } from './read-readings';
import { quoted, type RowCells, readAmount, readChoice, readText } from './row-cells';
import { PER_MILLE_IN_PERCENT, SECONDS_IN_MINUTE } from './units';

const CONDITIONS: readonly ConditionName[] = ['dust', 'water', 'rough', 'night', 'jumps'];

/** One row as a card. What was refused on the way holds nonsense: the table is not taken then. */
export function readCardRow(cells: RowCells): TableCard {
  const { looks, kind } = readLooksAndKind(cells);
  return {
    kind,
    name: readName(cells),
    place: readChoice(cells, 'place', PLACE_WORDS, null) ?? 'wholeCar',
    ...readLimits(cells),
    conditionFactors: readConditions(cells),
    combineConditions: readChoice(cells, 'together', TOGETHER_WORDS, 'largest') ?? 'largest',
    ...readTimes(cells),
    remoteAllowed: readChoice<'yes' | 'no'>(cells, 'remote', YES_NO_WORDS, 'yes') === 'yes',
    ...readNewPart(cells, kind),
    looks,
    readings: readReadings(cells),
    needsSignature: readChoice<'yes' | 'no'>(cells, 'signature', YES_NO_WORDS, 'no') === 'yes',
    caution: readText(cells, 'caution', CARD_LIMITS.cautionCharacters),
    tools: readItems(cells, 'tools', { items: CARD_LIMITS.tools, characters: CARD_LIMITS.toolCharacters }),
    instruction: readText(cells, 'instruction', CARD_LIMITS.instructionCharacters),
    // Which starter card it began as, so that what happens to the car goes on calling it; nobody writes this by hand.
    starterId: readText(cells, 'starter', CARD_LIMITS.starterCharacters) || null,
  };
}

function readName(cells: RowCells): string {
  const name = readText(cells, 'name', CARD_LIMITS.nameCharacters);
  if (name === '')
    cells.refuse('name', 'missing', 'The card has no name. Write one, or clear the whole row.');
  return name;
}

function readTimes(cells: RowCells): Pick<TableCard, 'seconds' | 'people' | 'leastServiceSeconds'> {
  const inMinutes = (seconds: number) => seconds / SECONDS_IN_MINUTE;
  return {
    seconds: readAmount(cells, 'minutes', {
      factor: SECONDS_IN_MINUTE,
      least: inMinutes(CARD_LIMITS.leastSeconds),
      most: inMinutes(CARD_LIMITS.mostSeconds),
      whenEmpty: null,
      example: '4',
    }),
    people: readAmount(cells, 'people', {
      factor: 1,
      least: 1,
      most: CARD_LIMITS.people,
      whenEmpty: 1,
      example: '2',
    }),
    leastServiceSeconds: readAmount(cells, 'shortestService', {
      factor: SECONDS_IN_MINUTE,
      least: 0,
      most: inMinutes(CARD_LIMITS.leastServiceSeconds),
      whenEmpty: 0,
      example: '20',
    }),
  };
}

function readConditions(cells: RowCells): TableCard['conditionFactors'] {
  const factors: TableCard['conditionFactors'] = {};
  for (const name of CONDITIONS) {
    if (cells.text(name) === '') continue;
    const percent = readAmount(cells, name, {
      factor: PER_MILLE_IN_PERCENT,
      least: (CARD_LIMITS.leastFactor - 1000) / PER_MILLE_IN_PERCENT,
      most: (CARD_LIMITS.mostFactor - 1000) / PER_MILLE_IN_PERCENT,
      whenEmpty: 0,
      example: '30',
    });
    factors[name] = 1000 + percent;
  }
  return factors;
}

function readLooksAndKind(cells: RowCells): { kind: JobCard['kind']; looks: Look[] } {
  const most = { items: CARD_LIMITS.looks, characters: CARD_LIMITS.lookCharacters };
  const looks = readItems(cells, 'looks', most).map((words, index) => ({ id: `look-${index + 1}`, words }));
  const kind = readChoice(cells, 'kind', KIND_WORDS, looks.length > 0 ? 'round' : 'job') ?? 'job';
  if (kind === 'round' && looks.length === 0)
    cells.refuse('looks', 'contradiction', 'A round has looks. Write them divided by |, or make it a job.');
  if (cells.text('kind') !== '' && kind === 'job' && looks.length > 0)
    cells.refuse('looks', 'contradiction', 'A job has no looks. Clear this cell, or make it a round.');
  return { kind, looks };
}

/** An empty cell says nothing: what the card was before, or began as, goes on to count. */
function readNewPart(cells: RowCells, kind: JobCard['kind']): Pick<TableCard, 'fitsNewPart'> {
  if (cells.text('newPart') === '') return {};
  const fitsNewPart = readChoice<'yes' | 'no'>(cells, 'newPart', YES_NO_WORDS, null) === 'yes';
  if (fitsNewPart && kind === 'round')
    cells.refuse(
      'newPart',
      'contradiction',
      'A round fits no new part: it looks at several. Write no, or make a job of it.',
    );
  return { fitsNewPart };
}

function readItems(cells: RowCells, field: CardField, most: { items: number; characters: number }): string[] {
  const items = splitList(cells.text(field), '|\n\r').map(readItem);
  if (items.length > most.items) {
    const message = `${HEADINGS[field]} has ${items.length} entries, and ${most.items} is the most. Take some out.`;
    cells.refuse(field, 'tooManyItems', message);
  }
  const long = items.find((item) => item.length > most.characters);
  if (long !== undefined)
    cells.refuse(
      field,
      'textTooLong',
      `${quoted(long)} has more than ${most.characters} characters. Shorten it.`,
    );
  return items;
}
