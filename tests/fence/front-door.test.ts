import { randomUUID } from 'node:crypto';
import { appRouter } from '@halfshaft/api/router';
import { bringInAddress, carryAddress } from '@halfshaft/contract';
import type { TaskRef } from '@halfshaft/worklog';
import pg from 'pg';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { fetchCarried, logPartOf, tryBringIn } from '../support/carry';
import { taskRef } from '../support/event';
import { type House, openHouse } from '../support/house';
import { bringPicture, fetchPicture, photoOf } from '../support/photo';
import type { Variant } from './fixture';
import { FIXTURES } from './fixtures';
import { inputsOf } from './inputs-of';
import { changedPlaces, readState, type TableState } from './table-state';
import { foundWorld, pushAs, type World } from './world';

const PROCEDURES = appRouter._def.procedures as unknown as Record<string, { _def: { type: string } }>;
const isMutation = ({ path }: Variant) => PROCEDURES[path]?._def.type === 'mutation';

let house: House;
let owner: pg.Client;
/** Its owner and its organiser come through sign-in, with a cookie. */
let world: World;
let cookie: string;
let others: World;
let inputOf: ReturnType<typeof inputsOf>;

beforeAll(async () => {
  house = await openHouse();
  owner = new pg.Client({ connectionString: house.database.ownerUrl });
  await owner.connect();
  world = await foundWorld(house);
  others = await foundWorld(house);
  const account = await house.signUp('Founder');
  cookie = account.cookie;
  const rename = async (table: string, from: string) =>
    owner.query(`UPDATE ${table} SET user_id = $1 WHERE user_id = $2`, [account.userId, from]);
  await rename('membership', world.owner.userId);
  await rename('organiser_membership', world.organiser.userId);
  const caller = house.callAs(account.userId);
  world.owner = { ...world.owner, caller };
  world.organiser = { ...world.organiser, caller };
  inputOf = inputsOf(world);
});
afterAll(async () => {
  await owner?.end();
  await house?.close();
});

let before: TableState;
beforeEach(async () => {
  before = await readState(owner);
});
const expectUnchanged = async () => expect(changedPlaces(before, await readState(owner))).toEqual([]);

describe('without a session', () => {
  it.each(FIXTURES.filter(({ needs }) => needs !== 'anyone'))('$name asks to sign in', async (variant) => {
    const input = await makeInput(variant);
    for (const wrong of [{}, { cookie: 'halfshaft.session_token=made-up' }, { cookie: tampered() }]) {
      const answer = await send(variant, input, wrong);
      expect(answer.status).toBe(401);
      expect(problemOf(answer)).toMatchObject({ code: 'signInNeeded' });
    }
    await expectUnchanged();
  });

  it.each(FIXTURES.filter(({ needs }) => needs === 'anyone'))('$name works', async (variant) => {
    expect((await send(variant, await makeInput(variant), {})).status).toBe(200);
  });

  it('a session that was signed out is none', async () => {
    const account = await house.signUp('Short visit');
    const mine = { path: 'team.mine' };
    expect((await send(mine, undefined, { cookie: account.cookie })).status).toBe(200);
    const headers = { cookie: account.cookie, 'content-type': 'application/json', origin: house.url };
    await fetch(`${house.url}/auth/sign-out`, { method: 'POST', headers, body: '{}' });
    expect((await send(mine, undefined, { cookie: account.cookie })).status).toBe(401);
  });
});

describe('with a session', () => {
  const team = FIXTURES.filter(({ needs }) => !['anyone', 'account', 'organiser'].includes(needs));

  it.each(team)("$name tells of another's team what it tells of none", async (variant) => {
    const input = await makeInput(variant);
    const answers = [];
    for (const teamId of [others.teamId, randomUUID()]) {
      answers.push(await send(variant, { ...input, teamId }, { cookie }));
    }
    expect(answers[0]?.status).toBe(404);
    expect(answers[0]).toEqual(answers[1]);
    await expectUnchanged();
  });

  it.each(FIXTURES.filter(isMutation))('$name is not taken from a link', async (variant) => {
    const input = encodeURIComponent(JSON.stringify(await makeInput(variant)));
    const response = await fetch(`${house.url}/trpc/${variant.path}?input=${input}`, { headers: { cookie } });
    expect(response.status).toBe(405);
    await expectUnchanged();
  });

  it.each(FIXTURES.filter(isMutation))('$name is not taken from another site', async (variant) => {
    const input = await makeInput(variant);
    for (const origin of ['https://another.example', 'null', 'http://127.0.0.1:1', `${house.url}.example`]) {
      const answer = await send(variant, input, { cookie, origin });
      expect(answer.status, origin).toBe(403);
      expect(problemOf(answer)).toMatchObject({ code: 'notAllowed' });
    }
    await expectUnchanged();
  });

  it('is not taken from another site in a batch, nor as a plain form', async () => {
    const origin = 'https://another.example';
    const input = { name: 'Made elsewhere', personName: 'Nobody' };
    const batch = await fetch(`${house.url}/trpc/team.create,team.create?batch=1`, {
      method: 'POST',
      headers: { cookie, origin, 'content-type': 'application/json' },
      body: JSON.stringify({ 0: input, 1: input }),
    });
    const form = await fetch(`${house.url}/trpc/team.create`, {
      method: 'POST',
      headers: { cookie, origin, 'content-type': 'text/plain' },
      body: JSON.stringify(input),
    });
    expect([batch.status, form.status]).toEqual([403, 403]);
    await expectUnchanged();
  });

  it('is taken from our own site, and from no site at all', async () => {
    const create = { path: 'team.create' };
    for (const origin of [house.url, undefined]) {
      const answer = await send(
        create,
        { name: 'Ours', personName: 'Founder' },
        { cookie, ...(origin ? { origin } : {}) },
      );
      expect(answer.status).toBe(200);
    }
  });
});

