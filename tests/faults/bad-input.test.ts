import { randomUUID } from 'node:crypto';
import type { ItineraryProblem } from '@halfshaft/itinerary';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { foundTeamAtEvent, ITINERARY, joinTeam } from '../support/event';
import { type House, openHouse } from '../support/house';
import { askDoor } from './ask-door';
import { BAD_ITINERARIES } from './bad-itineraries';
import { BAD_REQUESTS, CARD_TABLE, type Cast, tableFor } from './bad-requests';
import { BAD_TRANSPORT } from './bad-transport';
import { askOwner, hashTables } from './table-hashes';

let house: House;
let cast: Cast;

beforeAll(async () => {
  house = await openHouse();
  const team = await foundTeamAtEvent(house);
  const other = await foundTeamAtEvent(house, 'Other');
  const mechanic = await joinTeam(house, team, 'Mia');
  const thrownOut = await joinTeam(house, team, 'Kai', 'manager');
  const runOut = await joinTeam(house, team, 'Jo', 'manager');
  await askOwner(house.database, 'DELETE FROM auth.session WHERE "userId" = $1', [thrownOut.userId]);
  await askOwner(
    house.database,
    `UPDATE auth.session SET "expiresAt" = now() - interval '1 s' WHERE "userId" = $1`,
    [runOut.userId],
  );
  cast = { team, other, mechanic, thrownOut, runOut };
});

afterAll(() => house?.close());

describe('what the front door cannot take', () => {
  it.each([...BAD_REQUESTS, ...BAD_TRANSPORT])('$name: $status, a sentence, nothing changed', async (row) => {
    const before = await hashTables(house.database);
    const told = await askDoor(house.url, row.send(cast));
    expect({ status: told.status, code: told.problem?.code }).toEqual({ status: row.status, code: row.code });
    for (const words of row.says) expect(told.problem?.message).toContain(words);
    const named = told.problem?.fields.map((field) => field.path);
    expect(named).toEqual(row.fields ?? named);
    for (const field of told.problem?.fields ?? []) expect(field.message).toMatch(/\w{3,} \w+/);
    expect(await hashTables(house.database)).toEqual(before);
  });
});

describe.each(BAD_ITINERARIES)('an itinerary with $name', ({ source, at, says }) => {
  const itinerary = { ...ITINERARY, source };

  it('is refused with row and column, and no event is made', () =>
    expectProblem('/trpc/event.create', { teamId: cast.team.teamId, name: 'Event', itinerary }));

  it('makes no new version', () => {
    const { teamId, eventId } = cast.team;
    return expectProblem('/trpc/event.saveItinerary', { teamId, eventId, itinerary });
  });

  it('keeps nothing of a visit', () => {
    const visit = { drive: 'front', surface: 'gravel', itinerary, people: 2, startPosition: 9 };
    const names = { teamName: 'Team', personName: 'Person', eventName: 'Event' };
    return expectProblem('/trpc/team.keepVisit', { ...names, visit });
  });

  async function expectProblem(path: string, body: object): Promise<void> {
    const before = await hashTables(house.database);
    const told = await askDoor(house.url, { path, cookie: cast.team.cookie, body });
    expect(told.status).toBe(200);
    const data = told.data as { ok: boolean; problems: ItineraryProblem[] };
    expect(data.ok).toBe(false);
    const found = data.problems.find((problem) => says.every((words) => problem.message.includes(words)));
    expect(found ?? data.problems).toMatchObject({ ...at, severity: 'error' });
    expect(await hashTables(house.database)).toEqual(before);
  }
});

describe.each(['add', 'replace'])('a table of cards with one wrong cell (%s)', (how) => {
  it.each([
    ['a place no car has', 'Lamps,roof rack,1 day,2', { row: 3, column: 2, field: 'Place' }],
    ['half a person’s minutes', 'Lamps,body,1 day,two', { row: 3, column: 4, field: 'Minutes' }],
    ['a limit of nothing', 'Lamps,body,0 days,2', { row: 3, column: 3, field: 'Every' }],
    ['a quote left open', '"Lamps,body,1 day,2', { row: 3, column: 1, field: '' }],
    ['a cell too many', 'Lamps,body,1 day,2,5', { row: 3, column: 5, field: '' }],
  ])('says where %s is, and takes nothing', async (_what, row, at) => {
    const before = await hashTables(house.database);
    const sent = tableFor(cast.team, cast.team.cookie, { text: CARD_TABLE + row, how });
    const told = await askDoor(house.url, sent);
    expect(told.status).toBe(200);
    const data = told.data as { ok: boolean; problems: object[] };
    expect(data).toMatchObject({ ok: false, problems: [at] });
    expect(await hashTables(house.database)).toEqual(before);
  });
});

