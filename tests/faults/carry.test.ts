import { createHash, randomUUID } from 'node:crypto';
import { gunzipSync, gzipSync } from 'node:zlib';
import { type ActionBody, type LogEntry, rebuild } from '@halfshaft/worklog';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bringIn, fetchCarried, logPartOf, tryBringIn } from '../support/carry';
import {
  foundTeamAtEvent,
  ITINERARY,
  joinTeam,
  makeAction,
  type TeamAtEvent,
  taskRef,
} from '../support/event';
import { type Caller, type House, openHouse } from '../support/house';
import { bringPicture, fetchPicture, photoOf, TINY_JPEG } from '../support/photo';
import { readProjection, rowsOf } from './projection';

/** Two servers that share nothing: each has a database of its own. */
let home: House;
let van: House;

beforeAll(async () => {
  [home, van] = await Promise.all([openHouse(), openHouse()]);
});
afterAll(() => Promise.all([home?.close(), van?.close()]));

interface Bay {
  caller: Caller;
  teamId: string;
  eventId: string;
}

async function push({ caller, teamId, eventId }: Bay, by: string, ...bodies: ActionBody[]) {
  const actions = bodies.map((body) => makeAction(body, by));
  const { results } = await caller.work.push({ teamId, eventId, actions });
  return { actions, results };
}

async function logOf({ caller, teamId, eventId }: Bay): Promise<LogEntry[]> {
  const { entries, lastSeq } = await caller.work.pull({ teamId, eventId, since: 0 });
  expect(entries.map((entry) => entry.seq)).toEqual(Array.from({ length: lastSeq }, (_, index) => index + 1));
  return entries;
}

/** The log has no gap, each action once, and gives what stands in the tables. */
async function expectConsistent(house: House, bay: Bay): Promise<LogEntry[]> {
  const log = await logOf(bay);
  expect(await readProjection(house.database, bay.eventId)).toEqual(rowsOf(rebuild(log)));
  const runs = log.filter((entry, index) => entry.actionId !== log[index - 1]?.actionId);
  expect(new Set(runs.map((entry) => entry.actionId)).size).toBe(runs.length);
  return log;
}

/** The event taken along to the van, by its founder under another account there. */
async function takeAlong(team: TeamAtEvent) {
  const { userId, cookie } = await van.signUp('Founder in the van');
  const file = await fetchCarried({ url: home.url, cookie: team.cookie }, team.teamId, team.eventId);
  const there = { url: van.url, cookie };
  const outcome = await bringIn(there, file, team.personId);
  const bay = { caller: van.callAs(userId), teamId: team.teamId, eventId: team.eventId };
  return { file, there, bay, outcome, userId };
}

const atHome = (team: TeamAtEvent) => ({ url: home.url, cookie: team.cookie });
const close = (team: TeamAtEvent, place: number, serviceId = 'A'): ActionBody => ({
  kind: 'closeTask',
  args: { task: taskRef(team.entryId, team.cardIds[place] ?? '', serviceId), findings: [], readings: [] },
});
const take = (team: TeamAtEvent, place: number, serviceId = 'A'): ActionBody => ({
  kind: 'takeTask',
  args: { task: taskRef(team.entryId, team.cardIds[place] ?? '', serviceId) },
});
const snag = (team: TeamAtEvent): ActionBody => ({
  kind: 'raiseSnag',
  args: {
    snagId: randomUUID(),
    entryId: team.entryId,
    serviceId: 'A',
    place: 'boot',
    words: 'Smells of fuel',
    urgent: true,
  },
});