describe('the live stream', () => {
  it("opens for an own event, and tells of another's what it tells of none", async () => {
    expect((await watch(world.teamId, world.eventId, { cookie })).status).toBe(200);
    const never = await watch(randomUUID(), randomUUID(), { cookie });
    expect(never.status).toBe(404);
    for (const [team, event] of [
      [others.teamId, others.eventId],
      [world.teamId, others.eventId],
      [others.teamId, world.eventId],
    ] as const) {
      expect(await watch(team, event, { cookie })).toEqual(never);
    }
    expect((await watch(world.teamId, world.eventId, {})).status).toBe(401);
  });
});

describe('the pictures of photos', () => {
  const task = ({ entryId, cardId }: World) => taskRef(entryId, cardId);

  it('are brought and shown with a session of the team alone', async () => {
    const { url } = house;
    const { teamId } = world;
    const { photoId, body } = photoOf(task(world));
    await pushAs(world.owner, world, body);
    before = await readState(owner);
    const own = { url, teamId, photoId, cookie };
    expect((await bringPicture({ ...own, cookie: '' })).status).toBe(401);
    const stranger = (await house.signUp('Stranger')).cookie;
    expect((await bringPicture({ ...own, cookie: stranger })).status).toBe(404);
    expect((await bringPicture({ ...own, origin: 'https://another.example' })).status).toBe(403);
    expect((await fetchPicture(url, teamId, photoId, cookie)).status).toBe(404);
    await expectUnchanged();
    expect((await bringPicture(own)).status).toBe(200);
    const shown = await fetchPicture(url, teamId, photoId, cookie);
    expect(shown.status).toBe(200);
    expect(Object.fromEntries(shown.headers)).toMatchObject({
      'content-type': 'image/jpeg',
      'content-disposition': 'inline; filename="photo.jpg"',
      'content-security-policy': "default-src 'none'; sandbox",
      'x-content-type-options': 'nosniff',
      'cache-control': 'private, max-age=31536000, immutable',
    });
    expect((await fetchPicture(url, teamId, photoId)).status).toBe(401);
    expect((await fetchPicture(url, teamId, photoId, stranger)).status).toBe(404);
  });

  it("tell of another's what they tell of none", async () => {
    const { photoId, body } = photoOf(task(others));
    await pushAs(others.owner, others, body);
    before = await readState(owner);
    const pairs = [
      [others.teamId, photoId],
      [world.teamId, photoId],
      [others.teamId, randomUUID()],
      [randomUUID(), randomUUID()],
    ] as const;
    const brought = [];
    const shown = [];
    for (const [teamId, id] of pairs) {
      brought.push(await bringPicture({ url: house.url, teamId, photoId: id, cookie }));
      const answer = await fetchPicture(house.url, teamId, id, cookie);
      shown.push({ status: answer.status, body: await answer.json() });
    }
    expect(new Set(shown.map((each) => JSON.stringify(each))).size).toBe(1);
    expect(new Set(brought.map((each) => JSON.stringify(each))).size).toBe(1);
    expect([brought[0]?.status, shown[0]?.status]).toEqual([404, 404]);
    await expectUnchanged();
  });

  it('are hidden from a helper of another event', async () => {
    const { helper, teamId, other } = world;
    const account = await house.signUp('Helper');
    await owner.query('UPDATE membership SET user_id = $1 WHERE user_id = $2', [
      account.userId,
      helper.userId,
    ]);
    const snag: TaskRef = {
      entryId: other.entryId,
      serviceId: 'A',
      source: { kind: 'snag', snagId: other.snagId },
    };
    const { photoId, body } = photoOf(snag);
    await pushAs(world.owner, { teamId, eventId: other.eventId }, body);
    const own = { url: house.url, teamId, photoId };
    expect((await bringPicture({ ...own, cookie: account.cookie })).status).toBe(404);
    expect((await bringPicture({ ...own, cookie })).status).toBe(200);
    expect((await fetchPicture(house.url, teamId, photoId, account.cookie)).status).toBe(404);
  });
});

