import { randomUUID } from 'node:crypto';
import type { ShareChoice } from '@halfshaft/contract';
import type { SharedCopy, SharedPart, ShareLevel, ToldRelease } from '@halfshaft/reliability';
import { lendOrganiser, type MemberTx, type OrganiserTx } from '@halfshaft/store';
import type { CarCounts, Snag } from '@halfshaft/worklog';
import { toDate } from '../../clock';

export interface ShareRow {
  contributor: string;
  choice: ShareChoice;
  changedAt: number;
}

/** Whose event the team took over, by name. */
export interface TakenEvent {
  organiserId: string;
  publishedEventId: string;
}

export async function findOrganiserName(tx: MemberTx, organiserId: string): Promise<string | null> {
  const row = await tx.db.organiser.findUnique({ where: { organiserId } });
  return row?.name ?? null;
}

export async function listSnags(tx: MemberTx, eventId: string): Promise<Snag[]> {
  const rows = await tx.db.snag.findMany({ where: { teamId: tx.teamId, eventId } });
  return rows.map((row) => row.body as unknown as Snag);
}

export async function findShare(tx: MemberTx, eventId: string): Promise<ShareRow | null> {
  const row = await tx.db.share.findUnique({ where: { teamId_eventId: { teamId: tx.teamId, eventId } } });
  if (!row) return null;
  return {
    contributor: row.contributor,
    choice: row.level as ShareChoice,
    changedAt: row.changedAt.getTime(),
  };
}

/** What stands for the team at this organiser: the same at each of its events, so that a team counts once. */
export async function findContributor(tx: MemberTx, organiserId: string): Promise<string | null> {
  const row = await tx.db.share.findFirst({ where: { teamId: tx.teamId, organiserId } });
  return row?.contributor ?? null;
}

export async function saveShare(
  tx: MemberTx,
  share: { eventId: string; organiserId: string; contributor: string; choice: ShareChoice },
  now: number,
): Promise<void> {
  const { eventId, organiserId, contributor, choice } = share;
  const changed = { level: choice, changedBy: tx.member.personId, changedAt: toDate(now) };
  await tx.db.share.upsert({
    where: { teamId_eventId: { teamId: tx.teamId, eventId } },
    create: { teamId: tx.teamId, id: randomUUID(), eventId, organiserId, contributor, ...changed },
    update: changed,
  });
}

/** The newest copy of what the team shares of this event. */
export function findCopy(
  tx: MemberTx,
  { organiserId, publishedEventId }: TakenEvent,
  contributor: string,
): Promise<CarCounts[] | null> {
  return lendOrganiser(tx, organiserId, async () => {
    const row = await tx.db.sharedRecord.findFirst({
      where: { organiserId, eventId: publishedEventId, contributor },
      orderBy: { sharedAt: 'desc' },
    });
    return (row?.body as unknown as CarCounts[] | undefined) ?? null;
  });
}

export function addCopy(
  tx: MemberTx,
  { organiserId, publishedEventId }: TakenEvent,
  copy: { contributor: string; level: ShareLevel; cars: CarCounts[] },
  now: number,
): Promise<void> {
  const { contributor, level, cars } = copy;
  return lendOrganiser(tx, organiserId, async () => {
    await tx.db.sharedRecord.create({
      data: {
        ...{ organiserId, id: randomUUID(), eventId: publishedEventId, contributor, level },
        body: cars.map((car) => ({ ...car })),
        sharedAt: toDate(now),
      },
    });
  });
}

/** All copies, old ones too: what may be listed as a row is what is agreed to now. */
export function setLevelOfCopies(
  tx: MemberTx,
  { organiserId, publishedEventId }: TakenEvent,
  contributor: string,
  level: ShareLevel,
): Promise<void> {
  return lendOrganiser(tx, organiserId, async () => {
    const where = { organiserId, eventId: publishedEventId, contributor };
    await tx.db.sharedRecord.updateMany({ where, data: { level } });
  });
}

export function deleteCopies(
  tx: MemberTx,
  { organiserId, publishedEventId }: TakenEvent,
  contributor: string,
): Promise<void> {
  return lendOrganiser(tx, organiserId, async () => {
    await tx.db.sharedRecord.deleteMany({ where: { organiserId, eventId: publishedEventId, contributor } });
  });
}

/** One telling after the other: each counts for the next. */
export async function lockTelling(tx: OrganiserTx): Promise<void> {
  await tx.db.$queryRaw`SELECT FROM organiser WHERE organiser_id = ${tx.organiserId}::uuid FOR UPDATE`;
}

/** In the order in which they are held. Nobody has anything to share of a draft, so it must fill no pool. */
export async function listPublished(tx: OrganiserTx): Promise<{ id: string; name: string }[]> {
  return tx.db.publishedEvent.findMany({
    where: { organiserId: tx.organiserId, publishedAt: { not: null } },
    select: { id: true, name: true },
    orderBy: [{ startsOn: 'asc' }, { id: 'asc' }],
  });
}

export async function listCopies(tx: OrganiserTx): Promise<(SharedCopy & { cars: CarCounts[] })[]> {
  const rows = await tx.db.sharedRecord.findMany({ where: { organiserId: tx.organiserId } });
  return rows.map((row) => ({
    team: row.contributor,
    event: row.eventId,
    content: row.id,
    level: row.level as ShareLevel,
    sharedAt: row.sharedAt.getTime(),
    cars: row.body as unknown as CarCounts[],
  }));
}

export async function listReleases(tx: OrganiserTx): Promise<ToldRelease[]> {
  const rows = await tx.db.sharedRelease.findMany({
    where: { organiserId: tx.organiserId },
    orderBy: { number: 'asc' },
  });
  return rows.map(({ kind, events, parts }) => ({
    kind: kind as ShareLevel,
    events: events as unknown as string[],
    parts: parts as unknown as SharedPart[],
  }));
}

/** `after`: how many there are already. */
export async function addReleases(
  tx: OrganiserTx,
  releases: readonly ToldRelease[],
  after: number,
  now: number,
): Promise<void> {
  await tx.db.sharedRelease.createMany({
    data: releases.map(({ kind, events, parts }, index) => ({
      ...{ organiserId: tx.organiserId, id: randomUUID(), number: after + index + 1, kind },
      events: [...events],
      parts: parts.map((part) => ({ ...part })),
      releasedAt: toDate(now),
    })),
  });
}
