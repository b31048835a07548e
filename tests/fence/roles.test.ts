import { randomUUID } from 'node:crypto';
import { ACTION_KINDS, type ActionBody } from '@halfshaft/worklog';
import pg from 'pg';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { makeAction, taskRef } from '../support/event';
import { type Caller, type House, openHouse } from '../support/house';
import { type Answer, ask, refusalIn, withoutEcho } from './answer';
import type { Needs, Variant } from './fixture';
import { FIXTURES } from './fixtures';
import { changedPlaces, forgetAllBut, readState } from './table-state';
import { foundWorld, joinTeam, makeAccount, pushAs, type World } from './world';

const NOW = 1_781_000_000_000;
const UNKNOWN = {
  ok: false,
  code: 'NOT_FOUND',
  message: 'That does not exist, or it is not yours. Go back and choose again.',
};

let house: House;
let owner: pg.Client;

beforeAll(async () => {
  house = await openHouse();
  house.clock.set(NOW);
  owner = new pg.Client({ connectionString: house.database.ownerUrl });
  await owner.connect();
});
afterEach(() => forgetAllBut(owner, []));
afterAll(async () => {
  await owner?.end();
  await house?.close();
});

const inTeam = FIXTURES.filter(({ needs }) => needs === 'member' || needs === 'manager' || needs === 'admin');
const ofOrganisers = FIXTURES.filter(({ needs }) => needs === 'organiser');

/** Which standing may call what; an admin may call everything. */
const MAY: Record<string, Needs[]> = {
  manager: ['member', 'manager'],
  mechanic: ['member'],
  driver: ['member'],
  helper: ['member'],
};

describe.each(Object.entries(MAY))('a %s', (role, may) => {
  const caller = (world: World) => (world as unknown as Record<string, { caller: Caller }>)[role]?.caller;

  it.each(inTeam.filter(({ needs }) => !may.includes(needs)))('may not call $name', async (variant) => {
    const world = await foundWorld(house);
    const answer = await callChangingNothing(caller(world), variant, await variant.make(world));
    expect(answer).toMatchObject({ ok: false, code: 'FORBIDDEN' });
    expect(answer.ok || answer.message).toMatch(/^That needs (a manager|an admin)\. Ask one of them\.$/);
  });

  it.each(inTeam.filter(({ needs, path }) => may.includes(needs) && path !== 'work.push'))(
    'may call $name',
    async (variant) => {
      const world = await foundWorld(house);
      const answer = await ask(present(caller(world)), variant.path, await variant.make(world));
      expect(answer).toMatchObject({ ok: true });
    },
  );

  it('may push what is theirs to record', async () => {
    const world = await foundWorld(house);
    const actor = present((world as unknown as Record<string, World['owner']>)[role]);
    const task = taskRef(world.entryId, world.cardId);
    await pushAs(actor, world, { kind: 'takeTask', args: { task } });
    await pushAs(actor, world, { kind: 'releaseTask', args: { task } });
  });
});

describe('a mechanic', () => {
  it('may not let go, drop, carry over or take back what another holds', async () => {
    const world = await foundWorld(house);
    const task = taskRef(world.entryId, world.cardId, 'B');
    const bodies: ActionBody[] = [
      { kind: 'releaseTask', args: { task } },
      { kind: 'dropTask', args: { task, reason: 'Why not' } },
      { kind: 'carryOverTask', args: { task, reason: 'Why not' } },
      { kind: 'undo', args: { actionId: world.actionId } },
    ];
    const refusals = [];
    for (const body of bodies) refusals.push(refusalIn(await push(world.mechanic, world, body)));
    expect(refusals).toEqual(['heldByAnother', 'heldByAnother', 'heldByAnother', 'notAllowed']);
    const release: ActionBody = { kind: 'releaseTask', args: { task } };
    expect(refusalIn(await push(world.manager, world, release))).toBeNull();
  });

  it('may not sign in the name of another', async () => {
    const world = await foundWorld(house);
    const task = taskRef(world.entryId, world.signedCardId);
    await pushAs(world.mechanic, world, { kind: 'closeTask', args: { task, findings: [], readings: [] } });
    const sign: ActionBody = { kind: 'signTask', args: { task } };
    expect(refusalIn(await push(world.mechanic, world, sign, world.driver.personId))).toBe('signForYourself');
    expect(refusalIn(await push(world.driver, world, sign))).toBeNull();
  });
});

