import { randomUUID } from 'node:crypto';
import type { ActionBody } from '@halfshaft/worklog';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { taskRef } from '../support/event';
import type { Caller } from '../support/house';
import { ask, refusalIn } from './answer';
import type { Needs } from './fixture';
import { FIXTURES } from './fixtures';
import { inputsOf } from './inputs-of';
import { type Fence, openFence, present, UNKNOWN } from './open-fence';
import { foundWorld, makeAccount, pushAs, tryPush, type World } from './world';

let fence: Fence;
/** For calls that are all refused: nothing in it may change. */
let shared: World;
let others: World;
let inputOf: ReturnType<typeof inputsOf>;

beforeAll(async () => {
  fence = await openFence();
  shared = await foundWorld(fence.house);
  others = await foundWorld(fence.house);
  inputOf = inputsOf(shared);
});
afterEach(() => fence.keepOnly([shared, others]));
afterAll(() => fence?.close());

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
    const answer = await fence.askChangingNothing(
      present(caller(shared)),
      variant.path,
      await inputOf(variant),
    );
    expect(answer).toMatchObject({ ok: false, code: 'FORBIDDEN' });
    expect(answer.ok || answer.message).toMatch(/^That needs (a manager|an admin)\. Ask one of them\.$/);
  });

  it.each(inTeam.filter(({ needs, path }) => may.includes(needs) && path !== 'work.push'))(
    'may call $name',
    async (variant) => {
      const fresh = await foundWorld(fence.house);
      const answer = await ask(present(caller(fresh)), variant.path, await variant.make(fresh));
      expect(answer).toMatchObject({ ok: true });
    },
  );

  it('may push what is theirs to record', async () => {
    const world = await foundWorld(fence.house);
    const actor = present((world as unknown as Record<string, World['owner']>)[role]);
    const task = taskRef(world.entryId, world.cardId);
    await pushAs(actor, world, { kind: 'takeTask', args: { task } });
    await pushAs(actor, world, { kind: 'releaseTask', args: { task } });
  });
});

describe('a mechanic', () => {
  it('may not let go, drop, carry over or take back what another holds', async () => {
    const world = await foundWorld(fence.house);
    const task = taskRef(world.entryId, world.cardId, 'B');
    const bodies: ActionBody[] = [
      { kind: 'releaseTask', args: { task } },
      { kind: 'dropTask', args: { task, reason: 'Why not' } },
      { kind: 'carryOverTask', args: { task, reason: 'Why not' } },
      { kind: 'undo', args: { actionId: world.actionId } },
    ];
    const refusals: (string | null)[] = [];
    for (const body of bodies) refusals.push(refusalIn(await tryPush(world.mechanic, world, body)));
    expect(refusals).toEqual(['heldByAnother', 'heldByAnother', 'heldByAnother', 'notAllowed']);
    const release: ActionBody = { kind: 'releaseTask', args: { task } };
    expect(refusalIn(await tryPush(world.manager, world, release))).toBeNull();
  });

  it('may not sign in the name of another', async () => {
    const world = await foundWorld(fence.house);
    const task = taskRef(world.entryId, world.signedCardId);
    await pushAs(world.mechanic, world, { kind: 'closeTask', args: { task, findings: [], readings: [] } });
    const sign: ActionBody = { kind: 'signTask', args: { task } };
    expect(refusalIn(await tryPush(world.mechanic, world, sign, { by: world.driver.personId }))).toBe(
      'signForYourself',
    );
    const inOwnWords: ActionBody = { kind: 'signTask', args: { task, onPaper: false } };
    expect(refusalIn(await tryPush(world.mechanic, world, inOwnWords, { by: world.driver.personId }))).toBe(
      'signForYourself',
    );
    expect(refusalIn(await tryPush(world.driver, world, sign))).toBeNull();
  });
});

describe('a signature in ink or by initials', () => {
  it.each([{ onPaper: true }, { byInitials: true }])(
    'may be typed in by another, who is named with it, but never for a person who did the work: %o',
    async (how) => {
      const world = await foundWorld(fence.house);
      const task = taskRef(world.entryId, world.signedCardId);
      await pushAs(world.mechanic, world, { kind: 'closeTask', args: { task, findings: [], readings: [] } });
      const sign: ActionBody = { kind: 'signTask', args: { task, ...how } };
      expect(refusalIn(await tryPush(world.mechanic, world, sign))).toBe('needsAnotherPerson');
      expect(refusalIn(await tryPush(world.mechanic, world, sign, { by: world.driver.personId }))).toBeNull();
      const { teamId, eventId } = world;
      const { entries } = await world.mechanic.caller.work.pull({ teamId, eventId, since: 0 });
      const { personId } = world.mechanic;
      expect(entries.at(-1)).toMatchObject({
        by: world.driver.personId,
        enteredBy: personId,
        body: { kind: 'signed', ...how },
      });
    },
  );
});

describe('a stranger', () => {
  it.each(inTeam)('gets one answer from $name, whether the team exists or not', async (variant) => {
    const input = await inputOf(variant);
    for (const { caller } of [makeAccount(fence.house), shared.organiser, others.owner]) {
      expect(await fence.askChangingNothing(caller, variant.path, input)).toEqual(UNKNOWN);
      const never = { ...input, teamId: randomUUID() };
      expect(await fence.askChangingNothing(caller, variant.path, never)).toEqual(UNKNOWN);
    }
  });

  it.each(ofOrganisers)(
    'gets one answer from $name, whether the organiser exists or not',
    async (variant) => {
      const input = await inputOf(variant);
      for (const { caller } of [makeAccount(fence.house), shared.owner, others.organiser]) {
        expect(await fence.askChangingNothing(caller, variant.path, input)).toEqual(UNKNOWN);
        const never = { ...input, organiserId: randomUUID() };
        expect(await fence.askChangingNothing(caller, variant.path, never)).toEqual(UNKNOWN);
      }
    },
  );

  it('is told nothing of teams and organisers but what is published', async () => {
    const { caller } = makeAccount(fence.house);
    expect(await caller.team.mine()).toEqual({ teams: [], organisers: [] });
    const published = (await caller.event.published()).map((event) => event.publishedEventId);
    expect(published.sort()).toEqual(
      [shared, others].map(({ organiser }) => organiser.publishedEventId).sort(),
    );
  });
});
