import { randomUUID } from 'node:crypto';
import type {
  BringInReport,
  CarriedAction,
  CarriedEvent,
  CarriedHead,
  LookOutcome,
  TakeOutcome,
} from '@halfshaft/contract';
import type { MemberTx, Store, TeamTx } from '@halfshaft/store';
import { actionOfEntries, changesOf, emptyState, rebuild } from '@halfshaft/worklog';
import { AppError, unknown } from '../../errors';
import { readHead } from '../carry/service';
import { readItineraryText } from '../event/service';
import { mayManage, maySeeEvent } from '../people/ability';
import { type Arrival, decideArrivals } from '../work/service';
import {
  addPeople,
  createAdmin,
  createBringInRow,
  createEntryRow,
  createEventRow,
  createTeamRow,
  createVersion,
  findContents,
  findEventName,
  findMissingPictures,
  findNewestMadeAt,
  findRevocations,
  inCarriedTeam,
  isElsewhere,
  listBringInRows,
  loadSeen,
  lockLog,
  MISFIT,
  NOT_YOURS,
  storeActions,
  updateSettings,
  writeLog,
} from './data';
import { checkFile, deedOf, itinerariesOf, namesIn, newestOf, sumsOf, withLogEntries } from './file';
import { type Merging, takeCars, takeEntries, takeItinerary, takeSettings } from './merge';

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
  const merging = { ...bringing, isNewer, seen: await loadSeen(tx) };
  const notes = await takeCars(merging);
  if (lockedSeq !== null) notes.push(...peopleNotes(added));
  const taken = lockedSeq === null ? await takeNewEvent(bringing) : await takeMore(merging, lockedSeq, notes);
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

/** More of an event that is here already: what managers changed first, since the work may speak of it. */
async function takeMore(merging: Bringing & Merging, lockedSeq: number, notes: string[]) {
  const { tx, file, bringer, now } = merging;
  const ours = await readHead(tx, file.head.event.eventId, { madeBy: bringer, madeAt: now });
  await takeSettings(merging, ours, notes);
  await takeItinerary(merging, ours, notes);
  const renamed = await takeEntries(merging, ours, notes);
  return takeWork({ ...merging, file: renamed }, lockedSeq);
}

/** So many are decided at once: the rows of a few hundred actions are read and written in one go. */
const DECIDED_AT_ONCE = 200;
const OTHER_CONTENT = 'Its id stands here for something else, so it was not taken.';

async function takeWork({ tx, file, bringer, now }: Bringing, lockedSeq: number) {
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

async function picturesOf(tx: TeamTx, head: CarriedHead): Promise<TakeOutcome['pictures']> {
  const { eventId } = head.event;
  const missing = await findMissingPictures(tx, eventId);
  return head.pictures.map(({ photoId, bytes }) => ({ photoId, bytes, isMissing: missing.has(photoId) }));
}