describe('an event as a file', () => {
  const fetchFile = async (teamId: string, eventId: string, headers: Record<string, string>) => {
    const response = await fetch(house.url + carryAddress(teamId, eventId), { headers });
    return { status: response.status, body: response.ok ? 'a file' : await response.json() };
  };
  /** Acts through the front door as someone of the team has to: with a cookie. */
  const signInAs = async (actor: { userId: string }) => {
    const account = await house.signUp('Someone');
    await owner.query('UPDATE membership SET user_id = $1 WHERE user_id = $2', [
      account.userId,
      actor.userId,
    ]);
    return account.cookie;
  };

  it("is given to a manager of the team alone, and tells of another's what it tells of none", async () => {
    before = await readState(owner);
    expect((await fetchFile(world.teamId, world.eventId, { cookie })).status).toBe(200);
    expect((await fetchFile(world.teamId, world.eventId, {})).status).toBe(401);
    const never = await fetchFile(randomUUID(), randomUUID(), { cookie });
    expect(never.status).toBe(404);
    for (const [team, event] of [
      [others.teamId, others.eventId],
      [world.teamId, others.eventId],
      [others.teamId, world.eventId],
    ] as const) {
      expect(await fetchFile(team, event, { cookie })).toEqual(never);
    }
    await expectUnchanged();
    const fresh = await foundWorld(house);
    for (const actor of [fresh.mechanic, fresh.driver, fresh.helper]) {
      const answer = await fetchFile(fresh.teamId, fresh.eventId, { cookie: await signInAs(actor) });
      expect(answer.status).toBe(403);
    }
    const organiser = (await house.signUp('Organiser')).cookie;
    expect(await fetchFile(fresh.teamId, fresh.eventId, { cookie: organiser })).toEqual(never);
    const manager = await signInAs(fresh.manager);
    expect((await fetchFile(fresh.teamId, fresh.eventId, { cookie: manager })).status).toBe(200);
  });

  it('lets nobody into a team that is here, and is brought in by its managers alone', async () => {
    const fresh = await foundWorld(house);
    const manager = await signInAs(fresh.manager);
    const file = await fetchCarried({ url: house.url, cookie: manager }, fresh.teamId, fresh.eventId);
    const part = logPartOf(file);
    const strangers = [
      cookie,
      (await house.signUp('Stranger')).cookie,
      await signInAs(fresh.mechanic),
      await signInAs(fresh.driver),
      await signInAs(fresh.helper),
    ];
    before = await readState(owner);
    for (const stranger of strangers) {
      for (const step of ['look', 'take'] as const) {
        const answer = await tryBringIn(
          { url: house.url, cookie: stranger },
          part,
          step,
          fresh.owner.personId,
        );
        expect(answer).toEqual({
          status: 403,
          body: {
            code: 'notAllowed',
            message: expect.stringContaining('not one of its managers'),
            fields: [],
          },
        });
      }
    }
    expect((await tryBringIn({ url: house.url, cookie: '' }, part)).status).toBe(401);
    const elsewhere = await fetch(house.url + bringInAddress('take'), {
      method: 'PUT',
      headers: { cookie: manager, origin: 'https://another.example', 'content-type': 'application/gzip' },
      body: new Uint8Array(part),
    });
    expect(elsewhere.status).toBe(403);
    await expectUnchanged();
    expect((await tryBringIn({ url: house.url, cookie: manager }, part)).status).toBe(200);
  });
});

/** Making input may change rows; what must stay is what is there after it. */
async function makeInput(variant: Variant): Promise<object> {
  const input = await inputOf(variant);
  before = await readState(owner);
  return input;
}

async function send({ path }: { path: string }, input: unknown, headers: Record<string, string>) {
  const query = PROCEDURES[path]?._def.type === 'query';
  const json = JSON.stringify(input);
  const suffix = query && json !== undefined ? `?input=${encodeURIComponent(json)}` : '';
  const response = await fetch(`${house.url}/trpc/${path}${suffix}`, {
    method: query ? 'GET' : 'POST',
    headers: query ? headers : { ...headers, 'content-type': 'application/json' },
    ...(query ? {} : { body: json ?? '{}' }),
  });
  return { status: response.status, body: await response.json() };
}

function problemOf({ body }: { body: unknown }): unknown {
  return (body as { error?: { data?: { problem?: unknown } } }).error?.data?.problem;
}

/** The own cookie with another signature. */
function tampered(): string {
  return cookie
    .replace(/.$/, (last) => (last === 'A' ? 'B' : 'A'))
    .replace(/=(.)/, (_all, first) => `=${first}x`);
}

async function watch(team: string, event: string, headers: Record<string, string>) {
  const stop = new AbortController();
  const response = await fetch(`${house.url}/live?team=${team}&event=${event}`, {
    headers,
    signal: stop.signal,
  });
  const answer = { status: response.status, body: response.ok ? 'a stream' : await response.json() };
  stop.abort();
  return answer;
}
