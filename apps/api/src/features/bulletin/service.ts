import { randomUUID } from 'node:crypto';
import type { acceptBulletinInput, issueBulletinInput, OpenBulletin } from '@halfshaft/contract';
import {
  changeInWords,
  compareItineraries,
  dueAt,
  type Itinerary,
  positionsOf,
  servicesOf,
} from '@halfshaft/itinerary';
import { type CardsQuestion, jobChangeInWords, jobsChanged } from '@halfshaft/lifing';
import type { MemberTx, OrganiserTx } from '@halfshaft/store';
import { type DoneSoFar, lastDoneOf, runsOf, type StageConfirmation } from '@halfshaft/worklog';
import type { z } from 'zod';
import { AppError, notAllowed, unknown } from '../../errors';
import {
  createVersionRow,
  type EntryWithCar,
  findEvent,
  findItinerary,
  listEntries,
  updateEventDates,
} from '../event/data';
import { mayManage, maySeeEvent } from '../people/ability';
import { listFacts, listStages, listTasks } from '../work/data';
import {
  createBulletinRow,
  findNewestIssued,
  findTakenOver,
  listOwnVersions,
  type OwnVersion,
  updatePublishedDates,
} from './data';

/** What was issued, newest first, and the draft that would be issued next, each against what was issued before it. */
export async function listBulletins(tx: OrganiserTx, publishedEventId: string) {
  const versions = await listOwnVersions(tx, publishedEventId);
  if (versions.length === 0) throw unknown();
  const issued = versions.flatMap((version) => (version.issued ? [{ ...version.issued, version }] : []));
  const told = issued.map(({ number, note, issuedAt, version }, index) => {
    const before = issued[index - 1]?.version.itinerary;
    const changes = before ? changesFor(before, version.itinerary, 1) : [];
    return { number, note, issuedAt, changes };
  });
  return { issued: told.reverse(), draft: draftOf(versions) };
}

function draftOf(versions: readonly OwnVersion[]) {
  const newest = versions.at(-1);
  const current = versions.findLast((version) => version.issued);
  if (!newest || !current || newest.issued) return null;
  const { itineraryNumber, savedAt, itinerary } = newest;
  return { itineraryNumber, savedAt, changes: changesFor(current.itinerary, itinerary, 1) };
}

/** The newest draft becomes the next bulletin, for good. */
export async function issueBulletin(
  tx: OrganiserTx,
  { publishedEventId, itineraryNumber, note }: z.infer<typeof issueBulletinInput>,
  now: number,
) {
  const versions = await listOwnVersions(tx, publishedEventId);
  const newest = versions.at(-1);
  if (!newest) throw unknown();
  const current = versions.findLast((version) => version.issued)?.issued;
  if (!current) throw new AppError('conflict', 'The event is not published yet. Publish it first.');
  if (newest.itineraryNumber !== itineraryNumber || newest.issued) {
    throw new AppError(
      'conflict',
      'The draft you read is not the newest one any more. Read the changes again, then issue them.',
    );
  }
  if (note === '' && draftOf(versions)?.changes.length === 0) {
    throw new AppError('conflict', 'This draft changes nothing. Change the itinerary, or write a note.');
  }
  const number = current.number + 1;
  await createBulletinRow(tx, { id: randomUUID(), publishedEventId, number, itineraryNumber, note }, now);
  await updatePublishedDates(tx, publishedEventId, newest.text);
  return { number };
}

/** The newest bulletin that the team has not accepted, told for each of its cars. */
export async function getOpenBulletin(
  tx: MemberTx,
  eventId: string,
  now: number,
): Promise<OpenBulletin | null> {
  const event = maySeeEvent(tx.member, eventId) ? await findEvent(tx, eventId) : null;
  if (!event) throw unknown();
  // Asked for by every page of an event, so nothing large is read while nothing is open.
  const open = await findOpen(tx, eventId);
  if (!open) return null;
  const current = await findItinerary(tx, eventId);
  if (!current) throw unknown();
  const { newest, replacesOwnVersion } = open;
  const versions = { before: current.itinerary, after: newest.itinerary };
  const done = {
    tasks: await listTasks(tx, eventId),
    facts: await listFacts(tx, eventId),
    stages: await listStages(tx, eventId),
    plannedConditions: new Map(Object.entries(event.plannedConditions)),
  };
  const at = Math.floor(now / 1000) + event.clockOffsetSeconds;
  const entries = await listEntries(tx, eventId);
  return {
    ...newest.issued,
    organiserName: newest.organiserName,
    replacesOwnVersion,
    ...tellCars(entries, versions, (entry) => jobsFor(entry, versions, done, at)),
  };
}

