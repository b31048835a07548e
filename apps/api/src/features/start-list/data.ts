import type { SavedStartList, Starter } from '@halfshaft/itinerary';
import type { OrganiserTx, TeamTx } from '@halfshaft/store';
import { toDate } from '../../clock';

export interface StartListRow extends SavedStartList {
  source: string;
  savedAt: number;
}

/** All that were saved for an event that this side can see. */
export async function listStartListRows(
  tx: OrganiserTx | TeamTx,
  organiserId: string,
  publishedEventId: string,
): Promise<StartListRow[]> {
  const rows = await tx.db.startList.findMany({ where: { organiserId, eventId: publishedEventId } });
  return rows.map(({ number, section, source, starters, savedAt }) => ({
    number,
    section,
    source,
    starters: starters as unknown as Starter[],
    savedAt: savedAt.getTime(),
  }));
}

/** 0 while there is none. */
export async function findNewestListNumber(tx: OrganiserTx, publishedEventId: string): Promise<number> {
  const where = { organiserId: tx.organiserId, eventId: publishedEventId };
  const newest = await tx.db.startList.aggregate({ where, _max: { number: true } });
  return newest._max.number ?? 0;
}

export async function createStartListRow(
  tx: OrganiserTx,
  list: SavedStartList & { id: string; publishedEventId: string; source: string },
  now: number,
): Promise<void> {
  const { id, publishedEventId, number, section, source, starters } = list;
  await tx.db.startList.create({
    data: {
      organiserId: tx.organiserId,
      id,
      eventId: publishedEventId,
      number,
      section,
      source,
      starters: starters.map((starter) => ({ ...starter })),
      savedAt: toDate(now),
    },
  });
}
