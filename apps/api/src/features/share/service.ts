import { randomUUID } from 'node:crypto';
import type { chooseShareInput, TeamShare, ToldShares } from '@halfshaft/contract';
import { countTeams, planTelling } from '@halfshaft/reliability';
import type { MemberTx, OrganiserTx } from '@halfshaft/store';
import { type CarCounts, carCountsOf, isSameCounts, sumOfCounts } from '@halfshaft/worklog';
import type { z } from 'zod';
import { AppError, notAllowed, unknown } from '../../errors';
import { findTakenOver } from '../bulletin/data';
import { findEventName, findItinerary, listEntries } from '../event/data';
import { mayManage, maySeeEvent } from '../people/ability';
import { listFacts, listStages, listTasks } from '../work/data';
import {
  addCopy,
  addReleases,
  deleteCopies,
  findContributor,
  findCopy,
  findOrganiserName,
  findShare,
  listCopies,
  listPublished,
  listReleases,
  listSnags,
  lockTelling,
  saveShare,
  setLevelOfCopies,
} from './data';

/**
 * What the organiser is told of the event. The log is only counted where something was told that may be old by now. Null for an
 * event that no organiser published.
 */
export async function getShare(tx: MemberTx, eventId: string): Promise<TeamShare | null> {
  await requireEvent(tx, eventId);
  const taken = await findTakenOver(tx, eventId);
  const organiserName = taken && (await findOrganiserName(tx, taken.organiserId));
  if (!taken || organiserName === null) return null;
  const share = await findShare(tx, eventId);
  const { choice = 'nothing' as const, changedAt = null } = share ?? {};
  const told = share && choice !== 'nothing' ? await findCopy(tx, taken, share.contributor) : null;
  const isOld = told !== null && !isSameCounts(told, await countCars(tx, eventId));
  return { organiserName, choice, changedAt, isOld };
}

/** What the organiser would be told now, car by car. */
export async function countShare(tx: MemberTx, eventId: string): Promise<CarCounts[]> {
  await requireEvent(tx, eventId);
  return (await findTakenOver(tx, eventId)) ? countCars(tx, eventId) : [];
}

async function requireEvent(tx: MemberTx, eventId: string): Promise<void> {
  if (!maySeeEvent(tx.member, eventId) || (await findEventName(tx, eventId)) === null) throw unknown();
}

/** What is agreed to is copied; nothing deletes the copies. Choosing the same again brings them up to date. */
export async function chooseShare(
  tx: MemberTx,
  { eventId, choice }: z.infer<typeof chooseShareInput>,
  now: number,
): Promise<void> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  if ((await findEventName(tx, eventId)) === null) throw unknown();
  const taken = await findTakenOver(tx, eventId);
  if (!taken) {
    throw new AppError('conflict', 'This event is your own: there is no organiser to share it with.');
  }
  const contributor = (await findContributor(tx, taken.organiserId)) ?? randomUUID();
  await saveShare(tx, { eventId, organiserId: taken.organiserId, contributor, choice }, now);
  if (choice === 'nothing') return deleteCopies(tx, taken, contributor);
  await setLevelOfCopies(tx, taken, contributor, choice);
  const cars = await countCars(tx, eventId);
  const told = await findCopy(tx, taken, contributor);
  if (!told || !isSameCounts(told, cars)) await addCopy(tx, taken, { contributor, level: choice, cars }, now);
}

async function countCars(tx: MemberTx, eventId: string): Promise<CarCounts[]> {
  const version = await findItinerary(tx, eventId);
  if (!version) throw unknown();
  const { itinerary } = version;
  const log = {
    tasks: await listTasks(tx, eventId),
    snags: await listSnags(tx, eventId),
    facts: await listFacts(tx, eventId),
    stages: await listStages(tx, eventId),
  };
  const entries = await listEntries(tx, eventId);
  return entries.map(({ entryId, cards }) => carCountsOf(log, entryId, { itinerary, cards }));
}

/**
 * What the organiser may know of what teams share. What is told for the first time is kept beforehand, since it decides what
 * may be told later.
 */
export async function tellOrganiser(tx: OrganiserTx, now: number): Promise<ToldShares> {
  await lockTelling(tx);
  const [copies, told, events] = [await listCopies(tx), await listReleases(tx), await listPublished(tx)];
  const plan = planTelling(
    copies,
    told,
    events.map(({ id }) => id),
  );
  if (plan.added.length > 0) await addReleases(tx, plan.added, told.length, now);
  const carsOf = new Map(copies.map(({ content, cars }) => [content, cars]));
  const names = new Map(events.map(({ id, name }) => [id, name]));
  const pools = plan.pools.flatMap(({ events: pooled, totals, rows }) => {
    if (!totals) return [];
    const cars = (parts: typeof totals) => parts.flatMap(({ content }) => carsOf.get(content) ?? []);
    const eventNames = pooled.flatMap((id) => names.get(id) ?? []);
    return {
      eventNames,
      teams: countTeams(totals),
      totals: sumOfCounts(cars(totals)),
      cars: inNoOrder(cars(rows ?? [])),
    };
  });
  const shown = new Set(plan.pools.flatMap(({ totals }) => totals ?? []).map(({ content }) => content));
  return { pools, isWaiting: copies.some(({ content }) => !shown.has(content)) };
}

/** By distance, so that the order in which teams joined says nothing. */
function inNoOrder(cars: readonly CarCounts[]): CarCounts[] {
  return cars.toSorted(
    (one, other) =>
      other.stageMetres - one.stageMetres || JSON.stringify(one).localeCompare(JSON.stringify(other)),
  );
}
