import { randomUUID } from 'node:crypto';
import { appRouter } from '@halfshaft/api/router';
import pg from 'pg';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type House, openHouse } from '../support/house';
import type { Variant } from './fixture';
import { FIXTURES } from './fixtures';
import { inputsOf } from './inputs-of';
import { changedPlaces, readState, type TableState } from './table-state';
import { foundWorld, type World } from './world';

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
