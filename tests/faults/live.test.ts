import { randomUUID } from 'node:crypto';
import { Agent, get } from 'node:http';
import { readNews } from '@halfshaft/api/work';
import pg from 'pg';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import {
  foundTeamAtEvent,
  ITINERARY,
  joinTeam,
  makeAction,
  type TeamAtEvent,
  taskRef,
} from '../support/event';
import { type Caller, type House, openHouse } from '../support/house';
import { type LiveStream, openLiveStream } from './live-stream';
import { type ApiProcess, startApiProcess } from './start-process';
import { askOwner } from './table-hashes';

/** The route's beat is every 15 s. */
const BEAT_WITHIN_MS = 16_000;

type Member = { caller: Caller; personId: string; cookie: string };

let house: House;
let second: ApiProcess;
let team: TeamAtEvent;
let mia: Member;
const open: LiveStream[] = [];

beforeAll(async () => {
  house = await openHouse();
  second = await startApiProcess(house.database);
  team = await foundTeamAtEvent(house);
  mia = await joinTeam(house, team, 'Mia');
});

afterEach(() => {
  for (const stream of open.splice(0)) stream.close();
});

afterAll(async () => {
  await second?.stop();
  await house?.close();
});

describe('who may watch', () => {
  it('asks a stranger to sign in', async () => {
    const answer = await fetch(addressOf(house.url, team.teamId, team.eventId));
    expect(answer.status).toBe(401);
    expect(await answer.json()).toEqual({ message: 'Sign in to watch an event.' });
  });

  it('gives one answer for an event of another team and for one that never was', async () => {
    const other = await foundTeamAtEvent(house, 'Other');
    const asked = [
      [other.teamId, other.eventId],
      [team.teamId, other.eventId],
      [other.teamId, team.eventId],
      [randomUUID(), randomUUID()],
      [team.teamId, randomUUID()],
    ] as const;
    for (const [teamId, eventId] of asked) {
      const answer = await fetch(addressOf(house.url, teamId, eventId), { headers: { cookie: mia.cookie } });
      expect(answer.status).toBe(404);
      expect(await answer.json()).toEqual({ message: 'That event does not exist, or it is not yours.' });
    }
  });

  it('says what is missing from a malformed request', async () => {
    const answer = await fetch(`${house.url}/live?team=7&event=x`, { headers: { cookie: mia.cookie } });
    expect(answer.status).toBe(400);
    expect(await answer.json()).toEqual({ message: 'Say which team and event to watch.' });
  });

  it('lets nobody watch who was taken out of the team', async () => {
    const leaver = await joinTeam(house, team, 'Leaver');
    const people = await team.caller.people.list({ teamId: team.teamId });
    const found = people.find((person) => person.personId === leaver.personId)?.membership?.membershipId;
    await team.caller.people.revoke({ teamId: team.teamId, membershipId: found ?? '' });
    const answer = await fetch(addressOf(house.url, team.teamId, team.eventId), {
      headers: { cookie: leaver.cookie },
    });
    expect(answer.status).toBe(404);
  });
});

