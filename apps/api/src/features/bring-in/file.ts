import type { CarriedAction, CarriedEvent, CarriedHead } from '@halfshaft/contract';
import { formatClock, type Itinerary } from '@halfshaft/itinerary';
import {
  type EntryNames,
  entryInWords,
  type LogEntry,
  problemOfCarriedLog,
  type Sums,
} from '@halfshaft/worklog';
import { AppError } from '../../errors';
import { readItineraryText } from '../event/service';
import { MISFIT, sumOf } from './data';

/** What can be told from the file alone. */
export function checkFile({ head, actions }: CarriedEvent): void {
  const carOfCard = new Map(head.cards.map(({ cardId, carId }) => [cardId, carId]));
  const carOf = new Map(head.entries.map(({ entryId, carId }) => [entryId, carId]));
  const cars = new Set(head.cars.map(({ carId }) => carId));
  const people = new Set(head.people.map(({ personId }) => personId));
  const isWhole =
    people.size === head.people.length &&
    cars.size === head.cars.length &&
    carOfCard.size === head.cards.length &&
    carOf.size === head.entries.length &&
    [...carOfCard.values(), ...carOf.values()].every((carId) => cars.has(carId)) &&
    [head.madeBy, ...head.versions.map(({ savedBy }) => savedBy)].every((id) => people.has(id));
  if (!isWhole) throw new AppError('badInput', MISFIT);
  const problem = problemOfCarriedLog(actions.map(withLogEntries), { people, carOf, carOfCard });
  if (problem) throw new AppError('badInput', `${problem} ${MISFIT}`);
}

export function withLogEntries(action: CarriedAction): { actionId: string; entries: LogEntry[] } {
  const { actionId, deviceId, entries } = action;
  return { actionId, entries: entries.map((entry) => ({ ...entry, actionId, deviceId })) };
}

/** What a manager may change, by name: see `whoseStands`. */
export const nameOf = {
  settings: () => 'settings',
  itinerary: () => 'itinerary',
  car: (id: string) => `car ${id}`,
  card: (id: string) => `card ${id}`,
  entry: (id: string) => `entry ${id}`,
};

export function sumsOf(head: CarriedHead): Sums {
  return Object.fromEntries([
    [nameOf.settings(), sumOf(head.event.settings)],
    [nameOf.itinerary(), sumOf(newestOf(head).text)],
    ...head.cars.map((car) => [nameOf.car(car.carId), sumOf(car)]),
    ...head.cards.map((card) => [nameOf.card(card.cardId), sumOf(card)]),
    ...head.entries.map((entry) => [nameOf.entry(entry.entryId), sumOf(entry)]),
  ]);
}

export function newestOf({ versions }: CarriedHead): CarriedHead['versions'][number] {
  const [newest] = [...versions].sort((one, other) => other.number - one.number);
  if (!newest) throw new AppError('badInput', MISFIT);
  return newest;
}

export function itinerariesOf({ versions }: CarriedHead): Itinerary[] {
  return versions.flatMap(({ text }) => {
    const read = readItineraryText(text);
    return read.ok ? [read.itinerary] : [];
  });
}

/** What the file's ids are called. */
export function namesIn({ head, actions }: CarriedEvent): EntryNames {
  const people = new Map(head.people.map(({ personId, name }) => [personId, name]));
  const cards = new Map(head.cards.map(({ cardId, card }) => [cardId, card.name]));
  const snags = new Map(
    actions.flatMap(({ entries }) =>
      entries.flatMap(({ body }) => (body.kind === 'snagRaised' ? [[body.snagId, body.words] as const] : [])),
    ),
  );
  const { timeZone } = newestOf(head).text;
  const card = (id: string) => cards.get(id) ?? 'a card';
  return {
    person: (id) => people.get(id) ?? 'Someone',
    card,
    task: ({ source }) =>
      source.kind === 'card' ? card(source.cardId) : (snags.get(source.snagId) ?? 'a snag'),
    service: (id) => `Service ${id}`,
    stage: (id) => id,
    control: (id) => id,
    clock: (at) => formatClock(at, timeZone),
    reading: (id) => id,
  };
}

export function deedOf(action: CarriedAction, names: EntryNames): string {
  const [first] = withLogEntries(action).entries;
  return first ? entryInWords({ ...first, flags: [] }, names) : 'Something that was refused there';
}
