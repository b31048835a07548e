import { randomUUID } from 'node:crypto';
import {
  type createEventInput,
  type EventReplica,
  type enterCarInput,
  type ItineraryText,
  itineraryOptions,
  type saveItineraryInput,
  type setClockOffsetInput,
  type setConditionsInput,
  type setPenaltiesInput,
  type setTyreAllowanceInput,
  type takeOverEventInput,
  type updateEntryInput,
} from '@halfshaft/contract';
import {
  type Itinerary,
  type ParsedItinerary,
  readItinerary,
  sameItinerary,
  servicesOf,
} from '@halfshaft/itinerary';
import { carriedWear } from '@halfshaft/lifing';
import type { MemberTx, TeamTx } from '@halfshaft/store';
import { lastDoneOf, runsOf } from '@halfshaft/worklog';
import type { z } from 'zod';
import { AppError, notAllowed, unknown } from '../../errors';
import { mayManage, maySeeEvent } from '../people/ability';
import { listPeople } from '../people/service';
import { listFacts, listStages, listTasks, readLastSeq } from '../work/data';
import {
  type CarriedWear,
  createEntryRow,
  createEventRow,
  createVersionRow,
  type EventSettings,
  findCar,
  findEntry,
  findEntryBefore,
  findEvent,
  findItinerary,
  findPublished,
  findTaken,
  listEntries,
  listEventRows,
  updateEntryRow,
  updateEventDates,
  updateSettings,
} from './data';

export { listPublished } from './data';

/** Reads a pasted itinerary with its settings. */
export function readItineraryText(text: ItineraryText): ParsedItinerary {
  return readItinerary(text.source, itineraryOptions(text)).parsed;
}

interface EventToSave {
  name: string;
  text: ItineraryText;
  itinerary: Itinerary;
  from?: { organiserId: string; publishedEventId: string; bulletinNumber: number };
}

/** For callers that have proved the right already. The event, its log and the first version of its itinerary. */
export async function saveNewEvent(
  tx: TeamTx,
  event: EventToSave,
  { personId, now }: { personId: string; now: number },
): Promise<string> {
  const eventId = randomUUID();
  const { name, text, itinerary, from } = event;
  const { timeZone, startsOn } = text;
  await createEventRow(
    tx,
    { eventId, name, timeZone, startsOn, clockOffsetSeconds: 0, ...(from ? { from } : {}) },
    now,
  );
  await createVersionRow(
    tx,
    {
      id: randomUUID(),
      eventId,
      number: 1,
      text,
      itinerary,
      savedBy: personId,
      ...(from ? { bulletinNumber: from.bulletinNumber } : {}),
    },
    now,
  );
  return eventId;
}

export async function createEvent(tx: MemberTx, input: z.infer<typeof createEventInput>, now: number) {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const read = readItineraryText(input.itinerary);
  if (!read.ok) return read;
  const event = { name: input.name, text: input.itinerary, itinerary: read.itinerary };
  const eventId = await saveNewEvent(tx, event, { personId: tx.member.personId, now });
  return { ok: true as const, eventId, warnings: read.warnings };
}

/** A new version; the earlier ones stay. The same table twice makes no new version. */
export async function saveItinerary(tx: MemberTx, input: z.infer<typeof saveItineraryInput>, now: number) {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const { eventId, itinerary: text } = input;
  const current = await findItinerary(tx, eventId);
  if (!current) throw unknown();
  const read = readItineraryText(text);
  if (!read.ok) return read;
  const { itinerary, warnings } = read;
  if (sameItinerary(itinerary, current.itinerary)) {
    return { ok: true as const, number: current.number, warnings };
  }
  const number = current.number + 1;
  const savedBy = tx.member.personId;
  await createVersionRow(tx, { id: randomUUID(), eventId, number, text, itinerary, savedBy }, now);
  await updateEventDates(tx, eventId, text);
  return { ok: true as const, number, warnings };
}

/** The event's own penalties, by which its lateness is reckoned from now on. */
export async function setPenalties(tx: MemberTx, input: z.infer<typeof setPenaltiesInput>): Promise<void> {
  await changeSettings(tx, input.eventId, { penaltyRules: input.rules });
}

/** What the stages are expected to be like, by which wear ahead and lamps and tyres are reckoned from now on. */
export async function setConditions(tx: MemberTx, input: z.infer<typeof setConditionsInput>): Promise<void> {
  await changeSettings(tx, input.eventId, { plannedConditions: input.conditions });
}

/** How far the event's official clock is ahead of the server's: every clock of the team goes by it from now on. */
export async function setClockOffset(
  tx: MemberTx,
  input: z.infer<typeof setClockOffsetInput>,
): Promise<void> {
  await changeSettings(tx, input.eventId, { clockOffsetSeconds: input.clockOffsetSeconds });
}

export async function setTyreAllowance(
  tx: MemberTx,
  input: z.infer<typeof setTyreAllowanceInput>,
): Promise<void> {
  await changeSettings(tx, input.eventId, { tyreAllowance: input.tyreAllowance });
}

async function changeSettings(
  tx: MemberTx,
  eventId: string,
  settings: Partial<EventSettings>,
): Promise<void> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  if (!(await findEvent(tx, eventId))) throw unknown();
  await updateSettings(tx, eventId, settings);
}