describe('what is heard', () => {
  it('begins with a call to pull, then tells the seq of every push of another person', async () => {
    const stream = await watch(house.url);
    expect(await stream.next()).toBe('data: 0');
    for (let times = 0; times < 2; times += 1) {
      const { lastSeq } = await act(mia);
      expect(await nextSeq(stream)).toBe(lastSeq);
    }
  });

  it('hears what was pushed through another process', async () => {
    const [here, there] = [await watch(house.url), await watch(second.url)];
    expect([await here.next(), await there.next()]).toEqual(['data: 0', 'data: 0']);
    const seq = await actOverHttp(second.url, mia);
    expect([await nextSeq(here), await nextSeq(there)]).toEqual([seq, seq]);
    const { lastSeq } = await act(mia);
    expect([await nextSeq(here), await nextSeq(there)]).toEqual([lastSeq, lastSeq]);
  });

  it('hears nothing of a push that was refused, nor of other events', async () => {
    const stream = await watch(house.url);
    await stream.next();
    const other = await foundTeamAtEvent(house, 'Another');
    await act(other, other);
    const { teamId, eventId, entryId, cardIds } = team;
    const task = taskRef(entryId, cardIds[0] ?? '', 'B');
    await team.caller.work.push({
      teamId,
      eventId,
      actions: [makeAction({ kind: 'releaseTask', args: { task } }, team.personId)],
    });
    await expect(stream.next(1_500)).rejects.toThrow('Nothing came');
    const { lastSeq } = await act(mia);
    expect(await nextSeq(stream)).toBe(lastSeq);
  });

  it('brings what is new before its seq, the same as a pull gives', async () => {
    const stream = await watch(house.url);
    await stream.next();
    for (let times = 0; times < 2; times += 1) {
      const { lastSeq } = await act(mia);
      const { teamId, eventId } = team;
      const pulled = await team.caller.work.pull({ teamId, eventId, since: lastSeq - 1 });
      expect(await stream.next()).toBe(`event: entries\ndata: ${JSON.stringify(pulled.entries)}`);
      expect(await stream.next()).toBe(`data: ${lastSeq}`);
    }
  });

  it('leaves more than fifty new entries to a pull', async () => {
    const { teamId, eventId, userId } = team;
    const actions = Array.from({ length: 51 }, () => confirm(team, mia.personId));
    const { lastSeq } = await mia.caller.work.push({ teamId, eventId, actions });
    const newsSince = (since: number) => readNews(house.store, { teamId, eventId }, [userId], since);
    expect((await newsSince(lastSeq - 50))?.entries.map((entry) => entry.seq).at(-1)).toBe(lastSeq);
    expect(await newsSince(lastSeq - 51)).toEqual({ entries: [], watchers: new Set([userId]) });
  });

  it('reads nothing for strangers, nor for a helper of another event', async () => {
    const { teamId, eventId, caller } = team;
    const other = await foundTeamAtEvent(house, 'Stranger');
    const elsewhere = await caller.event.create({ teamId, name: 'Another event', itinerary: ITINERARY });
    const link = await caller.invite.create({
      ...{ teamId, role: 'mechanic', days: 2 },
      eventId: elsewhere.ok ? elsewhere.eventId : '',
    });
    const helper = await house.signInAnonymously();
    await house.callAs(helper.userId).invite.accept({ token: link.token, name: 'Helper elsewhere' });
    const of = { teamId, eventId };
    expect(await readNews(house.store, of, [other.userId], 0)).toBe(null);
    expect(await readNews(house.store, of, [helper.userId], 0)).toEqual({ entries: [], watchers: new Set() });
    const both = await readNews(house.store, { ...of, teamId: other.teamId }, [other.userId, team.userId], 0);
    expect(both).toEqual({ entries: [], watchers: new Set([other.userId]) });
  });

  it('ends for whoever is taken out of the team, before anything more is told', async () => {
    const leaver = await joinTeam(house, team, 'Leaver again');
    const [theirs, ours] = [await watch(house.url, leaver.cookie), await watch(house.url)];
    expect([await theirs.next(), await ours.next()]).toEqual(['data: 0', 'data: 0']);
    const people = await team.caller.people.list({ teamId: team.teamId });
    const found = people.find((person) => person.personId === leaver.personId)?.membership?.membershipId;
    await team.caller.people.revoke({ teamId: team.teamId, membershipId: found ?? '' });
    const { lastSeq } = await act(mia);
    expect(await nextSeq(ours)).toBe(lastSeq);
    await expect(theirs.next()).rejects.toThrow('The stream of /live ended.');
  });

  it('beats when nothing happens, so that nothing on the way closes the stream', async () => {
    const stream = await watch(house.url);
    await stream.next();
    expect(await stream.next(BEAT_WITHIN_MS)).toBe(': still here');
  });

  it('tells everyone to pull after the database dropped the listener, and hears again from then on', async () => {
    const stream = await watch(house.url);
    await stream.next();
    const dropped = await askOwner(
      house.database,
      `SELECT pg_terminate_backend(pid) FROM pg_stat_activity
       WHERE datname = current_database() AND query LIKE 'LISTEN %'`,
    );
    expect(dropped).toHaveLength(2); // one listener a process
    expect(await stream.next()).toBe('data: 0');
    const { lastSeq } = await act(mia);
    expect(await nextSeq(stream)).toBe(lastSeq);
  });

  it('goes on, in both processes, after the database dropped every connection', async () => {
    const stream = await watch(second.url);
    await stream.next();
    await askOwner(
      house.database,
      `SELECT pg_terminate_backend(pid) FROM pg_stat_activity
       WHERE datname = current_database() AND pid <> pg_backend_pid()`,
    );
    expect(await stream.next()).toBe('data: 0');
    for (const url of [house.url, second.url]) {
      const seq = await actOverHttp(url, mia);
      expect(await nextSeq(stream)).toBe(seq);
    }
  });

  it('forgets a watcher that went away', async () => {
    const stream = await watch(house.url);
    await stream.next();
    expect(house.live.subscriberCount()).toBe(1);
    stream.close();
    await expect.poll(() => house.live.subscriberCount()).toBe(0);
  });

  it('keeps no watcher that went away before the database had answered', async () => {
    const owner = new pg.Client({ connectionString: house.database.ownerUrl });
    await owner.connect();
    await owner.query('BEGIN; LOCK TABLE membership IN ACCESS EXCLUSIVE MODE');
    const sockets = house.app.server;
    const gone = new Promise((resolve) =>
      sockets.once('connection', (socket) => socket.once('close', resolve)),
    );
    const leaving = openSocket(addressOf(house.url, team.teamId, team.eventId), team.cookie);
    await expect.poll(() => countWaiting(owner)).toBe(1);
    leaving.destroy();
    await gone;
    await owner.query('COMMIT');
    await owner.end();
    const stream = await watch(house.url);
    await stream.next();
    expect(house.live.subscriberCount()).toBe(1);
  });
});