/** The bulletin's itinerary becomes the team's newest version. Accepting it again gives the version it became. */
export async function acceptBulletin(tx: MemberTx, input: z.infer<typeof acceptBulletinInput>, now: number) {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const { eventId, number } = input;
  const taken = await findTakenOver(tx, eventId);
  if (!taken) throw unknown();
  const accepted = taken.versions.find((version) => version.bulletinNumber === number);
  if (accepted) return { itineraryNumber: accepted.number };
  const newest = await findNewestIssued(tx, { ...taken, above: 0 });
  if (!newest || newest.issued.number < number) throw unknown();
  if (newest.issued.number > number) {
    throw new AppError('conflict', `Bulletin ${newest.issued.number} has come since. Read that one instead.`);
  }
  const itineraryNumber = (taken.versions[0]?.number ?? 0) + 1;
  const { text, itinerary } = newest;
  const savedBy = tx.member.personId;
  const version = { id: randomUUID(), eventId, number: itineraryNumber, text, itinerary, savedBy };
  await createVersionRow(tx, { ...version, bulletinNumber: number }, now);
  await updateEventDates(tx, eventId, text);
  return { itineraryNumber };
}

async function findOpen(tx: MemberTx, eventId: string) {
  const taken = await findTakenOver(tx, eventId);
  if (!taken) return null;
  const above = Math.max(0, ...taken.versions.map((version) => version.bulletinNumber ?? 0));
  const newest = await findNewestIssued(tx, { ...taken, above });
  if (!newest) return null;
  return { newest, replacesOwnVersion: taken.versions[0]?.bulletinNumber === null };
}

interface Versions {
  before: Itinerary;
  after: Itinerary;
}

/** Sentences that hold for all cars once, the rest by car. */
function tellCars(
  entries: readonly EntryWithCar[],
  { before, after }: Versions,
  jobsOf: (entry: EntryWithCar) => string[],
): Pick<OpenBulletin, 'changes' | 'cars'> {
  const byCar = entries.map((entry) => changesFor(before, after, positionsOf(entry)));
  const [first = changesFor(before, after, 1), ...others] = byCar;
  const changes = first.filter((sentence) => others.every((told) => told.includes(sentence)));
  const cars = entries.map((entry, index) => ({
    carNumber: entry.carNumber,
    changes: (byCar[index] ?? []).filter((sentence) => !changes.includes(sentence)),
    jobs: jobsOf(entry),
  }));
  return { changes, cars };
}

function changesFor(
  before: Itinerary,
  after: Itinerary,
  position: number | ReturnType<typeof positionsOf>,
): string[] {
  return compareItineraries(before, after, { position }).map(changeInWords);
}

interface EventSoFar extends DoneSoFar {
  stages: readonly StageConfirmation[];
  plannedConditions: CardsQuestion['plannedConditions'];
}

function jobsFor(entry: EntryWithCar, { before, after }: Versions, done: EventSoFar, at: number): string[] {
  const names = new Map(entry.cards.map((card) => [card.id, card.name]));
  const changed = jobsChanged(jobsIn(before, entry, done, at), jobsIn(after, entry, done, at));
  return changed.map((change) => jobChangeInWords(change, names.get(change.cardId) ?? ''));
}

/** The car's jobs under one version, from the first service on that is neither past by plan nor worked at already. */
function jobsIn(itinerary: Itinerary, entry: EntryWithCar, done: EventSoFar, at: number) {
  const { stages, plannedConditions } = done;
  const services = servicesOf(itinerary);
  const position = positionsOf(entry);
  const untilIndex = itinerary.points.length - 1;
  const lastDone = lastDoneOf(done, { itinerary, services, untilIndex }, entry);
  const worked = Math.max(-1, ...[...lastDone.values()].map(({ pointIndex }) => pointIndex ?? -1));
  const next = services.findIndex(
    ({ inIndex, outIndex }) => inIndex >= worked && dueAt(itinerary, outIndex, position) > at,
  );
  return {
    itinerary,
    services,
    runs: runsOf(stages, entry.entryId),
    plannedConditions,
    position,
    cards: entry.cards,
    lastDone,
    fromServiceIndex: next === -1 ? services.length : next,
  };
}
