import { createHash } from 'node:crypto';
import type { CarriedAction, CarriedHead, PushResult } from '@halfshaft/contract';
import type { TeamTx } from '@halfshaft/store';
import { type LogEntry, type Sums, textInKeyOrder } from '@halfshaft/worklog';
import { toCar } from '../car/data';
import { toCard } from '../card/data';
import { toItineraryText } from '../event/data';

export { findEvent } from '../event/data';
export { findTeamName } from '../team/data';
export { listLogEntries } from '../work/data';

type HeadRows = Pick<CarriedHead, 'people' | 'cars' | 'cards' | 'versions' | 'entries'>;

/** The rows that a log may speak of, removed cards too. Read after the log, so that nothing in it is missing here. */
export async function loadHeadRows(tx: TeamTx, eventId: string): Promise<HeadRows> {
  const entries = await loadEntries(tx, eventId);
  const carIds = entries.map(({ carId }) => carId);
  return {
    people: await loadPeople(tx),
    cars: await loadCars(tx, carIds),
    cards: await loadCards(tx, { carId: { in: carIds } }),
    versions: await loadVersions(tx, eventId),
    entries,
  };
}

async function loadPeople({ db, teamId }: TeamTx): Promise<CarriedHead['people']> {
  const rows = await db.person.findMany({ where: { teamId }, include: { memberships: true } });
  return rows.map(({ id, name, memberships }) => {
    const wholeTeam = memberships.find(({ eventId, revokedAt }) => eventId === null && revokedAt === null);
    return { personId: id, name, role: (wholeTeam?.role ?? null) as CarriedHead['people'][number]['role'] };
  });
}

export async function loadCars({ db, teamId }: TeamTx, carIds: string[]): Promise<CarriedHead['cars']> {
  return (await db.car.findMany({ where: { teamId, id: { in: carIds } } })).map(toCar);
}

export async function loadCards(
  { db, teamId }: TeamTx,
  which: { carId: { in: string[] } } | { id: { in: string[] } },
): Promise<CarriedHead['cards']> {
  const rows = await db.card.findMany({ where: { teamId, ...which }, orderBy: { ordinal: 'asc' } });
  return rows.map((row) => {
    const { id: cardId, ...card } = toCard(row);
    const { carId, ordinal, removedAt } = row;
    return { cardId, carId, ordinal, card, removedAt: removedAt?.getTime() ?? null };
  });
}

async function loadVersions({ db, teamId }: TeamTx, eventId: string): Promise<CarriedHead['versions']> {
  const rows = await db.itineraryVersion.findMany({ where: { teamId, eventId }, orderBy: { number: 'asc' } });
  return rows.map(({ id, number, source, savedBy, savedAt, bulletinNumber }) => ({
    versionId: id,
    number,
    text: toItineraryText(source),
    bulletinNumber,
    savedBy,
    savedAt: savedAt.getTime(),
  }));
}

async function loadEntries({ db, teamId }: TeamTx, eventId: string): Promise<CarriedHead['entries']> {
  const rows = await db.entry.findMany({ where: { teamId, eventId }, orderBy: { startPosition: 'asc' } });
  return rows.map(({ id, carId, carNumber, startPosition, positionsBySection, people, carried }) => ({
    entryId: id,
    carId,
    carNumber,
    startPosition,
    positionsBySection: positionsBySection as CarriedHead['entries'][number]['positionsBySection'],
    people,
    carried: carried as CarriedHead['entries'][number]['carried'],
  }));
}

export async function findOrigin(
  { db, teamId }: TeamTx,
  eventId: string,
): Promise<CarriedHead['event']['from']> {
  const row = await db.event.findUnique({ where: { teamId_id: { teamId, id: eventId } } });
  const { organiserId, publishedEventId } = row ?? {};
  return organiserId && publishedEventId ? { organiserId, publishedEventId } : null;
}

/** Every action that the event's log has answered, with the entries it made among these. */
export async function loadActions(
  { db, teamId }: TeamTx,
  eventId: string,
  log: readonly LogEntry[],
): Promise<CarriedAction[]> {
  const entriesOf = new Map<string, LogEntry[]>();
  for (const entry of log) entriesOf.set(entry.actionId, [...(entriesOf.get(entry.actionId) ?? []), entry]);
  const rows = await db.action.findMany({ where: { teamId, eventId }, orderBy: { receivedAt: 'asc' } });
  const actions = rows.map(({ id, deviceId, deviceSeq, content, outcome, receivedAt }) => ({
    actionId: id,
    deviceId,
    deviceSeq,
    content,
    result: outcome as unknown as PushResult,
    receivedAt: receivedAt.getTime(),
    entries: (entriesOf.get(id) ?? []).map(({ actionId: _a, deviceId: _d, serverTime, ...entry }) => ({
      ...entry,
      serverTime: serverTime ?? 0,
    })),
  }));
  return actions
    .filter(({ result, entries }) => result.status === 'refused' || entries.length > 0)
    .sort((one, other) => placeOf(one) - placeOf(other));
}

/** As in the log; what was refused comes last. */
function placeOf({ entries }: CarriedAction): number {
  return entries[0]?.seq ?? Number.MAX_SAFE_INTEGER;
}

/** The pictures that are stored, as they are stored: drawn anew, so no longer the file that the log speaks of. */
export async function listPictures(
  { db, teamId }: TeamTx,
  eventId: string,
): Promise<CarriedHead['pictures']> {
  return db.$queryRaw`
    SELECT id AS "photoId", length(image) AS bytes, encode(sha256(image), 'hex') AS sha256 FROM photo
    WHERE team_id = ${teamId}::uuid AND event_id = ${eventId}::uuid ORDER BY id`;
}

/** By thing: what was last seen of the other servers. */
export async function loadSeen({ db, teamId }: TeamTx): Promise<Sums> {
  const rows = await db.bringIn.findMany({ where: { teamId }, orderBy: { broughtAt: 'asc' } });
  return Object.assign({}, ...rows.map(({ seen }) => seen));
}

/** A check sum of what a thing says, whatever the order of its keys. */
export function sumOf(value: unknown): string {
  return createHash('sha256').update(textInKeyOrder(value)).digest('hex');
}
