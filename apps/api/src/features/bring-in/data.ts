import type { BringInReport, CarriedAction, CarriedHead } from '@halfshaft/contract';
import type { Itinerary } from '@halfshaft/itinerary';
import { type MemberTx, NotAMember, type Store, type TeamTx, withCarriedTeam } from '@halfshaft/store';
import type { Sums, WorkChanges } from '@halfshaft/worklog';
import { toDate } from '../../clock';
import { AppError } from '../../errors';
import { createVersionRow } from '../event/data';
import { initialsOf } from '../team/data';
import { saveChanges } from '../work/data';

export { createCarRow, updateCarRow } from '../car/data';
export { loadCards, loadCars, loadSeen, sumOf } from '../carry/data';
export {
  createEntryRow,
  createEventRow,
  createVersionRow,
  findEventName,
  findTaken,
  updateEntryRow,
  updateEventDates,
  updateSettings,
} from '../event/data';
export { createTeamRow } from '../team/data';
export { lockLog, storeActions } from '../work/data';

type Standing = { isNew: true; tx: TeamTx } | { isNew: false; tx: MemberTx };

export const NOT_YOURS =
  'This team is on this server already, and you are not one of its managers here. Ask one of them to bring the file in.';
export const MISFIT =
  'The file does not fit together, or not with what is here, so nothing was brought in. Make it once more on the other server.';

/** One transaction for a whole file: all of it comes in, or nothing. */
export async function inCarriedTeam<T>(
  store: Store,
  claim: { teamId: string; userId: string },
  work: (standing: Standing) => Promise<T>,
): Promise<T> {
  try {
    return await withCarriedTeam(store, claim, work);
  } catch (error) {
    if (error instanceof NotAMember) throw new AppError('notAllowed', NOT_YOURS);
    if (isMisfit(error)) throw new AppError('badInput', MISFIT);
    throw error;
  }
}

/** The keys of the tables caught what the checks before did not: a key that is taken or points nowhere, a value out of bounds. */
const KEY_BROKEN = /P2002|P2003|P2004|P2020|23503|23505|23514|22003/;

function isMisfit(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  const { code, meta } = error as { code?: unknown; meta?: unknown };
  return typeof code === 'string' && KEY_BROKEN.test(`${code} ${JSON.stringify(meta ?? {})}`);
}

/** Those of these people that the team has not. */
export async function addPeople(
  { db, teamId }: TeamTx,
  people: CarriedHead['people'],
  now: number,
): Promise<CarriedHead['people']> {
  const rows = await db.person.findMany({ where: { teamId }, select: { id: true } });
  const here = new Set(rows.map(({ id }) => id));
  const missing = people.filter(({ personId }) => !here.has(personId));
  await db.person.createMany({
    data: missing.map(({ personId, name }) => ({
      teamId,
      id: personId,
      name,
      initials: initialsOf(name),
      createdAt: toDate(now),
    })),
  });
  return missing;
}

/** An account becomes a person that is there already. */
export async function createAdmin(
  { db, teamId }: TeamTx,
  member: { membershipId: string; userId: string; personId: string },
  now: number,
): Promise<void> {
  const { membershipId: id, userId, personId } = member;
  await db.membership.create({
    data: { teamId, id, userId, personId, role: 'admin', eventId: null, createdAt: toDate(now) },
  });
}

/** By person: when they left the team here, if they did. */
export async function findRevocations({ db, teamId }: TeamTx): Promise<Map<string, number>> {
  const rows = await db.membership.findMany({ where: { teamId, revokedAt: { not: null } } });
  return new Map(rows.map(({ personId, revokedAt }) => [personId, revokedAt?.getTime() ?? 0]));
}

type Card = CarriedHead['cards'][number];

export async function createCards({ db, teamId }: TeamTx, cards: Card[], now: number): Promise<void> {
  await db.card.createMany({
    data: cards.map(({ cardId, carId, ordinal, card, removedAt }) => ({
      teamId,
      id: cardId,
      carId,
      ordinal,
      body: { ...card },
      createdAt: toDate(now),
      removedAt: removedAt === null ? null : toDate(removedAt),
    })),
  });
}

export async function updateCard({ db, teamId }: TeamTx, { cardId, carId, ordinal, card, removedAt }: Card) {
  await db.card.updateMany({
    where: { teamId, id: cardId, carId },
    data: { ordinal, body: { ...card }, removedAt: removedAt === null ? null : toDate(removedAt) },
  });
}

export async function createVersion(
  tx: TeamTx,
  eventId: string,
  version: CarriedHead['versions'][number] & { itinerary: Itinerary },
): Promise<void> {
  const { versionId: id, number, text, itinerary, savedBy, savedAt, bulletinNumber } = version;
  const bulletin = bulletinNumber === null ? {} : { bulletinNumber };
  await createVersionRow(tx, { id, eventId, number, text, itinerary, savedBy, ...bulletin }, savedAt);
}

/** Whether the bulletin stands on a version of the event already. */
export async function hasBulletin(
  { db, teamId }: TeamTx,
  eventId: string,
  bulletinNumber: number,
): Promise<boolean> {
  return (await db.itineraryVersion.count({ where: { teamId, eventId, bulletinNumber } })) > 0;
}

/** By action of the team: what its content was, in whichever event. */
export async function findContents(
  { db, teamId }: TeamTx,
  actionIds: string[],
): Promise<Map<string, { content: string }>> {
  const rows = await db.$queryRaw<{ id: string; content: string }[]>`
    SELECT id::text, content FROM action WHERE team_id = ${teamId}::uuid AND id = ANY(${actionIds}::uuid[])`;
  return new Map(rows.map(({ id, content }) => [id, { content }]));
}