/** A connection of its own, which no pool keeps open. */
function openSocket(url: string, cookie: string) {
  const request = get(url, { agent: new Agent({ keepAlive: false }), headers: { cookie } });
  request.on('error', () => {});
  return request;
}

async function countWaiting(owner: pg.Client): Promise<number> {
  const { rows } = await owner.query<{ count: number }>(
    `SELECT count(*)::int FROM pg_locks l JOIN pg_database d ON d.oid = l.database AND d.datname = current_database()
     WHERE NOT l.granted`,
  );
  return rows[0]?.count ?? 0;
}

function addressOf(url: string, teamId: string, eventId: string): string {
  return `${url}/live?team=${teamId}&event=${eventId}`;
}

async function watch(url: string, cookie = team.cookie): Promise<LiveStream> {
  const stream = await openLiveStream(addressOf(url, team.teamId, team.eventId), cookie);
  open.push(stream);
  return stream;
}

/** The seq told next, whatever content comes before it. */
async function nextSeq(stream: LiveStream): Promise<number> {
  for (;;) {
    const [, seq] = /^data: (\d+)$/.exec(await stream.next()) ?? [];
    if (seq !== undefined) return Number(seq);
  }
}

/** One fact more in the log. */
function act(who: Pick<Member, 'caller' | 'personId'>, at: TeamAtEvent = team) {
  const { teamId, eventId } = at;
  return who.caller.work.push({ teamId, eventId, actions: [confirm(at, who.personId)] });
}

async function actOverHttp(url: string, who: Member): Promise<number> {
  const { teamId, eventId } = team;
  const answer = await fetch(`${url}/trpc/work.push`, {
    method: 'POST',
    headers: { cookie: who.cookie, 'content-type': 'application/json' },
    body: JSON.stringify({ teamId, eventId, actions: [confirm(team, who.personId)] }),
  });
  const told = (await answer.json()) as { result: { data: { lastSeq: number } } };
  return told.result.data.lastSeq;
}

function confirm({ entryId }: TeamAtEvent, personId: string) {
  const args = { entryId, stageId: 'SS1', driven: true, conditions: {} };
  return makeAction({ kind: 'confirmStage', args }, personId);
}
