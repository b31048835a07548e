import type { ControlPass } from '@halfshaft/itinerary';
import type { OrganiserTx } from '@halfshaft/store';
import { toDate } from '../../clock';

export interface TimeListRow {
  source: string;
  passes: ControlPass[];
  maxLateMinutes: number;
  /** Membership of the organiser. */
  savedBy: string;
  savedAt: number;
}

/** The organiser's lists of times by their event, or the one of the event that is asked for. */
export async function findTimeLists(
  tx: OrganiserTx,
  publishedEventId?: string,
): Promise<Map<string, TimeListRow>> {
  const { organiserId } = tx;
  const rows = await tx.db.timeList.findMany({
    where: { organiserId, ...(publishedEventId ? { eventId: publishedEventId } : {}) },
  });
  return new Map(
    rows.map(({ eventId, source, passes, maxLateMinutes, savedBy, savedAt }) => [
      eventId,
      {
        source,
        passes: passes as unknown as ControlPass[],
        maxLateMinutes,
        savedBy,
        savedAt: savedAt.getTime(),
      },
    ]),
  );
}

/** Puts the list in place of the one before, so that the same save twice is one. */
export async function writeTimeList(
  tx: OrganiserTx,
  publishedEventId: string,
  { source, passes, maxLateMinutes, savedBy, savedAt }: TimeListRow,
): Promise<void> {
  const { organiserId } = tx;
  const body = {
    source,
    passes: passes.map((pass) => ({ ...pass })),
    maxLateMinutes,
    savedBy,
    savedAt: toDate(savedAt),
  };
  await tx.db.timeList.upsert({
    where: { organiserId_eventId: { organiserId, eventId: publishedEventId } },
    create: { organiserId, eventId: publishedEventId, ...body },
    update: body,
  });
}
