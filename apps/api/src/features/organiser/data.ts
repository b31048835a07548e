import type { ItineraryText } from '@halfshaft/contract';
import type { Itinerary } from '@halfshaft/itinerary';
import { asNewOrganiser, type OrganiserTx } from '@halfshaft/store';
import { toDate, toDay } from '../../clock';
import { toItineraryText } from '../event/data';

export { asNewOrganiser };

export async function createOrganiserRows(
  tx: OrganiserTx,
  { name, membershipId, userId }: { name: string; membershipId: string; userId: string },
  now: number,
): Promise<void> {
  const { organiserId, db } = tx;
  await db.organiser.create({ data: { organiserId, name, createdAt: toDate(now) } });
  await db.organiserMembership.create({
    data: { organiserId, id: membershipId, userId, createdAt: toDate(now) },
  });
}

/** The organiser's own events, published or not. */
export async function listOwnEvents(tx: OrganiserTx) {
  const rows = await tx.db.publishedEvent.findMany({
    where: { organiserId: tx.organiserId },
    include: { itineraries: { include: { bulletin: true }, orderBy: { number: 'desc' } } },
    orderBy: { startsOn: 'desc' },
  });
  return rows.map(({ id, name, timeZone, startsOn, publishedAt, itineraries: [newest, ...earlier] }) => ({
    publishedEventId: id,
    name,
    timeZone,
    startsOn: toDay(startsOn),
    publishedAt: publishedAt?.getTime() ?? null,
    versions: newest ? 1 + earlier.length : 0,
    bulletinNumber: [newest, ...earlier].find((version) => version?.bulletin)?.bulletin?.number ?? null,
    hasDraft: publishedAt !== null && newest !== undefined && newest.bulletin === null,
    itineraryText: newest ? toItineraryText(newest.source) : null,
  }));
}

/** The newest version of one of the organiser's own events; null when it has no such event. */
export interface NewestVersion {
  number: number;
  /** As every team sees them; null before the publication. */
  publishedDates: { timeZone: string; startsOn: string } | null;
}

export async function findNewest(tx: OrganiserTx, publishedEventId: string): Promise<NewestVersion | null> {
  const row = await tx.db.publishedEvent.findUnique({
    where: { organiserId_id: { organiserId: tx.organiserId, id: publishedEventId } },
    include: { itineraries: { orderBy: { number: 'desc' }, take: 1 } },
  });
  if (!row) return null;
  const dates = { timeZone: row.timeZone, startsOn: toDay(row.startsOn) };
  return { number: row.itineraries[0]?.number ?? 0, publishedDates: row.publishedAt ? dates : null };
}

export async function writeEventRow(
  tx: OrganiserTx,
  event: { publishedEventId: string; name: string; timeZone: string; startsOn: string },
  now: number,
): Promise<void> {
  const { organiserId } = tx;
  const { publishedEventId: id, name, timeZone } = event;
  const fields = { name, timeZone, startsOn: toDate(event.startsOn) };
  await tx.db.publishedEvent.upsert({
    where: { organiserId_id: { organiserId, id } },
    create: { organiserId, id, ...fields, createdAt: toDate(now) },
    update: fields,
  });
}

export async function createItineraryRow(
  tx: OrganiserTx,
  version: {
    id: string;
    publishedEventId: string;
    number: number;
    text: ItineraryText;
    itinerary: Itinerary;
  },
  now: number,
): Promise<void> {
  const { id, publishedEventId, number, text, itinerary } = version;
  await tx.db.publishedItinerary.create({
    data: {
      organiserId: tx.organiserId,
      id,
      eventId: publishedEventId,
      number,
      source: { ...text },
      itinerary: itinerary as object,
      savedAt: toDate(now),
    },
  });
}

export async function publishRow(tx: OrganiserTx, publishedEventId: string, now: number): Promise<void> {
  await tx.db.publishedEvent.updateMany({
    where: { organiserId: tx.organiserId, id: publishedEventId, publishedAt: null },
    data: { publishedAt: toDate(now) },
  });
}
