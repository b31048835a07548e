import { randomUUID } from 'node:crypto';
import { beforeAll, expect, it } from 'vitest';
import { askOwner } from '../faults/table-hashes';
import { ITINERARY } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { CAR, foundWorld, makeAccount, pushAs, type World } from './world';

interface Sharer {
  caller: World['owner']['caller'];
  teamId: string;
  eventId: string;
}

const house = keepHouse();
let world: World;
beforeAll(async () => {
  world = await foundWorld(house);
});

/** A team that drove one stage of the organiser's event and raised one snag, in words that name someone. */
async function joinEvent(name: string): Promise<Sharer> {
  const account = makeAccount(house);
  const { caller } = account;
  const { teamId, personId } = await caller.team.create({ name, personName: `${name} Founder` });
  const { carId } = await caller.car.create({ teamId, ...CAR, starterCards: 'small' });
  const { organiserId, publishedEventId } = world.organiser;
  const { eventId } = await caller.event.takeOver({ teamId, organiserId, publishedEventId });
  const place = { carNumber: '7', startPosition: 7, people: 2 };
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...place });
  const at = { teamId, eventId };
  const actor = { ...account, personId };
  const stage = { entryId, stageId: 'SS1', driven: true, conditions: {} };
  await pushAs(actor, at, { kind: 'confirmStage', args: stage });
  const snag = { snagId: randomUUID(), entryId, serviceId: 'A', place: `${name} knows`, words: name };
  await pushAs(actor, at, { kind: 'raiseSnag', args: { ...snag, urgent: false } });
  return { caller, teamId, eventId };
}

function tell() {
  const { caller, organiserId } = world.organiser;
  return caller.share.told({ organiserId });
}

async function choose({ caller, teamId, eventId }: Sharer, choice: 'nothing' | 'totals' | 'rows') {
  await caller.share.choose({ teamId, eventId, choice });
}

it('tells an organiser sums of five teams, not of four, and forgets what is taken back', async () => {
  // Not published, so nobody can share anything of it: it must not be told of with those that come after it.
  const { organiserId, caller } = world.organiser;
  const draft = { name: 'Never held', itinerary: { ...ITINERARY, startsOn: '2026-01-10' } };
  await caller.organiser.saveEvent({ organiserId, publishedEventId: null, ...draft });
  const sharers: Sharer[] = [];
  for (const name of ['Asp', 'Birch', 'Cedar', 'Dogwood', 'Elm']) sharers.push(await joinEvent(name));
  const [first, ...others] = sharers;
  if (!first) throw new Error('Nobody joined.');
  for (const other of others) await choose(other, 'rows');
  expect(await tell()).toEqual({ pools: [], isWaiting: true });

  await choose(first, 'rows');
  const { teamId, eventId } = first;
  const own = await first.caller.share.get({ teamId, eventId });
  const [car] = await first.caller.share.count({ teamId, eventId });
  expect(own).toMatchObject({ organiserName: 'Club', choice: 'rows', isOld: false });
  expect(car).toMatchObject({ stages: 1, snags: { wholeCar: 1 }, incidents: {}, needsWork: {} });
  const metres = car?.stageMetres ?? 0;
  expect(metres).toBeGreaterThan(0);

  const { pools, isWaiting } = await tell();
  expect(isWaiting).toBe(false);
  expect(pools).toEqual([
    {
      eventNames: ['Event'],
      teams: 5,
      totals: { stages: 5, stageMetres: 5 * metres, snags: { wholeCar: 5 }, incidents: {}, needsWork: {} },
      cars: Array.from({ length: 5 }, () => car),
    },
  ]);
  expect(await tell()).toEqual({ pools, isWaiting });

  await choose(first, 'totals');
  const [withoutRows] = (await tell()).pools;
  expect([withoutRows?.totals, withoutRows?.cars]).toEqual([pools[0]?.totals, []]);

  await choose(first, 'nothing');
  expect(await tell()).toEqual({ pools: [], isWaiting: true });
  const rows = await askOwner<{ contributor: string }>(
    house.database,
    'SELECT DISTINCT contributor FROM shared_record WHERE organiser_id = $1',
    [organiserId],
  );
  expect(rows).toHaveLength(4);
  const sixth = await joinEvent('Fir');
  await choose(sixth, 'totals');
  // Five share again, but beside what was told before the newcomer would stand alone.
  expect(await tell()).toEqual({ pools: [], isWaiting: true });
});

it('writes nothing of a team, a car or a person where the organiser reads', async () => {
  const { organiserId } = world.organiser;
  const rows = await askOwner<{ row: string }>(
    house.database,
    `SELECT to_jsonb(r)::text AS row FROM shared_record r WHERE organiser_id = $1
     UNION ALL SELECT to_jsonb(r)::text FROM shared_release r WHERE organiser_id = $1`,
    [organiserId],
  );
  expect(rows.length).toBeGreaterThan(4);
  const teams = await askOwner<{ word: string }>(
    house.database,
    `SELECT team_id::text AS word FROM team UNION ALL SELECT name FROM team
     UNION ALL SELECT id::text FROM person UNION ALL SELECT id::text FROM car UNION ALL SELECT id::text FROM entry`,
  );
  const text = rows.map(({ row }) => row).join('\n');
  expect(teams.filter(({ word }) => text.includes(word))).toEqual([]);
});

it('shares only by a manager, and only with the organiser of an event that was taken over', async () => {
  const own = { teamId: world.teamId, eventId: world.eventId };
  expect(await world.owner.caller.share.get(own)).toBe(null);
  expect(await world.owner.caller.share.count(own)).toEqual([]);
  await expect(world.owner.caller.share.choose({ ...own, choice: 'rows' })).rejects.toThrow(
    'This event is your own',
  );
  await expect(world.mechanic.caller.share.choose({ ...own, choice: 'rows' })).rejects.toThrow('manager');
});

it('brings what was shared up to date when it is chosen again', async () => {
  const sharer = await joinEvent('Gorse');
  await choose(sharer, 'totals');
  const { caller, teamId, eventId } = sharer;
  const { people } = await caller.event.get({ teamId, eventId });
  const [entry] = (await caller.event.get({ teamId, eventId })).entries;
  const stage = { entryId: entry?.entryId ?? '', stageId: 'SS2', driven: true, conditions: {} };
  const actor = { userId: '', caller, personId: people[0]?.personId ?? '' };
  await pushAs(actor, { teamId, eventId }, { kind: 'confirmStage', args: stage });
  expect(await caller.share.get({ teamId, eventId })).toMatchObject({ isOld: true, choice: 'totals' });
  await choose(sharer, 'totals');
  expect(await caller.share.get({ teamId, eventId })).toMatchObject({ isOld: false });
});
