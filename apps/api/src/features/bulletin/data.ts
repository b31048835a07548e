import type { ItineraryText } from '@halfshaft/contract';
import type { Itinerary } from '@halfshaft/itinerary';
import type { OrganiserTx, TeamTx } from '@halfshaft/store';
import { toDate } from '../../clock';
import { toItineraryText } from '../event/data';

/** 0 is the publication itself. */
export interface Issued {
  number: number;
  note: string;
  issuedAt: number;
}

/** A version of a published itinerary; without `issued` it is a draft. */
export interface OwnVersion {
  itineraryNumber: number;
  itinerary: Itinerary;
  text: ItineraryText;
  savedAt: number;
  issued: Issued | null;
}

/** All versions of one of the organiser's own events, oldest first; empty when it has no such event. */
export async function listOwnVersions(tx: OrganiserTx, publishedEventId: string): Promise<OwnVersion[]> {
  const rows = await tx.db.publishedItinerary.findMany({
    where: { organiserId: tx.organiserId, eventId: publishedEventId },
    include: { bulletin: true },
    orderBy: { number: 'asc' },
  });
  return rows.map(({ number, itinerary, source, savedAt, bulletin }) => ({
    itineraryNumber: number,
    itinerary: itinerary as unknown as Itinerary,
    text: toItineraryText(source),
    savedAt: savedAt.getTime(),
    issued: bulletin && toIssued(bulletin),
  }));
}

export async function createBulletinRow(
  tx: OrganiserTx,
  bulletin: {
    id: string;
    publishedEventId: string;
    number: number;
    itineraryNumber: number;
    note: string;
  },
  now: number,
): Promise<void> {
  const { id, publishedEventId, number, itineraryNumber, note } = bulletin;
  await tx.db.bulletin.create({
    data: {
      organiserId: tx.organiserId,
      id,
      eventId: publishedEventId,
      number,
      itineraryNumber,
      note,
      issuedAt: toDate(now),
    },
  });
}

/** From now on the days and the time zone of the issued version are the event's. */
export async function updatePublishedDates(
  tx: OrganiserTx,
  publishedEventId: string,
  { timeZone, startsOn }: ItineraryText,
): Promise<void> {
  await tx.db.publishedEvent.update({
    where: { organiserId_id: { organiserId: tx.organiserId, id: publishedEventId } },
    data: { timeZone, startsOn: toDate(startsOn) },
  });
}

/** Where the team's event came from, and which bulletins its versions are copies of. Null for a private event. */
export async function findTakenOver(tx: TeamTx, eventId: string) {
  const row = await tx.db.event.findUnique({
    where: { teamId_id: { teamId: tx.teamId, id: eventId } },
    include: {
      versions: { select: { number: true, bulletinNumber: true }, orderBy: { number: 'desc' } },
    },
  });
  if (!row?.organiserId || !row.publishedEventId) return null;
  return { organiserId: row.organiserId, publishedEventId: row.publishedEventId, versions: row.versions };
}

/** The newest bulletin with a number above `above` that any team can see of an event, with its itinerary. */
export async function findNewestIssued(
  tx: TeamTx,
  { organiserId, publishedEventId, above }: { organiserId: string; publishedEventId: string; above: number },
) {
  const row = await tx.db.bulletin.findFirst({
    where: { organiserId, eventId: publishedEventId, number: { gt: above } },
    include: { version: { include: { event: { include: { organiser: true } } } } },
    orderBy: { number: 'desc' },
  });
  if (!row) return null;
  const { source, itinerary, event } = row.version;
  return {
    issued: toIssued(row),
    organiserName: event.organiser.name,
    text: toItineraryText(source),
    itinerary: itinerary as unknown as Itinerary,
  };
}

function toIssued({ number, note, issuedAt }: { number: number; note: string; issuedAt: Date }): Issued {
  return { number, note, issuedAt: issuedAt.getTime() };
}
