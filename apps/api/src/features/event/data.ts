import type { CarRow, ItineraryText } from '@halfshaft/contract';
import {
  type Conditions,
  DEFAULT_PENALTY_RULES,
  type Itinerary,
  type PenaltyRules,
  type StageId,
} from '@halfshaft/itinerary';
import type { Counters, JobCard } from '@halfshaft/lifing';
import type { TeamTx, UserTx } from '@halfshaft/store';
import { toDate, toDay } from '../../clock';
import { toCar } from '../car/data';
import { toCard } from '../card/data';

export { findCar } from '../car/data';
export { listPeople } from '../people/data';

export interface EventRow {
  eventId: string;
  name: string;
  timeZone: string;
  /** `YYYY-MM-DD`. */
  startsOn: string;
  clockOffsetSeconds: number;
}

/** What the managers set for the event as a whole. */
export interface EventSettings {
  clockOffsetSeconds: number;
  /** Otherwise what most events have. */
  penaltyRules: PenaltyRules;
  /** What they expect of the stages; nothing for those they did not speak of. */
  plannedConditions: Record<StageId, Conditions>;
  /** Null: the regulations set no number, or nobody wrote it down yet. */
  tyreAllowance: number | null;
}

export interface ItineraryVersion {
  number: number;
  text: ItineraryText;
  itinerary: Itinerary;
}

/** How much wear each card brings along. */
export type CarriedWear = Record<string, Partial<Counters>>;

export interface EntryRow {
  entryId: string;
  eventId: string;
  carId: string;
  carNumber: string;
  startPosition: number;
  positionsBySection: Record<string, number>;
  people: number;
  carried: CarriedWear;
}

export type EntryWithCar = EntryRow & { car: CarRow; cards: JobCard[] };

export async function findEventName(tx: TeamTx, eventId: string): Promise<string | null> {
  return (await findEvent(tx, eventId))?.name ?? null;
}

export async function findEvent(tx: TeamTx, eventId: string): Promise<(EventRow & EventSettings) | null> {
  const row = await tx.db.event.findUnique({ where: { teamId_id: { teamId: tx.teamId, id: eventId } } });
  return row && { ...toEvent(row), ...toSettings(row) };
}

/** The event with its log, which starts empty. */
export async function createEventRow(
  tx: TeamTx,
  event: EventRow & { from?: { organiserId: string; publishedEventId: string } },
  now: number,
): Promise<void> {
  const { teamId } = tx;
  const { eventId, name, timeZone, startsOn, clockOffsetSeconds, from } = event;
  await tx.db.event.create({
    data: {
      teamId,
      id: eventId,
      name,
      timeZone,
      startsOn: toDate(startsOn),
      clockOffsetSeconds,
      organiserId: from?.organiserId ?? null,
      publishedEventId: from?.publishedEventId ?? null,
      createdAt: toDate(now),
    },
  });
  await tx.db.logHead.create({ data: { teamId, eventId, lastSeq: 0 } });
}

export async function updateSettings(
  tx: TeamTx,
  eventId: string,
  settings: Partial<EventSettings>,
): Promise<void> {
  const { penaltyRules, ...others } = settings;
  await tx.db.event.update({
    where: { teamId_id: { teamId: tx.teamId, id: eventId } },
    data: { ...others, ...(penaltyRules ? { penaltyRules: penaltyRules as object } : {}) },
  });
}

export async function updateEventDates(tx: TeamTx, eventId: string, text: ItineraryText): Promise<void> {
  await tx.db.event.update({
    where: { teamId_id: { teamId: tx.teamId, id: eventId } },
    data: { timeZone: text.timeZone, startsOn: toDate(text.startsOn) },
  });
}

/** The newest version, or null before the first. */
export async function findItinerary(tx: TeamTx, eventId: string): Promise<ItineraryVersion | null> {
  const row = await tx.db.itineraryVersion.findFirst({
    where: { teamId: tx.teamId, eventId },
    orderBy: { number: 'desc' },
  });
  if (!row) return null;
  return {
    number: row.number,
    text: toItineraryText(row.source),
    itinerary: row.itinerary as unknown as Itinerary,
  };
}

export async function createVersionRow(
  tx: TeamTx,
  version: ItineraryVersion & { id: string; eventId: string; savedBy: string; bulletinNumber?: number },
  now: number,
): Promise<void> {
  const { id, eventId, number, text, itinerary, savedBy, bulletinNumber } = version;
  await tx.db.itineraryVersion.create({
    data: {
      teamId: tx.teamId,
      id,
      eventId,
      number,
      source: { ...text },
      itinerary: itinerary as object,
      savedBy,
      savedAt: toDate(now),
      bulletinNumber: bulletinNumber ?? null,
    },
  });
}

export async function listEventRows(tx: TeamTx) {
  const rows = await tx.db.event.findMany({
    where: { teamId: tx.teamId },
    include: { entries: { include: { car: true }, orderBy: { startPosition: 'asc' } } },
    orderBy: [{ startsOn: 'desc' }, { createdAt: 'desc' }],
  });
  return rows.map((row) => ({
    ...toEvent(row),
    cars: row.entries.map(({ id, carId, car, carNumber }) => ({
      entryId: id,
      carId,
      carName: car.name,
      carNumber,
    })),
  }));
}

/** The cars of the event with their cards in use, in start order. */
export async function listEntries(tx: TeamTx, eventId: string): Promise<EntryWithCar[]> {
  const rows = await tx.db.entry.findMany({
    where: { teamId: tx.teamId, eventId },
    include: { car: { include: { cards: { where: { removedAt: null }, orderBy: { ordinal: 'asc' } } } } },
    orderBy: { startPosition: 'asc' },
  });
  return rows.map((row) => ({ ...toEntry(row), car: toCar(row.car), cards: row.car.cards.map(toCard) }));
}

