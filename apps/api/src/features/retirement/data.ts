import type { CarRecord, Itinerary } from '@halfshaft/itinerary';
import type { OrganiserTx } from '@halfshaft/store';
import { toDate, toDay } from '../../clock';

export interface RetirementListRow {
  source: string;
  records: CarRecord[];
  /** Membership of the organiser. */
  savedBy: string;
  savedAt: number;
}

/** A published event of the organiser with the itinerary that holds: the newest one issued. */
export interface HeldEvent {
  publishedEventId: string;
  name: string;
  startsOn: string;
  itinerary: Itinerary;
  list: RetirementListRow | null;
}

/** The organiser's published events in the order they were held, or the one of them that is asked for. */
export async function listHeldEvents(tx: OrganiserTx, publishedEventId?: string): Promise<HeldEvent[]> {
  const rows = await tx.db.publishedEvent.findMany({
    where: {
      organiserId: tx.organiserId,
      publishedAt: { not: null },
      ...(publishedEventId ? { id: publishedEventId } : {}),
    },
    include: {
      retirements: true,
      itineraries: { where: { bulletin: { isNot: null } }, orderBy: { number: 'desc' }, take: 1 },
    },
    orderBy: [{ startsOn: 'asc' }, { createdAt: 'asc' }],
  });
  return rows.flatMap(({ id, name, startsOn, itineraries: [held], retirements: list }) =>
    held
      ? [
          {
            publishedEventId: id,
            name,
            startsOn: toDay(startsOn),
            itinerary: held.itinerary as unknown as Itinerary,
            list: list && toList(list),
          },
        ]
      : [],
  );
}

function toList(row: {
  source: string;
  records: unknown;
  savedBy: string;
  savedAt: Date;
}): RetirementListRow {
  const { source, records, savedBy, savedAt } = row;
  return { source, records: records as CarRecord[], savedBy, savedAt: savedAt.getTime() };
}

/** The membership that stands for an account inside the fence. */
export async function findOwnMembership(tx: OrganiserTx, userId: string): Promise<string> {
  const { id } = await tx.db.organiserMembership.findUniqueOrThrow({
    where: { organiserId_userId: { organiserId: tx.organiserId, userId } },
  });
  return id;
}

/** Puts the list in place of the one before, so that the same save twice is one. */
export async function writeRetirementList(
  tx: OrganiserTx,
  publishedEventId: string,
  { source, records, savedBy, savedAt }: RetirementListRow,
): Promise<void> {
  const { organiserId } = tx;
  const body = { source, records: records as object[], savedBy, savedAt: toDate(savedAt) };
  await tx.db.retirementList.upsert({
    where: { organiserId_eventId: { organiserId, eventId: publishedEventId } },
    create: { organiserId, eventId: publishedEventId, ...body },
    update: body,
  });
}