describe('an event that is taken along', () => {
  it('is the same on the other server: log, what it gives, pictures, cards and itinerary', async () => {
    const team = await foundTeamAtEvent(home);
    const mia = await joinTeam(home, team, 'Mia');
    const { actions } = await push(team, mia.personId, take(team, 0), snag(team), close(team, 1));
    await push(team, team.personId, { kind: 'undo', args: { actionId: actions[2]?.actionId ?? '' } });
    await push(team, team.personId, {
      kind: 'releaseTask',
      args: { task: taskRef(team.entryId, team.cardIds[3] ?? '') },
    });
    const { photoId, body } = photoOf(taskRef(team.entryId, team.cardIds[0] ?? ''));
    await push(team, mia.personId, body);
    await bringPicture({ url: home.url, teamId: team.teamId, photoId, cookie: team.cookie });
    const { bay, there, outcome, file } = await takeAlong(team);
    expect(outcome.report).toMatchObject({ came: 6, known: 0, refused: [], notes: [] });
    expect(await expectConsistent(van, bay)).toEqual(await expectConsistent(home, team));
    const ids = { teamId: team.teamId, eventId: team.eventId };
    const [here, away] = [await team.caller.event.get(ids), await bay.caller.event.get(ids)];
    for (const part of [
      'itinerary',
      'entries',
      'penaltyRules',
      'plannedConditions',
      'itineraryText',
    ] as const) {
      expect(away[part]).toEqual(here[part]);
    }
    expect(away.people.map((person) => person.name).sort()).toEqual(
      here.people.map((person) => person.name).sort(),
    );
    expect(away.me).toEqual({ personId: team.personId, role: 'admin' });
    expect((await fetchPicture(van.url, team.teamId, photoId, there.cookie)).status).toBe(200);
    // Once more changes nothing.
    const again = await bringIn(there, file, team.personId);
    expect(again.report).toMatchObject({ came: 0, known: 6, refused: [], notes: [] });
    expect(again.pictures).toEqual([expect.objectContaining({ isMissing: false })]);
    expect(await bay.caller.bringIn.list(ids)).toHaveLength(1);
    // A phone that sends again what it had sent to the other server gets the answer of then.
    const repeated = await bay.caller.work.push({ ...ids, actions: actions.slice(0, 1) });
    expect(repeated.results[0]).toMatchObject({ status: 'accepted', repeated: true });
  });

  it('founds the team once when two bring it in at once, and lets the other in by no file', async () => {
    const team = await foundTeamAtEvent(home);
    const part = logPartOf(await fetchCarried(atHome(team), team.teamId, team.eventId));
    const accounts = await Promise.all([van.signUp('One'), van.signUp('Two')]);
    const answers = await Promise.all(
      accounts.map(({ cookie }) => tryBringIn({ url: van.url, cookie }, part, 'take', team.personId)),
    );
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 403]);
    const mine = await Promise.all(accounts.map(({ userId }) => van.callAs(userId).team.mine()));
    expect(mine.flatMap(({ teams }) => teams)).toHaveLength(1);
  });

  it('carries nobody’s sign-in', async () => {
    const team = await foundTeamAtEvent(home);
    const file = await fetchCarried(atHome(team), team.teamId, team.eventId);
    const text = gunzipSync(logPartOf(file)).toString();
    expect(text).toContain('Team Founder');
    expect(text).not.toContain(team.userId);
    expect(text).not.toContain('@test.example');
  });
});