describe('a good table of cards', () => {
  it('is taken as a whole: the card of the same name stays the same, the rest make room', async () => {
    const { teamId, carId, caller, cookie } = cast.other;
    const before = await caller.card.list({ teamId, carId });
    const nuts = before.find((card) => card.name.startsWith('Wheel nuts'));
    if (!nuts) throw new Error('The starter cards have no wheel nuts.');
    const row = `"${nuts.name}",all four corners,2 services,3\n`;
    const table = tableFor(cast.other, cookie, { text: `${CARD_TABLE}${row}` });
    const told = await askDoor(house.url, table);
    expect(told.data).toEqual({ ok: true, added: 1, kept: 1, removed: before.length - 1 });
    const after = await caller.card.list({ teamId, carId });
    expect(after.map((card) => card.name)).toEqual(['Nuts', nuts.name]);
    expect(after[1]).toMatchObject({ id: nuts.id, seconds: 180 });
    const more = await askDoor(house.url, tableFor(cast.other, cookie, { how: 'add' }));
    expect(more.data).toEqual({ ok: true, added: 1, kept: 0, removed: 0 });
    const names = (await caller.card.list({ teamId, carId })).map((card) => card.name);
    expect(names).toEqual(['Nuts', nuts.name, 'Nuts']);
  });
});

describe('a good visit', () => {
  it('is kept by the same request, so that the rows above fail for their itinerary alone', async () => {
    const visit = { drive: 'front', surface: 'gravel', itinerary: ITINERARY, people: 2, startPosition: 9 };
    const names = { teamName: 'Team', personName: 'Person', eventName: 'Event' };
    const { cookie } = await house.signUp('Visitor');
    const told = await askDoor(house.url, {
      path: '/trpc/team.keepVisit',
      cookie,
      body: { ...names, visit },
    });
    expect(told.data).toMatchObject({ ok: true });
  });
});

describe('text that no database keeps', () => {
  it('is mended, and the rest is kept: a NUL from a pasted PDF, half an emoji', async () => {
    const { teamId, cookie } = cast.team;
    const named = {
      name: `Ka\0r ${'😀'.slice(0, 1)}`,
      drive: 'front',
      surface: 'gravel',
      starterCards: 'none',
    };
    const made = await askDoor(house.url, { path: '/trpc/car.create', cookie, body: { teamId, ...named } });
    expect(made.status).toBe(200);
    const itinerary = { ...ITINERARY, source: ITINERARY.source.replace('Otter', 'Ot\0ter') };
    const event = await askDoor(house.url, {
      path: '/trpc/event.create',
      cookie,
      body: { teamId, name: 'Event', itinerary },
    });
    expect(event.data).toMatchObject({ ok: true });
    const [car] = await askOwner<{ name: string }>(
      house.database,
      'SELECT name FROM car WHERE team_id = $1 AND name LIKE $2',
      [teamId, 'Kar%'],
    );
    expect(car?.name).toBe('Kar \uFFFD');
  });

  it('breaks neither sign-up nor sign-in', async () => {
    const email = `${randomUUID()}@test.example`;
    const body = { name: 'No\0body', email, password: 'a long enough password' };
    const signedUp = await askDoor(house.url, { path: '/auth/sign-up/email', body });
    expect(signedUp.status).toBe(200);
    const broken = await askDoor(house.url, { path: '/auth/sign-in/email', text: '{"email": ' });
    expect(broken.status).toBe(400);
    expect(broken.problem?.message).toContain('could not be read');
    const empty = await askDoor(house.url, { path: '/auth/sign-in/email', body: {} });
    expect(empty.status).toBe(400);
    expect(empty.text).toContain('email');
  });
});
