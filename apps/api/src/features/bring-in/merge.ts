import { randomUUID } from 'node:crypto';
import type { CarriedEvent, CarriedHead } from '@halfshaft/contract';
import type { TeamTx } from '@halfshaft/store';
import { type Sums, whoseStands } from '@halfshaft/worklog';
import { AppError } from '../../errors';
import { readItineraryText } from '../event/service';
import {
  createCards,
  createCarRow,
  createEntryRow,
  createVersion,
  findTaken,
  hasBulletin,
  loadCards,
  loadCars,
  MISFIT,
  sumOf,
  updateCard,
  updateCarRow,
  updateEntryRow,
  updateEventDates,
  updateSettings,
} from './data';
import { nameOf, newestOf } from './file';

/** What managers change, event and cars alike, may have been changed on both servers. */
export interface Merging {
  tx: TeamTx;
  file: CarriedEvent;
  now: number;
  /** Made after every file that came in before. */
  isNewer: boolean;
  seen: Sums;
}

/** Takes theirs where it stands, and says so; says too where both changed it and ours was left. */
async function settle(
  { file, seen, isNewer }: Merging,
  thing: { name: string; words: string; ours: unknown; theirs: unknown },
  notes: string[],
  take: () => Promise<void>,
): Promise<void> {
  const { name, words } = thing;
  const ours = thing.ours === undefined ? undefined : sumOf(thing.ours);
  const sides = { ours, theirs: sumOf(thing.theirs), theySaw: file.head.seen[name], weSaw: seen[name] };
  if (ours !== undefined && !isNewer) return;
  const stands = whoseStands(sides);
  if (stands === 'both') notes.push(`${words} was changed on both servers. What this one had was left.`);
  if (stands !== 'theirs') return;
  await take();
  if (ours !== undefined) notes.push(`${words} was changed on the other server and now stands here too.`);
}

export async function takeCars(merging: Merging): Promise<string[]> {
  const { tx, file, now } = merging;
  const { cars, cards } = file.head;
  const notes: string[] = [];
  const carIds = cars.map(({ carId }) => carId);
  const carsHere = new Map((await loadCars(tx, carIds)).map((car) => [car.carId, car]));
  for (const car of cars) {
    const ours = carsHere.get(car.carId);
    const thing = { name: nameOf.car(car.carId), words: `The car “${car.name}”`, ours, theirs: car };
    await settle(merging, thing, notes, async () => {
      if (ours) await updateCarRow(tx, car.carId, car);
      else await createCarRow(tx, car.carId, car, now);
    });
  }
  const found = await loadCards(tx, { id: { in: cards.map(({ cardId }) => cardId) } });
  const cardsHere = new Map(found.map((card) => [card.cardId, card]));
  await createCards(
    tx,
    cards.filter(({ cardId }) => !cardsHere.has(cardId)),
    now,
  );
  for (const card of cards.filter(({ cardId }) => cardsHere.has(cardId))) {
    const ours = cardsHere.get(card.cardId);
    const thing = {
      name: nameOf.card(card.cardId),
      words: `The card “${card.card.name}”`,
      ours,
      theirs: card,
    };
    await settle(merging, thing, notes, () => updateCard(tx, card));
  }
  return notes;
}

export async function takeSettings(merging: Merging, ours: CarriedHead, notes: string[]): Promise<void> {
  const { eventId, settings } = merging.file.head.event;
  const words = 'What is set for the event (penalties, conditions, tyres)';
  const thing = { name: nameOf.settings(), words, ours: ours.event.settings, theirs: settings };
  await settle(merging, thing, notes, () => updateSettings(merging.tx, eventId, settings));
}

export async function takeItinerary(merging: Merging, ours: CarriedHead, notes: string[]): Promise<void> {
  const { tx, file } = merging;
  const { eventId } = file.head.event;
  const theirs = newestOf(file.head);
  const last = newestOf(ours);
  const thing = { name: nameOf.itinerary(), words: 'The itinerary', ours: last.text, theirs: theirs.text };
  await settle(merging, thing, notes, async () => {
    const read = readItineraryText(theirs.text);
    if (!read.ok) throw new AppError('badInput', `The itinerary cannot be read. ${MISFIT}`);
    const { bulletinNumber: number } = theirs;
    const bulletinNumber = number !== null && (await hasBulletin(tx, eventId, number)) ? null : number;
    const isHere = ours.versions.some(({ versionId }) => versionId === theirs.versionId);
    const versionId = isHere ? randomUUID() : theirs.versionId;
    const version = { ...theirs, versionId, bulletinNumber, number: last.number + 1 };
    await createVersion(tx, eventId, { ...version, itinerary: read.itinerary });
    await updateEventDates(tx, eventId, theirs.text);
  });
}

/** Returns the file in the words of this server: a car that was entered on both is one entry, the one here. */
export async function takeEntries(
  merging: Merging,
  ours: CarriedHead,
  notes: string[],
): Promise<CarriedEvent> {
  const { tx, now } = merging;
  let file = merging.file;
  const { eventId } = file.head.event;
  const here = new Map(ours.entries.map((entry) => [entry.entryId, entry]));
  for (const entry of merging.file.head.entries) {
    const known = here.get(entry.entryId);
    const twin = ours.entries.find(({ carId }) => carId === entry.carId);
    const words = `The entry of car ${entry.carNumber}`;
    if (!known && twin) {
      file = JSON.parse(JSON.stringify(file).replaceAll(entry.entryId, twin.entryId)) as CarriedEvent;
      notes.push(
        `Car ${entry.carNumber} was entered on both servers. Its work came to the entry of this one.`,
      );
      continue;
    }
    const thing = { name: nameOf.entry(entry.entryId), words, ours: known, theirs: entry };
    await settle(merging, thing, notes, async () => {
      const startPosition = await freePosition(tx, eventId, entry);
      if (startPosition !== entry.startPosition) {
        notes.push(
          `${words}: start position ${entry.startPosition} is taken here, so it got ${startPosition}.`,
        );
      }
      if (known) await updateEntryRow(tx, entry.entryId, entryFieldsOf({ ...entry, startPosition }));
      else await createEntryRow(tx, { ...entry, eventId, startPosition }, now);
    });
  }
  return file;
}

function entryFieldsOf({
  carNumber,
  startPosition,
  positionsBySection,
  people,
}: CarriedHead['entries'][number]) {
  return { carNumber, startPosition, positionsBySection, people };
}

async function freePosition(
  tx: TeamTx,
  eventId: string,
  entry: CarriedHead['entries'][number],
): Promise<number> {
  for (let startPosition = entry.startPosition; ; startPosition += 1) {
    const place = { eventId, carId: null, startPosition };
    if ((await findTaken(tx, place, entry.entryId)) === null) return startPosition;
  }
}