export async function findEntry(tx: TeamTx, entryId: string): Promise<EntryRow | null> {
  const row = await tx.db.entry.findUnique({ where: { teamId_id: { teamId: tx.teamId, id: entryId } } });
  return row && toEntry(row);
}

/** The car's newest entry before this day, from which wear is carried on; null for its first event. */
export async function findEntryBefore(tx: TeamTx, carId: string, startsOn: string): Promise<EntryRow | null> {
  const row = await tx.db.entry.findFirst({
    where: { teamId: tx.teamId, carId, event: { startsOn: { lt: toDate(startsOn) } } },
    orderBy: { event: { startsOn: 'desc' } },
  });
  return row && toEntry(row);
}

/** Which of the two things that must be unique in an event is taken already, apart from `exceptEntryId`'s own. */
export async function findTaken(
  tx: TeamTx,
  entry: { eventId: string; carId: string | null; startPosition: number },
  exceptEntryId: string | null,
): Promise<'car' | 'startPosition' | null> {
  const others = await tx.db.entry.findMany({ where: { teamId: tx.teamId, eventId: entry.eventId } });
  const rest = others.filter((other) => other.id !== exceptEntryId);
  if (rest.some((other) => other.carId === entry.carId)) return 'car';
  return rest.some((other) => other.startPosition === entry.startPosition) ? 'startPosition' : null;
}

export async function createEntryRow(tx: TeamTx, entry: EntryRow, now: number): Promise<void> {
  const { entryId, eventId, carId, carNumber, startPosition, positionsBySection, people, carried } = entry;
  await tx.db.entry.create({
    data: {
      teamId: tx.teamId,
      id: entryId,
      eventId,
      carId,
      carNumber,
      startPosition,
      positionsBySection,
      people,
      carried,
      createdAt: toDate(now),
    },
  });
}

export async function updateEntryRow(
  tx: TeamTx,
  entryId: string,
  fields: Pick<EntryRow, 'carNumber' | 'startPosition' | 'positionsBySection' | 'people'>,
): Promise<void> {
  await tx.db.entry.update({ where: { teamId_id: { teamId: tx.teamId, id: entryId } }, data: fields });
}

/** What organisers have published: visible to every account, whichever team it belongs to. */
export async function listPublished(tx: UserTx) {
  const rows = await tx.db.publishedEvent.findMany({
    where: { publishedAt: { not: null } },
    include: { organiser: true },
    orderBy: { startsOn: 'desc' },
  });
  return rows.map((row) => ({
    organiserId: row.organiserId,
    organiserName: row.organiser.name,
    publishedEventId: row.id,
    name: row.name,
    timeZone: row.timeZone,
    startsOn: toDay(row.startsOn),
  }));
}

/** A published event with its newest issued itinerary, or null when it is not published (or does not exist). */
export async function findPublished(tx: TeamTx, organiserId: string, publishedEventId: string) {
  const row = await tx.db.publishedEvent.findFirst({
    where: { organiserId, id: publishedEventId, publishedAt: { not: null } },
    include: {
      itineraries: {
        where: { bulletin: { isNot: null } },
        include: { bulletin: true },
        orderBy: { number: 'desc' },
        take: 1,
      },
    },
  });
  const newest = row?.itineraries[0];
  if (!row || !newest?.bulletin) return null;
  return {
    name: row.name,
    bulletinNumber: newest.bulletin.number,
    text: toItineraryText(newest.source),
    itinerary: newest.itinerary as unknown as Itinerary,
  };
}

function toEvent(row: {
  id: string;
  name: string;
  timeZone: string;
  startsOn: Date;
  clockOffsetSeconds: number;
}): EventRow {
  const { id, name, timeZone, startsOn, clockOffsetSeconds } = row;
  return { eventId: id, name, timeZone, startsOn: toDay(startsOn), clockOffsetSeconds };
}

function toSettings(row: {
  clockOffsetSeconds: number;
  penaltyRules: unknown;
  plannedConditions: unknown;
  tyreAllowance: number | null;
}): EventSettings {
  return {
    clockOffsetSeconds: row.clockOffsetSeconds,
    // A setting that is newer than what was saved keeps its usual value.
    penaltyRules: { ...DEFAULT_PENALTY_RULES, ...(row.penaltyRules as Partial<PenaltyRules> | null) },
    plannedConditions: row.plannedConditions as EventSettings['plannedConditions'],
    tyreAllowance: row.tyreAllowance,
  };
}

/** What a version that says nothing of it was read with. */
const SAVED_WITHOUT = { printedFor: 'positionOne' as const };

/** A version saved before there was a choice does not say whom its times are for. */
export function toItineraryText(source: unknown): ItineraryText {
  return { ...SAVED_WITHOUT, ...(source as Omit<ItineraryText, 'printedFor'>) };
}

type StoredEntry = Omit<EntryRow, 'entryId' | 'positionsBySection' | 'carried'> & {
  id: string;
  positionsBySection: unknown;
  carried: unknown;
};

function toEntry(row: StoredEntry): EntryRow {
  const { id, eventId, carId, carNumber, startPosition, people } = row;
  const positionsBySection = row.positionsBySection as EntryRow['positionsBySection'];
  const carried = row.carried as CarriedWear;
  return { entryId: id, eventId, carId, carNumber, startPosition, positionsBySection, people, carried };
}