describe('an event that is brought home', () => {
  it('has the work of both, each action once, and says what was refused, twice over', async () => {
    const team = await foundTeamAtEvent(home);
    const { bay, there } = await takeAlong(team);
    const ids = { teamId: team.teamId, eventId: team.eventId };
    // In the van a helper joins by a link and works; at home somebody takes the same job meanwhile.
    const { token } = await bay.caller.invite.create({ ...ids, role: 'mechanic', days: 2 });
    const kai = van.callAs((await van.signUp('Kai')).userId);
    const { personId: kaiId } = await kai.invite.accept({ token, name: 'Kai' });
    const inVan = { ...bay, caller: kai };
    const worked = await push(inVan, kaiId, take(team, 0), close(team, 1), snag(team));
    expect(worked.results.map((result) => result.status)).toEqual(['accepted', 'accepted', 'accepted']);
    await push(team, team.personId, take(team, 0), close(team, 2));

    const file = await fetchCarried(there, team.teamId, team.eventId);
    const [first, second] = await Promise.all([bringIn(atHome(team), file), bringIn(atHome(team), file)]);
    const [done, idle] = first.report.came > 0 ? [first, second] : [second, first];
    expect(done.report).toEqual({
      came: 2,
      known: 0,
      refused: [
        {
          deed: expect.stringMatching(/^Kai took '.+' at Service A$/),
          why: expect.stringMatching(/^Team Founder has it already\./),
        },
      ],
      notes: ['Kai worked there and is now in the team here, without a sign-in.'],
    });
    expect(idle.report).toMatchObject({ came: 0, known: 3, refused: [] });
    const log = await expectConsistent(home, team);
    const brought = log.filter((entry) => entry.by === kaiId);
    expect(
      brought.map(({ actionId, deviceTime, enteredBy }) => ({ actionId, deviceTime, enteredBy })),
    ).toEqual(
      worked.actions.slice(1).map(({ actionId, deviceTime }) => ({ actionId, deviceTime, enteredBy: kaiId })),
    );
    for (const { flags } of brought)
      expect(flags).toContainEqual({ code: 'broughtIn', personId: team.personId });
    const reports = await team.caller.bringIn.list(ids);
    expect(reports).toEqual([expect.objectContaining({ broughtBy: 'Team Founder', report: done.report })]);

    // Round two, both ways: what is there already stays once.
    await push(inVan, kaiId, close(team, 3));
    await push(team, team.personId, close(team, 4));
    await bringIn(there, await fetchCarried(atHome(team), team.teamId, team.eventId));
    const later = await fetchCarried(there, team.teamId, team.eventId);
    expect((await bringIn(atHome(team), later)).report).toMatchObject({ came: 1, refused: [] });
    // The first file, late and out of order.
    expect((await bringIn(atHome(team), file)).report).toMatchObject({ came: 0, refused: [] });
    const ends = [await expectConsistent(home, team), await expectConsistent(van, bay)];
    const factsOf = (entries: LogEntry[]) =>
      entries
        .filter(({ body }) => body.kind === 'done' || body.kind === 'snagRaised')
        .map(({ actionId }) => actionId)
        .sort();
    expect(factsOf(ends[0] ?? [])).toEqual(factsOf(ends[1] ?? []));
    expect(factsOf(ends[0] ?? [])).toHaveLength(5);
  });

  it('takes what managers changed on one side, and leaves and names what both changed', async () => {
    const team = await foundTeamAtEvent(home);
    const { bay, there } = await takeAlong(team);
    const { teamId, eventId, carId } = team;
    const changed = { ...ITINERARY, startsOn: '2026-06-20' };
    await bay.caller.event.saveItinerary({ teamId, eventId, itinerary: changed });
    await bay.caller.event.setTyreAllowance({ teamId, eventId, tyreAllowance: 12 });
    await team.caller.event.setTyreAllowance({ teamId, eventId, tyreAllowance: 8 });
    await team.caller.car.update({
      teamId,
      carId,
      name: 'Renamed at home',
      drive: 'front',
      surface: 'gravel',
    });
    const added = await bay.caller.car.create({
      teamId,
      name: 'Second',
      drive: 'rear',
      surface: 'gravel',
      starterCards: 'small',
    });
    const entry = await bay.caller.event.enter({
      teamId,
      eventId,
      carId: added.carId,
      carNumber: '9',
      startPosition: 9,
      people: 2,
    });
    const [card] = await bay.caller.card.list({ teamId, carId: added.carId });
    await push(bay, team.personId, {
      kind: 'closeTask',
      args: { task: taskRef(entry.entryId, card?.id ?? ''), findings: [], readings: [] },
    });
    const { report } = await bringIn(atHome(team), await fetchCarried(there, teamId, eventId));
    expect(report.came).toBe(1);
    expect(report.refused).toEqual([]);
    expect([...report.notes].sort()).toEqual([
      'The itinerary was changed on the other server and now stands here too.',
      'What is set for the event (penalties, conditions, tyres) was changed on both servers. What this one had was left.',
    ]);
    const event = await team.caller.event.get({ teamId, eventId });
    expect(event).toMatchObject({
      tyreAllowance: 8,
      itineraryNumber: 2,
      itineraryText: { startsOn: '2026-06-20' },
    });
    expect(event.entries.map(({ car }) => car.name).sort()).toEqual(['Renamed at home', 'Second']);
    await expectConsistent(home, team);
    // What home has goes to the van, also where home had settled it; nothing comes back as a conflict.
    const back = await bringIn(there, await fetchCarried(atHome(team), teamId, eventId));
    expect([...back.report.notes].sort()).toEqual([
      'The car “Renamed at home” was changed on the other server and now stands here too.',
      'What is set for the event (penalties, conditions, tyres) was changed on the other server and now stands here too.',
    ]);
    expect((await bringIn(atHome(team), await fetchCarried(there, teamId, eventId))).report.notes).toEqual(
      [],
    );
    expect((await bay.caller.event.get({ teamId, eventId })).tyreAllowance).toBe(8);
  });

  it('brings pictures that were taken in the van', async () => {
    const team = await foundTeamAtEvent(home);
    const { bay, there } = await takeAlong(team);
    const { photoId, body } = photoOf(taskRef(team.entryId, team.cardIds[0] ?? ''));
    await push(bay, team.personId, body);
    await bringPicture({ ...there, teamId: team.teamId, photoId });
    const file = await fetchCarried(there, team.teamId, team.eventId);
    const { body: outcome } = await tryBringIn(atHome(team), logPartOf(file));
    expect(outcome.pictures).toEqual([{ photoId, bytes: expect.any(Number), isMissing: true }]);
    const other = await bringPicture({
      ...atHome(team),
      teamId: team.teamId,
      photoId,
      file: Buffer.concat([TINY_JPEG, TINY_JPEG]),
    });
    expect(other.status).toBe(400);
    const again = await bringIn(atHome(team), file);
    expect(again.report.came).toBe(0);
    expect((await fetchPicture(home.url, team.teamId, photoId, team.cookie)).status).toBe(200);
  });
});

