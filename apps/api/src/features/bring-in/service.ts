import { randomUUID } from 'node:crypto';
import type {
  BringInReport,
  CarriedAction,
  CarriedEvent,
  CarriedHead,
  LookOutcome,
  TakeOutcome,
} from '@halfshaft/contract';
import { formatClock, type Itinerary } from '@halfshaft/itinerary';
import type { MemberTx, Store, TeamTx } from '@halfshaft/store';
import {
  actionOfEntries,
  changesOf,
  type EntryNames,
  emptyState,
  entryInWords,
  type LogEntry,
  problemOfCarriedLog,
  rebuild,
  type Sums,
  whoseStands,
} from '@halfshaft/worklog';
import { AppError, unknown } from '../../errors';
import { readHead } from '../carry/service';
import { readItineraryText } from '../event/service';
import { mayManage, maySeeEvent } from '../people/ability';
import { type Arrival, decideArrivals } from '../work/service';
import {
  addPeople,
  createAdmin,
  createBringInRow,
  createCards,
  createCarRow,
  createEntryRow,
  createEventRow,
  createTeamRow,
  createVersion,
  findContents,
  findEventName,
  findMissingPictures,
  findNewestMadeAt,
  findRevocations,
  findTaken,
  hasBulletin,
  inCarriedTeam,
  isElsewhere,
  listBringInRows,
  loadCards,
  loadCars,
  loadSeen,
  lockLog,
  MISFIT,
  NOT_YOURS,
  storeActions,
  sumOf,
  updateCard,
  updateCarRow,
  updateEntryRow,
  updateEventDates,
  updateSettings,
  writeLog,
} from './data';

export interface BringingIn {
  store: Store;
  userId: string;
  file: CarriedEvent;
  /** Who the account is, where the team is new to this server. */
  personId?: string | undefined;
  now: number;
}

type Bringing = BringingIn & { tx: TeamTx; bringer: string };

/** What the file holds and what bringing it in would do; changes nothing. */
export function lookAt({ store, userId, file }: BringingIn): Promise<LookOutcome> {
  const { head, actions } = file;
  checkFile(file);
  const { team, event } = head;
  return inCarriedTeam(store, { teamId: team.teamId, userId }, async (standing) => {
    if (!standing.isNew) refuseOthers(standing.tx);
    const contents = await findContents(
      standing.tx,
      actions.map(({ actionId }) => actionId),
    );
    const known = actions.filter(({ actionId }) => contents.has(actionId)).length;
    const mayBe = ({ personId, role }: CarriedHead['people'][number]) =>
      personId === head.madeBy || role === 'admin' || role === 'manager';
    return {
      teamId: team.teamId,
      eventId: event.eventId,
      teamName: team.name,
      eventName: event.name,
      madeAt: head.madeAt,
      cars: head.entries.length,
      entries: actions.reduce((sum, { entries }) => sum + entries.length, 0),
      fresh: actions.length - known,
      known,
      people: standing.isNew
        ? head.people
            .filter(mayBe)
            .map(({ personId, name }) => ({ personId, name, madeTheFile: personId === head.madeBy }))
        : [],
      pictures: await picturesOf(standing.tx, head),
    };
  });
}

/** Brings the file in, all of it or nothing. Brought in again, it finds everything known and changes nothing. */
export function takeIn(bringing: BringingIn): Promise<TakeOutcome> {
  const { store, userId, file } = bringing;
  checkFile(file);
  const { teamId } = file.head.team;
  return inCarriedTeam(store, { teamId, userId }, async (standing) => {
    const { tx } = standing;
    if (!standing.isNew) refuseOthers(standing.tx);
    const bringer = standing.isNew ? await foundHere(tx, bringing) : standing.tx.member.personId;
    const report = await takeEvent({ ...bringing, tx, bringer });
    const { eventId } = file.head.event;
    return { teamId, eventId, report, pictures: await picturesOf(tx, file.head) };
  });
}

export async function listBringIns(tx: MemberTx, eventId: string) {
  if (!maySeeEvent(tx.member, eventId) || (await findEventName(tx, eventId)) === null) throw unknown();
  return listBringInRows(tx, eventId);
}