describe('a stranger', () => {
  it.each(inTeam)('gets one answer from $name, whether the team exists or not', async (variant) => {
    const world = await foundWorld(house);
    const input = (await variant.make(world)) as object;
    for (const { caller } of [makeAccount(house), world.organiser, await foundWorld(house).then(ownerOf)]) {
      expect(await callChangingNothing(caller, variant, input)).toEqual(UNKNOWN);
      const never = { ...input, teamId: randomUUID() };
      expect(await callChangingNothing(caller, variant, never)).toEqual(UNKNOWN);
    }
  });

  it.each(ofOrganisers)(
    'gets one answer from $name, whether the organiser exists or not',
    async (variant) => {
      const world = await foundWorld(house);
      const input = (await variant.make(world)) as object;
      for (const { caller } of [makeAccount(house), world.owner, (await foundWorld(house)).organiser]) {
        expect(await callChangingNothing(caller, variant, input)).toEqual(UNKNOWN);
        const never = { ...input, organiserId: randomUUID() };
        expect(await callChangingNothing(caller, variant, never)).toEqual(UNKNOWN);
      }
    },
  );

  it('is told nothing of teams and organisers but what is published', async () => {
    const world = await foundWorld(house);
    const { caller } = makeAccount(house);
    expect(await caller.team.mine()).toEqual({ teams: [], organisers: [] });
    const published = await caller.event.published();
    expect(published.map((event) => event.publishedEventId)).toEqual([world.organiser.publishedEventId]);
  });
});

describe('who was taken out of the team', () => {
  it.each(inTeam.filter(({ path }) => path !== 'work.push'))(
    'gets what a stranger gets from $name',
    async (variant) => {
      const { world, revoked } = await revokeManager();
      expect(await callChangingNothing(revoked.caller, variant, await variant.make(world))).toEqual(UNKNOWN);
    },
  );

  it('finds the team neither in the list of their own nor behind the link they once used', async () => {
    const { world, revoked } = await revokeManager();
    expect(await revoked.caller.team.mine()).toEqual({ teams: [], organisers: [] });
    const again = await ask(revoked.caller, 'invite.accept', { token: world.token, name: 'Back again' });
    expect(again).toMatchObject({ ok: false, code: 'FORBIDDEN' });
  });

  it('may hand in facts, which are flagged, and nothing else once they are out', async () => {
    const { world, revoked } = await revokeManager();
    const task = taskRef(world.entryId, world.cardId);
    const late = { deviceTime: NOW + 1 };
    const answers: Record<string, string | null> = {};
    const bodies: ActionBody[] = [
      { kind: 'takeTask', args: { task } },
      { kind: 'dropTask', args: { task, reason: 'Why not' } },
      { kind: 'undo', args: { actionId: world.actionId } },
      { kind: 'closeTask', args: { task, findings: [], readings: [] } },
    ];
    for (const body of bodies)
      answers[body.kind] = refusalIn(await push(revoked, world, body, undefined, late));
    expect(answers).toEqual({ takeTask: 'revoked', dropTask: 'revoked', undo: 'revoked', closeTask: null });
    const { entries } = await world.owner.caller.work.pull({ ...eventOf(world), since: 0 });
    expect(entries.at(-1)?.flags).toContainEqual({ code: 'afterRevocation' });
  });

  it('is out of an organiser too', async () => {
    const world = await foundWorld(house);
    const { organiserId, caller, userId } = world.organiser;
    await owner.query('UPDATE organiser_membership SET revoked_at = now() WHERE user_id = $1', [userId]);
    expect(await ask(caller, 'organiser.events', { organiserId })).toEqual(UNKNOWN);
    expect(await caller.team.mine()).toEqual({ teams: [], organisers: [] });
  });
});