describe('a file that is not as it was made', () => {
  /** The log part again after its lines were changed; with a check sum that fits. */
  function rewrite(
    part: Buffer,
    change: (lines: Record<string, unknown>[]) => Record<string, unknown>[],
  ): Buffer {
    const lines = gunzipSync(part).toString().trimEnd().split('\n').slice(0, -1);
    const changed = change(lines.map((line) => JSON.parse(line)));
    const body = changed.map((line) => `${JSON.stringify(line)}\n`).join('');
    const sha256 = createHash('sha256').update(body).digest('hex');
    return gzipSync(`${body}${JSON.stringify({ actions: changed.length - 1, sha256 })}\n`);
  }

  it('is refused with a sentence, and nothing of it comes in', async () => {
    const team = await foundTeamAtEvent(home);
    await push(team, team.personId, take(team, 0), close(team, 1), snag(team));
    const part = logPartOf(await fetchCarried(atHome(team), team.teamId, team.eventId));
    const { cookie, userId } = await van.signUp('Someone');
    const there = { url: van.url, cookie };
    const head = (change: (head: Record<string, unknown>) => object) =>
      rewrite(part, ([first = {}, ...rest]) => [{ ...first, ...change(first) }, ...rest]);
    const plain = gunzipSync(part).toString();
    const bad: [string, Uint8Array][] = [
      ['nothing', Buffer.alloc(0)],
      ['no gzip', Buffer.from('hello')],
      ['cut off', part.subarray(0, part.length - 20)],
      ['a text that is no file', gzipSync('{"a":1}\n{"b":2}\n')],
      ['edited by hand', gzipSync(plain.replace('Smells of fuel', 'Smells of wine'))],
      ['a bomb', gzipSync(Buffer.alloc(210_000_000))],
      ['another version', head(() => ({ version: 99 }))],
      ['no event', head(() => ({ event: null }))],
      ['a person missing', head(() => ({ people: [] }))],
      ['a card twice', head(({ cards }) => ({ cards: [...(cards as object[]), (cards as object[])[0]] }))],
      ['a car missing', head(() => ({ cars: [] }))],
      [
        'an itinerary that is none',
        head(({ versions }) => ({
          versions: (versions as { text: object }[]).map((each) => ({
            ...each,
            text: { ...each.text, source: 'no table' },
          })),
        })),
      ],
      ['a gap in the log', rewrite(part, ([first = {}, , ...rest]) => [first, ...rest])],
      ['an action twice', rewrite(part, (lines) => [...lines, lines[1] ?? {}])],
      [
        'a stranger’s action',
        rewrite(part, (lines) =>
          JSON.parse(JSON.stringify(lines).replaceAll(`"by":"${team.personId}"`, `"by":"${randomUUID()}"`)),
        ),
      ],
      [
        'an entry of another car',
        rewrite(part, ([first = {}, ...rest]) => [
          first,
          ...JSON.parse(JSON.stringify(rest).replaceAll(team.entryId, randomUUID())),
        ]),
      ],
      [
        'two cars on one start position',
        head(({ entries, cars }) => ({
          cars: [
            ...(cars as object[]),
            { ...(cars as object[])[0], carId: '7b0c3f3e-3b51-4c55-9f5e-111111111111' },
          ],
          entries: [
            ...(entries as object[]),
            {
              ...(entries as object[])[0],
              entryId: randomUUID(),
              carId: '7b0c3f3e-3b51-4c55-9f5e-111111111111',
            },
          ],
        })),
      ],
    ];
    for (const [what, file] of bad) {
      for (const step of ['look', 'take'] as const) {
        const { status, body } = await tryBringIn(there, file, step, team.personId);
        const onlyWhenTaken = /itinerary|position/.test(what) && step === 'look';
        expect([what, step, onlyWhenTaken ? 'later' : status]).toEqual([
          what,
          step,
          onlyWhenTaken ? 'later' : what === 'a bomb' ? 413 : 400,
        ]);
        if (!onlyWhenTaken) expect(body.message).toMatch(/^[A-Z].*\.$/);
      }
    }
    expect(await van.callAs(userId).team.mine()).toEqual({ teams: [], organisers: [] });
    expect((await tryBringIn(there, part, 'take', randomUUID())).status).toBe(400);
    expect((await tryBringIn(there, part, 'take', team.personId)).status).toBe(200);
  });

  it('names an action whose id stands here for something else', async () => {
    const team = await foundTeamAtEvent(home);
    const { bay, there } = await takeAlong(team);
    const { actions } = await push(bay, team.personId, close(team, 0));
    const [action] = actions;
    const other = { ...makeAction(close(team, 1), team.personId), actionId: action?.actionId ?? '' };
    await team.caller.work.push({ teamId: team.teamId, eventId: team.eventId, actions: [other] });
    const { report } = await bringIn(atHome(team), await fetchCarried(there, team.teamId, team.eventId));
    expect(report).toMatchObject({
      came: 0,
      known: 0,
      refused: [{ deed: expect.stringMatching(/^Team Founder closed/) }],
    });
    await expectConsistent(home, team);
  });
});