/** Whether any of these stands in another event of the team already. */
export async function isElsewhere(
  { db, teamId }: TeamTx,
  eventId: string,
  ids: { cards: Card[]; entries: string[]; actions: string[]; snags: string[]; facts: string[] },
): Promise<boolean> {
  const cards = JSON.stringify(ids.cards.map(({ cardId, carId }) => ({ cardId, carId })));
  const [row] = await db.$queryRaw<{ clash: boolean }[]>`SELECT
    EXISTS (SELECT FROM jsonb_array_elements(${cards}::jsonb) c JOIN card ON team_id = ${teamId}::uuid
      AND id = (c->>'cardId')::uuid AND car_id <> (c->>'carId')::uuid) OR
    EXISTS (SELECT FROM entry WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.entries}::uuid[]) AND event_id <> ${eventId}::uuid) OR
    EXISTS (SELECT FROM action WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.actions}::uuid[]) AND event_id <> ${eventId}::uuid) OR
    EXISTS (SELECT FROM snag WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.snags}::uuid[]) AND event_id <> ${eventId}::uuid) OR
    EXISTS (SELECT FROM car_fact WHERE team_id = ${teamId}::uuid AND id = ANY(${ids.facts}::uuid[]) AND event_id <> ${eventId}::uuid)
    AS clash`;
  return row?.clash ?? false;
}

/** So many go in one statement. */
const AT_ONCE = 1000;

/** A whole log as it was written on another server, into an event that has none yet, with what it gives. */
export async function writeLog(
  tx: TeamTx,
  eventId: string,
  actions: CarriedAction[],
  changes: WorkChanges,
): Promise<void> {
  for (let from = 0; from < actions.length; from += AT_ONCE) {
    await writeSome(tx, eventId, actions.slice(from, from + AT_ONCE));
  }
  const lastSeq = actions.reduce((sum, { entries }) => sum + entries.length, 0);
  const { teamId, db } = tx;
  await db.logHead.update({ where: { teamId_eventId: { teamId, eventId } }, data: { lastSeq } });
  await saveChanges(tx, eventId, changes);
}

async function writeSome({ db, teamId }: TeamTx, eventId: string, actions: CarriedAction[]): Promise<void> {
  await db.action.createMany({
    data: actions.map(({ actionId: id, deviceId, deviceSeq, content, result, receivedAt }) => ({
      ...{ teamId, id, eventId, deviceId, deviceSeq, content },
      outcome: result,
      receivedAt: toDate(receivedAt),
    })),
  });
  const rows = actions.flatMap(({ actionId, deviceId, entries }) =>
    entries.map((entry) => ({ ...entry, actionId, deviceId, kind: entry.body.kind })),
  );
  await db.$executeRaw`
    INSERT INTO log_entry
      (team_id, event_id, seq, action_id, kind, by_person, entered_by, device_id, device_time, server_time, flags, body)
    SELECT ${teamId}::uuid, ${eventId}::uuid, (e->>'seq')::int, (e->>'actionId')::uuid, e->>'kind', (e->>'by')::uuid,
      (e->>'enteredBy')::uuid, e->>'deviceId', (e->>'deviceTime')::bigint, (e->>'serverTime')::bigint, e->'flags', e->'body'
    FROM jsonb_array_elements(${JSON.stringify(rows)}::jsonb) e`;
}

/** When the newest file that came in for this event was made, in milliseconds; 0 before the first. */
export async function findNewestMadeAt({ db, teamId }: TeamTx, eventId: string): Promise<number> {
  const row = await db.bringIn.findFirst({ where: { teamId, eventId }, orderBy: { madeAt: 'desc' } });
  return row?.madeAt.getTime() ?? 0;
}

export interface BringInRow {
  id: string;
  eventId: string;
  broughtBy: string;
  madeAt: number;
  seen: Sums;
  /** By photo: the check sum of its picture as the other server has it. */
  pictures: Record<string, string>;
  report: BringInReport;
}

export async function createBringInRow({ db, teamId }: TeamTx, row: BringInRow, now: number): Promise<void> {
  const { id, eventId, broughtBy, madeAt, seen, pictures, report } = row;
  await db.bringIn.create({
    data: {
      ...{ teamId, id, eventId, broughtBy, pictures, report },
      seen: { ...seen },
      madeAt: toDate(madeAt),
      broughtAt: toDate(now),
    },
  });
}

export async function listBringInRows({ db, teamId }: TeamTx, eventId: string) {
  const rows = await db.bringIn.findMany({
    where: { teamId, eventId },
    include: { bringer: true },
    orderBy: { broughtAt: 'desc' },
  });
  return rows.map(({ id, bringer, broughtAt, report }) => ({
    id,
    broughtBy: bringer.name,
    broughtAt: broughtAt.getTime(),
    report: report as unknown as BringInReport,
  }));
}

/** The photos that the event's log speaks of and whose pictures are not here. */
export async function findMissingPictures({ db, teamId }: TeamTx, eventId: string): Promise<Set<string>> {
  const rows = await db.$queryRaw<{ id: string }[]>`
    SELECT id::text FROM car_fact WHERE team_id = ${teamId}::uuid AND event_id = ${eventId}::uuid
      AND body->'fact'->>'kind' = 'photo' AND NOT (body->>'withdrawn')::boolean
      AND NOT EXISTS (SELECT FROM photo WHERE photo.team_id = ${teamId}::uuid AND photo.id = car_fact.id)`;
  return new Set(rows.map(({ id }) => id));
}