/** A published event becomes the team's own, with a copy of its itinerary. */
export async function takeOverEvent(tx: MemberTx, input: z.infer<typeof takeOverEventInput>, now: number) {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const { organiserId, publishedEventId } = input;
  const published = await findPublished(tx, organiserId, publishedEventId);
  if (!published) throw unknown();
  const { bulletinNumber, ...rest } = published;
  const event = { ...rest, from: { organiserId, publishedEventId, bulletinNumber } };
  return { eventId: await saveNewEvent(tx, event, { personId: tx.member.personId, now }) };
}

export async function listEvents(tx: MemberTx) {
  const events = await listEventRows(tx);
  return events.filter((event) => maySeeEvent(tx.member, event.eventId));
}

export async function enterCar(tx: MemberTx, input: z.infer<typeof enterCarInput>, now: number) {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const { eventId, carId, carNumber, startPosition, people } = input;
  if (!(await findEvent(tx, eventId)) || !(await findCar(tx, carId))) throw unknown();
  await refuseTaken(tx, { eventId, carId, startPosition }, null);
  return { entryId: await enterNewCar(tx, { eventId, carId, carNumber, startPosition, people }, now) };
}

interface NewEntry {
  eventId: string;
  carId: string;
  carNumber: string;
  startPosition: number;
  positionsBySection?: Record<string, number> | undefined;
  people: number;
}

/** For callers that have proved the right already. Returns the id of the car's entry. */
export async function enterNewCar(tx: TeamTx, entry: NewEntry, now: number): Promise<string> {
  const entryId = randomUUID();
  const event = await findEvent(tx, entry.eventId);
  const carried = event ? await wearBroughtAlong(tx, entry.carId, event.startsOn) : {};
  const positionsBySection = entry.positionsBySection ?? {};
  await createEntryRow(tx, { entryId, ...entry, positionsBySection, carried }, now);
  return entryId;
}

/** What the car's newest earlier event left on each card. */
async function wearBroughtAlong(tx: TeamTx, carId: string, startsOn: string): Promise<CarriedWear> {
  const before = await findEntryBefore(tx, carId, startsOn);
  const version = before && (await findItinerary(tx, before.eventId));
  if (!before || !version) return {};
  const { itinerary } = version;
  const services = servicesOf(itinerary);
  const entry = (await listEntries(tx, before.eventId)).find((each) => each.entryId === before.entryId);
  const done = { tasks: await listTasks(tx, before.eventId), facts: await listFacts(tx, before.eventId) };
  const runs = runsOf(await listStages(tx, before.eventId), before.entryId);
  const event = await findEvent(tx, before.eventId);
  const plannedConditions = new Map(Object.entries(event?.plannedConditions ?? {}));
  const cards = entry?.cards ?? [];
  const untilIndex = itinerary.points.length - 1;
  const lastDone = lastDoneOf(done, { itinerary, services, untilIndex }, { ...before, cards });
  return carriedWear({ itinerary, services, runs, plannedConditions }, cards, lastDone);
}

export async function updateEntry(tx: MemberTx, input: z.infer<typeof updateEntryInput>): Promise<void> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const { entryId, carNumber, startPosition, positionsBySection, people } = input;
  const entry = await findEntry(tx, entryId);
  if (!entry) throw unknown();
  await refuseTaken(tx, { eventId: entry.eventId, carId: null, startPosition }, entryId);
  const later = positionsBySection ?? entry.positionsBySection;
  await updateEntryRow(tx, entryId, { carNumber, startPosition, positionsBySection: later, people });
}

async function refuseTaken(
  tx: TeamTx,
  entry: { eventId: string; carId: string | null; startPosition: number },
  exceptEntryId: string | null,
): Promise<void> {
  const taken = await findTaken(tx, entry, exceptEntryId);
  if (taken === 'car') throw new AppError('conflict', 'This car is entered in the event already.');
  if (taken === 'startPosition') {
    const message = `Start position ${entry.startPosition} is taken by another of your cars. Choose another.`;
    throw new AppError('conflict', message, [{ path: 'startPosition', message }]);
  }
}

/** All that a phone needs to go on alone, except the log. */
export async function getEvent(tx: MemberTx, eventId: string, now: number): Promise<EventReplica> {
  const event = maySeeEvent(tx.member, eventId) ? await findEvent(tx, eventId) : null;
  const version = event && (await findItinerary(tx, eventId));
  if (!event || !version) throw unknown();
  const entries = await listEntries(tx, eventId);
  return {
    eventId,
    name: event.name,
    clockOffsetSeconds: event.clockOffsetSeconds,
    serverTime: now,
    itinerary: version.itinerary,
    itineraryNumber: version.number,
    itineraryText: version.text,
    penaltyRules: event.penaltyRules,
    plannedConditions: event.plannedConditions,
    tyreAllowance: event.tyreAllowance,
    entries: entries.map(({ eventId: _eventId, carId: _carId, ...entry }) => entry),
    people: await listPeople(tx),
    me: { personId: tx.member.personId, role: tx.member.role },
    lastSeq: await readLastSeq(tx, eventId),
  };
}