/** A file must let nobody into a team that is here already: only its managers may bring more of it in. */
function refuseOthers({ member }: MemberTx): void {
  if (!mayManage(member)) throw new AppError('notAllowed', NOT_YOURS);
}

/** What can be told from the file alone. */
function checkFile({ head, actions }: CarriedEvent): void {
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

function withLogEntries(action: CarriedAction): { actionId: string; entries: LogEntry[] } {
  const { actionId, deviceId, entries } = action;
  return { actionId, entries: entries.map((entry) => ({ ...entry, actionId, deviceId })) };
}

/** The team as the file has it, with the account as the person it says it is. */
async function foundHere(tx: TeamTx, { file, userId, personId, now }: BringingIn): Promise<string> {
  const { head } = file;
  const who = personId ?? head.madeBy;
  if (!head.people.some((person) => person.personId === who)) {
    throw new AppError('badInput', 'Choose which of the people in the file you are.');
  }
  await createTeamRow(tx, head.team.name, now);
  await addPeople(tx, head.people, now);
  await createAdmin(tx, { membershipId: randomUUID(), userId, personId: who }, now);
  return who;
}

async function takeEvent(bringing: Bringing): Promise<BringInReport> {
  const { tx, file, now } = bringing;
  const { head, actions } = file;
  const { eventId } = head.event;
  const lockedSeq = await lockLog(tx, eventId);
  await refuseElsewhere(tx, file);
  const newest = await findNewestMadeAt(tx, eventId);
  const isNewer = head.madeAt > newest;
  const added = await addPeople(tx, lockedSeq === null ? head.people : peopleActing(file), now);
  const things = { ...bringing, isNewer, seen: await loadSeen(tx) };
  const notes = await takeCars(things);
  if (lockedSeq !== null) notes.push(...peopleNotes(added));
  const taken = lockedSeq === null ? await takeNewEvent(bringing) : await takeMore(things, lockedSeq, notes);
  const report = { ...taken, notes };
  if (isNewer || report.came + report.refused.length + notes.length > 0) {
    const pictures = Object.fromEntries(head.pictures.map(({ photoId, sha256 }) => [photoId, sha256]));
    const row = {
      id: randomUUID(),
      eventId,
      broughtBy: bringing.bringer,
      madeAt: head.madeAt,
      pictures,
      report,
    };
    await createBringInRow(tx, { ...row, seen: isNewer ? sumsOf(head) : {} }, now);
  }
  return report;

  function peopleNotes(people: CarriedHead['people']): string[] {
    return people.map(({ name }) => `${name} worked there and is now in the team here, without a sign-in.`);
  }

  function peopleActing({ head: { people, versions } }: CarriedEvent) {
    const entries = actions.flatMap((action) => action.entries);
    const acting = new Set([
      ...entries.flatMap(({ by, enteredBy }) => [by, enteredBy]),
      ...versions.map((v) => v.savedBy),
    ]);
    return people.filter(({ personId }) => acting.has(personId));
  }
}

async function refuseElsewhere(tx: TeamTx, { head, actions }: CarriedEvent): Promise<void> {
  const bodies = actions.flatMap(({ entries }) => entries.map(({ body }) => body));
  const clash = await isElsewhere(tx, head.event.eventId, {
    cards: head.cards,
    entries: head.entries.map(({ entryId }) => entryId),
    actions: actions.map(({ actionId }) => actionId),
    snags: bodies.flatMap((body) => (body.kind === 'snagRaised' ? [body.snagId] : [])),
    facts: bodies.flatMap((body) => (body.kind === 'factRecorded' ? [body.factId] : [])),
  });
  if (clash) throw new AppError('badInput', MISFIT);
}

/** An event that this server has not: the log comes in as it was written, and what it gives is worked out anew. */
async function takeNewEvent({ tx, file, now }: Bringing) {
  const { head, actions } = file;
  const { eventId, name, clockOffsetSeconds, from, settings } = head.event;
  const newest = newestOf(head);
  const { timeZone, startsOn } = newest.text;
  const event = { eventId, name, timeZone, startsOn, clockOffsetSeconds, ...(from ? { from } : {}) };
  await createEventRow(tx, event, now);
  await updateSettings(tx, eventId, settings);
  for (const version of head.versions) {
    const read = readItineraryText(version.text);
    // A table of long ago may no longer be read as it was; the one in force must be.
    if (read.ok) await createVersion(tx, eventId, { ...version, itinerary: read.itinerary });
    else if (version === newest) throw new AppError('badInput', `The itinerary cannot be read. ${MISFIT}`);
  }
  for (const entry of head.entries) await createEntryRow(tx, { ...entry, eventId }, now);
  const log = actions.flatMap((action) => withLogEntries(action).entries);
  await writeLog(tx, eventId, actions, changesOf(emptyState, rebuild(log)));
  return { came: actions.length, known: 0, refused: [] };
}

interface Things extends Bringing {
  /** Made after every file that came in before. */
  isNewer: boolean;
  seen: Sums;
}

/** More of an event that is here already: what managers changed first, since the work may speak of it. */
async function takeMore(things: Things, lockedSeq: number, notes: string[]) {
  const { tx, file, bringer, now } = things;
  const ours = await readHead(tx, file.head.event.eventId, { madeBy: bringer, madeAt: now });
  await takeSettings(things, ours, notes);
  await takeItinerary(things, ours, notes);
  const renamed = await takeEntries(things, ours, notes);
  return takeWork({ ...things, file: renamed }, lockedSeq);
}

/** What a manager may change, by name: see `whoseStands`. */
const nameOf = {
  settings: () => 'settings',
  itinerary: () => 'itinerary',
  car: (id: string) => `car ${id}`,
  card: (id: string) => `card ${id}`,
  entry: (id: string) => `entry ${id}`,
};

function sumsOf(head: CarriedHead): Sums {
  return Object.fromEntries([
    [nameOf.settings(), sumOf(head.event.settings)],
    [nameOf.itinerary(), sumOf(newestOf(head).text)],
    ...head.cars.map((car) => [nameOf.car(car.carId), sumOf(car)]),
    ...head.cards.map((card) => [nameOf.card(card.cardId), sumOf(card)]),
    ...head.entries.map((entry) => [nameOf.entry(entry.entryId), sumOf(entry)]),
  ]);
}

function newestOf({ versions }: CarriedHead): CarriedHead['versions'][number] {
  const [newest] = [...versions].sort((one, other) => other.number - one.number);
  if (!newest) throw new AppError('badInput', MISFIT);
  return newest;
}

/** Takes theirs where it stands, and says so; says too where both changed it and ours was left. */
async function settle(
  { file, seen, isNewer }: Things,
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

async function takeCars(things: Things): Promise<string[]> {
  const { tx, file, now } = things;
  const { cars, cards } = file.head;
  const notes: string[] = [];
  const carsHere = new Map(
    (
      await loadCars(
        tx,
        cars.map(({ carId }) => carId),
      )
    ).map((car) => [car.carId, car]),
  );
  for (const car of cars) {
    const ours = carsHere.get(car.carId);
    const thing = { name: nameOf.car(car.carId), words: `The car “${car.name}”`, ours, theirs: car };
    await settle(things, thing, notes, async () => {
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
    await settle(things, thing, notes, () => updateCard(tx, card));
  }
  return notes;
}

async function takeSettings(things: Things, ours: CarriedHead, notes: string[]): Promise<void> {
  const { eventId, settings } = things.file.head.event;
  const words = 'What is set for the event (penalties, conditions, tyres)';
  const thing = { name: nameOf.settings(), words, ours: ours.event.settings, theirs: settings };
  await settle(things, thing, notes, () => updateSettings(things.tx, eventId, settings));
}

async function takeItinerary(things: Things, ours: CarriedHead, notes: string[]): Promise<void> {
  const { tx, file } = things;
  const { eventId } = file.head.event;
  const theirs = newestOf(file.head);
  const last = newestOf(ours);
  const thing = { name: nameOf.itinerary(), words: 'The itinerary', ours: last.text, theirs: theirs.text };
  await settle(things, thing, notes, async () => {
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
async function takeEntries(things: Things, ours: CarriedHead, notes: string[]): Promise<CarriedEvent> {
  const { tx, now } = things;
  let file = things.file;
  const { eventId } = file.head.event;
  const here = new Map(ours.entries.map((entry) => [entry.entryId, entry]));
  for (const entry of things.file.head.entries) {
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
    await settle(things, thing, notes, async () => {
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

/** So many are decided at once: the rows of a few hundred actions are read and written in one go. */
const DECIDED_AT_ONCE = 200;
const OTHER_CONTENT = 'Its id stands here for something else, so it was not taken.';

async function takeWork({ tx, file, bringer, now }: Things, lockedSeq: number) {
  const { eventId } = file.head.event;
  const contents = await findContents(
    tx,
    file.actions.map(({ actionId }) => actionId),
  );
  const known = file.actions.filter(({ actionId, content }) => contents.get(actionId)?.content === content);
  const other = file.actions.filter(
    ({ actionId, content }) => (contents.get(actionId)?.content ?? content) !== content,
  );
  const fresh = file.actions.filter(({ actionId }) => !contents.has(actionId));
  const named = namesIn(file);
  const refused = other.map((action) => ({ deed: deedOf(action, named), why: OTHER_CONTENT }));
  const revokedAt = await findRevocations(tx);
  const places = itinerariesOf(file.head);
  let seq = lockedSeq;
  let came = 0;
  const worked = fresh.filter(({ entries }) => entries.length > 0);
  for (let from = 0; from < worked.length; from += DECIDED_AT_ONCE) {
    const some = worked.slice(from, from + DECIDED_AT_ONCE);
    const arrivals = some.map((action) => arrivalOf(action, { bringer, revokedAt }));
    const answer = await decideArrivals(tx, { eventId, lockedSeq: seq, now, places }, arrivals);
    seq = answer.lastSeq;
    for (const [place, { status, sentence }] of answer.results.entries()) {
      const action = some[place];
      if (status === 'accepted') came += 1;
      else if (action) refused.push({ deed: deedOf(action, named), why: sentence });
    }
  }
  // What was refused there stays refused: its person was told, and did not do it.
  const refusedThere = fresh.filter(({ entries }) => entries.length === 0);
  await storeActions(tx, eventId, refusedThere, now);
  return { came, known: known.length, refused };
}

function arrivalOf(action: CarriedAction, by: { bringer: string; revokedAt: Map<string, number> }): Arrival {
  const { content, deviceSeq, deviceId, entries } = action;
  const entered = actionOfEntries(withLogEntries(action).entries, { deviceId, deviceSeq });
  if (!entered) throw new AppError('badInput', MISFIT);
  const pushed = { ...entered.action, args: { ...entered.action.args } };
  const flags = entries.flatMap((entry) => entry.flags);
  return {
    pushed,
    content,
    doer: {
      personId: pushed.by,
      enteredBy: entered.enteredBy,
      // Whether they might was decided where they did it; the manager who brings it in stands for it here.
      mayManage: true,
      revokedAt: by.revokedAt.get(entered.enteredBy) ?? null,
    },
    carried: { serviceStood: !flags.some(({ code }) => code === 'serviceCancelled'), broughtBy: by.bringer },
  };
}

function itinerariesOf({ versions }: CarriedHead): Itinerary[] {
  return versions.flatMap(({ text }) => {
    const read = readItineraryText(text);
    return read.ok ? [read.itinerary] : [];
  });
}

/** What the file's ids are called. */
function namesIn({ head, actions }: CarriedEvent): EntryNames {
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

function deedOf(action: CarriedAction, names: EntryNames): string {
  const [first] = withLogEntries(action).entries;
  return first ? entryInWords({ ...first, flags: [] }, names) : 'Something that was refused there';
}

async function picturesOf(tx: TeamTx, head: CarriedHead): Promise<TakeOutcome['pictures']> {
  const { eventId } = head.event;
  const missing = await findMissingPictures(tx, eventId);
  return head.pictures.map(({ photoId, bytes }) => ({ photoId, bytes, isMissing: missing.has(photoId) }));
}