describe('a helper for one event', () => {
  it('sees that event and no other', async () => {
    const world = await foundWorld(house);
    const { teamId, helper, eventId, other } = world;
    const events = await helper.caller.event.list({ teamId });
    expect(events.map((event) => event.eventId)).toEqual([eventId]);
    const [mine] = (await helper.caller.team.mine()).teams;
    expect(mine?.eventId).toBe(eventId);
    for (const path of ['event.get', 'work.pull']) {
      for (const id of [other.eventId, randomUUID()]) {
        expect(await ask(helper.caller, path, { teamId, eventId: id, since: 0 }), path).toEqual(UNKNOWN);
      }
    }
  });

  it('sees the cars of that event with their cards, and no other car', async () => {
    const { teamId, helper, carId, other, idleCarId } = await foundWorld(house);
    const cars = await helper.caller.car.list({ teamId });
    expect(cars.map((car) => car.carId)).toEqual([carId]);
    expect(await helper.caller.card.list({ teamId, carId })).not.toEqual([]);
    for (const id of [other.carId, idleCarId, randomUUID()]) {
      expect(await ask(helper.caller, 'card.list', { teamId, carId: id })).toEqual(UNKNOWN);
    }
  });

  it.each(ACTION_KINDS)('cannot tell %s in another event from one in no event', async (kind) => {
    const world = await foundWorld(house);
    const fixture = FIXTURES.find(({ name }) => name === `work.push (${kind})`);
    const input = (await fixture?.make(world)) as { actions: ReturnType<typeof makeAction>[] };
    const before = await readState(owner);
    for (const eventId of [world.other.eventId, randomUUID()]) {
      const answer = await ask(world.helper.caller, 'work.push', { ...input, teamId: world.teamId, eventId });
      expect(answer).toEqual(UNKNOWN);
    }
    expect(changedPlaces(before, await readState(owner))).toEqual([]);
  });

  it("reaches no car and no snag of another event through its own event's log", async () => {
    const world = await foundWorld(house);
    const { other, helper, entryId } = world;
    const answersFor = async (body: (id: { entryId: string; snagId: string }) => ActionBody) => {
      const real = await push(helper, world, body(other));
      const never = await push(helper, world, body({ entryId: randomUUID(), snagId: randomUUID() }));
      expect(refusalIn(real)).not.toBeNull();
      expect(withoutEcho(real)).toEqual(withoutEcho(never));
    };
    await answersFor((id) => ({ kind: 'takeTask', args: { task: taskRef(id.entryId, world.cardId) } }));
    await answersFor(({ snagId }) => ({
      kind: 'takeTask',
      args: { task: { entryId, serviceId: 'A', source: { kind: 'snag', snagId } } },
    }));
    await answersFor((id) => ({
      kind: 'confirmStage',
      args: { entryId: id.entryId, stageId: 'SS1', driven: true, conditions: {} },
    }));
  });

  it('manages nothing, whatever role it was given', async () => {
    const world = await foundWorld(house);
    const { teamId, eventId } = world;
    const bound = await joinTeam(house, world.owner, teamId, { role: 'manager', forEvent: eventId });
    for (const role of ['manager', 'admin'] as const) {
      const membershipId = await membershipOf(world, bound.personId);
      await world.owner.caller.people.setRole({ teamId, membershipId, role });
      for (const path of ['people.add', 'car.create', 'event.create', 'invite.list', 'people.setRole']) {
        const variant = present(FIXTURES.find((each) => each.path === path));
        const answer = await callChangingNothing(bound.caller, variant, await variant.make(world));
        expect(answer, `${role} ${path}`).toMatchObject({ ok: false, code: 'FORBIDDEN' });
      }
    }
  });

  it('does not count as the admin a team must keep', async () => {
    const world = await foundWorld(house);
    const { teamId, eventId } = world;
    const bound = await joinTeam(house, world.owner, teamId, { role: 'mechanic', forEvent: eventId });
    const theirs = await membershipOf(world, bound.personId);
    const own = await membershipOf(world, world.owner.personId);
    const { people } = world.owner.caller;
    await people.setRole({ teamId, membershipId: theirs, role: 'admin' });
    for (const path of ['people.setRole', 'people.revoke']) {
      const answer = await ask(world.owner.caller, path, { teamId, membershipId: own, role: 'driver' });
      expect(answer).toMatchObject({ ok: false, code: 'CONFLICT' });
    }
    await people.setRole({ teamId, membershipId: theirs, role: 'mechanic' });
    await people.revoke({ teamId, membershipId: theirs });
  });
});

async function callChangingNothing(
  caller: Caller | undefined,
  { path }: Variant,
  input: unknown,
): Promise<Answer> {
  const before = await readState(owner);
  const answer = await ask(present(caller), path, input);
  expect(changedPlaces(before, await readState(owner)), `${path} changed rows`).toEqual([]);
  return answer;
}

function push(
  actor: World['owner'],
  world: World,
  body: ActionBody,
  by = actor.personId,
  stamp: { deviceTime?: number } = {},
): Promise<Answer> {
  return ask(actor.caller, 'work.push', { ...eventOf(world), actions: [makeAction(body, by, stamp)] });
}

function eventOf({ teamId, eventId }: World) {
  return { teamId, eventId };
}

/** A world and the manager who is no longer in its team. */
async function revokeManager() {
  const world = await foundWorld(house);
  const membershipId = await membershipOf(world, world.manager.personId);
  await world.owner.caller.people.revoke({ teamId: world.teamId, membershipId });
  return { world, revoked: world.manager };
}

async function membershipOf({ owner: founder, teamId }: World, personId: string): Promise<string> {
  const people = await founder.caller.people.list({ teamId });
  return present(people.find((person) => person.personId === personId)?.membership).membershipId;
}

function ownerOf(world: World): World['owner'] {
  return world.owner;
}

function present<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('The fixture has nothing here.');
  return value;
}
