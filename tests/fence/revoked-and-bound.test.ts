import { randomUUID } from 'node:crypto';
import { ACTION_KINDS, type ActionBody } from '@halfshaft/worklog';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { taskRef } from '../support/event';
import { ask, refusalIn, withoutEcho } from './answer';
import { FIXTURES } from './fixtures';
import { inputsOf } from './inputs-of';
import { type Fence, NOW, openFence, present, UNKNOWN } from './open-fence';
import { changedPlaces, readState } from './table-state';
import { foundWorld, joinTeam, tryPush, type World } from './world';

let fence: Fence;
/** For calls that are all refused: nothing in it may change. */
let shared: World;
let inputOf: ReturnType<typeof inputsOf>;

beforeAll(async () => {
  fence = await openFence();
  shared = await foundWorld(fence.house);
  inputOf = inputsOf(shared);
});
afterEach(() => fence.keepOnly([shared]));
afterAll(() => fence?.close());

const inTeam = FIXTURES.filter(({ needs }) => needs === 'member' || needs === 'manager' || needs === 'admin');

describe('who was taken out of the team', () => {
  let gone: World['owner'];
  beforeAll(async () => {
    gone = await joinTeam(fence.house, shared.owner, shared.teamId, { role: 'manager', forEvent: null });
    const membershipId = await membershipOf(shared, gone.personId);
    await shared.owner.caller.people.revoke({ teamId: shared.teamId, membershipId });
  });

  it.each(inTeam.filter(({ path }) => path !== 'work.push'))(
    'gets what a stranger gets from $name',
    async (variant) => {
      expect(await fence.askChangingNothing(gone.caller, variant.path, await inputOf(variant))).toEqual(
        UNKNOWN,
      );
    },
  );

  it('finds the team neither in the list of their own nor behind a link to it', async () => {
    expect(await gone.caller.team.mine()).toEqual({ teams: [], organisers: [] });
    const again = await ask(gone.caller, 'invite.accept', { token: shared.token, name: 'Back again' });
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
    for (const body of bodies) answers[body.kind] = refusalIn(await tryPush(revoked, world, body, late));
    expect(answers).toEqual({ takeTask: 'revoked', dropTask: 'revoked', undo: 'revoked', closeTask: null });
    const { entries } = await world.owner.caller.work.pull({
      teamId: world.teamId,
      eventId: world.eventId,
      since: 0,
    });
    expect(entries.at(-1)?.flags).toContainEqual({ code: 'afterRevocation' });
  });

  it('is out of an organiser too', async () => {
    const world = await foundWorld(fence.house);
    const { organiserId, caller, userId } = world.organiser;
    await fence.owner.query('UPDATE organiser_membership SET revoked_at = now() WHERE user_id = $1', [
      userId,
    ]);
    expect(await ask(caller, 'organiser.events', { organiserId })).toEqual(UNKNOWN);
    expect(await caller.team.mine()).toEqual({ teams: [], organisers: [] });
  });
});

describe('a helper for one event', () => {
  it('sees that event and no other', async () => {
    const world = await foundWorld(fence.house);
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
    const { teamId, helper, carId, other, idleCarId } = await foundWorld(fence.house);
    const cars = await helper.caller.car.list({ teamId });
    expect(cars.map((car) => car.carId)).toEqual([carId]);
    expect(await helper.caller.card.list({ teamId, carId })).not.toEqual([]);
    for (const id of [other.carId, idleCarId, randomUUID()]) {
      expect(await ask(helper.caller, 'card.list', { teamId, carId: id })).toEqual(UNKNOWN);
    }
  });

  it('is told of no helper of another event what that one is let in for, not even that there is one', async () => {
    const { teamId, eventId, owner, helper, other, mechanic } = shared;
    const near = await joinTeam(fence.house, owner, teamId, { role: 'driver', forEvent: eventId });
    const far = await joinTeam(fence.house, owner, teamId, { role: 'driver', forEvent: other.eventId });
    const listed = await helper.caller.people.list({ teamId });
    const { people: kept } = await helper.caller.event.get({ teamId, eventId });
    for (const people of [listed, kept]) {
      const standingOf = (one: { personId: string }) =>
        present(people.find(({ personId }) => personId === one.personId)).membership;
      expect(standingOf(far)).toBeNull();
      expect(standingOf(near)).toMatchObject({ role: 'driver', eventId });
      expect(standingOf(mechanic)).toMatchObject({ role: 'mechanic', eventId: null });
      expect(JSON.stringify(people)).not.toContain(other.eventId);
    }
    const seen = await owner.caller.people.list({ teamId });
    expect(seen.find(({ personId }) => personId === far.personId)?.membership?.eventId).toBe(other.eventId);
  });

  it.each(ACTION_KINDS)('cannot tell %s in another event from one in no event', async (kind) => {
    const fixture = present(FIXTURES.find(({ name }) => name === `work.push (${kind})`));
    const input = await inputOf(fixture);
    const before = await readState(fence.owner);
    for (const eventId of [shared.other.eventId, randomUUID()]) {
      const answer = await ask(shared.helper.caller, 'work.push', {
        ...input,
        teamId: shared.teamId,
        eventId,
      });
      expect(answer).toEqual(UNKNOWN);
    }
    expect(changedPlaces(before, await readState(fence.owner))).toEqual([]);
  });

  it("reaches no car and no snag of another event through its own event's log", async () => {
    const world = await foundWorld(fence.house);
    const { other, helper, entryId } = world;
    const answersFor = async (body: (id: { entryId: string; snagId: string }) => ActionBody) => {
      const real = await tryPush(helper, world, body(other));
      const never = await tryPush(helper, world, body({ entryId: randomUUID(), snagId: randomUUID() }));
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
    const world = await foundWorld(fence.house);
    const { teamId, eventId } = world;
    const bound = await joinTeam(fence.house, world.owner, teamId, { role: 'manager', forEvent: eventId });
    for (const role of ['manager', 'admin'] as const) {
      const membershipId = await membershipOf(world, bound.personId);
      await world.owner.caller.people.setRole({ teamId, membershipId, role });
      for (const path of ['people.add', 'car.create', 'event.create', 'invite.list', 'people.setRole']) {
        const variant = present(FIXTURES.find((each) => each.path === path));
        const answer = await fence.askChangingNothing(bound.caller, variant.path, await variant.make(world));
        expect(answer, `${role} ${path}`).toMatchObject({ ok: false, code: 'FORBIDDEN' });
      }
    }
  });

  it('does not count as the admin a team must keep', async () => {
    const world = await foundWorld(fence.house);
    const { teamId, eventId } = world;
    const bound = await joinTeam(fence.house, world.owner, teamId, { role: 'mechanic', forEvent: eventId });
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

/** A world and the manager who is no longer in its team. */
async function revokeManager() {
  const world = await foundWorld(fence.house);
  const membershipId = await membershipOf(world, world.manager.personId);
  await world.owner.caller.people.revoke({ teamId: world.teamId, membershipId });
  return { world, revoked: world.manager };
}

async function membershipOf({ owner, teamId }: World, personId: string): Promise<string> {
  const people = await owner.caller.people.list({ teamId });
  return present(people.find((person) => person.personId === personId)?.membership).membershipId;
}
