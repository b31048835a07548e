import { randomUUID } from 'node:crypto';
import type { PushResult } from '@halfshaft/contract';
import { ACTION_VERSION } from '@halfshaft/worklog';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { foundTeamAtEvent, joinTeam, makeAction, taskRef } from '../support/event';
import { type House, openHouse } from '../support/house';
import { askDoor } from './ask-door';
import { BAD_ACTIONS, type Bench } from './bad-actions';
import { askOwner, hashTables } from './table-hashes';

type SentAction = Omit<ReturnType<typeof makeAction>, 'kind' | 'args'> & { kind: string; args: unknown };

let house: House;
let bench: Bench;

beforeAll(async () => {
  house = await openHouse();
  const team = await foundTeamAtEvent(house);
  const other = await foundTeamAtEvent(house, 'Other');
  const mechanic = await joinTeam(house, team, 'Mia');
  const theirs = goodAction({ team: other, mechanic: other }, 'SS1');
  const { teamId, eventId } = other;
  await other.caller.work.push({ teamId, eventId, actions: [theirs] });
  bench = { team, other, mechanic, othersActionId: theirs.actionId };
});

afterAll(() => house?.close());

describe('an action that cannot be taken, between two that can', () => {
  it.each(BAD_ACTIONS)('$name: $code, with a sentence; the others are kept', async ({ make, code, says }) => {
    const first = goodAction(bench, 'SS1');
    const bad = badAction(make(bench));
    const last = goodAction(bench, 'SS2');
    const unchanged = await othersHash();
    const results = await push([first, bad, last]);

    expect(results.map(({ status }) => status)).toEqual(['accepted', 'refused', 'accepted']);
    expect(results[1]).toMatchObject({ actionId: bad.actionId, code, seqs: [], repeated: false });
    for (const words of says) expect(results[1]?.sentence).toContain(words);
    expect(await tracesOf(bad.actionId)).toEqual({ log: 0, applied: 0, stored: 1 });
    expect(await tracesOf(last.actionId)).toEqual({ log: 1, applied: 1, stored: 1 });
    expect(await othersHash()).toEqual(unchanged);

    const before = await hashTables(house.database);
    expect(await push([bad])).toEqual([{ ...results[1], repeated: true }]);
    expect(await hashTables(house.database)).toEqual(before);
  });
});

describe('the same action again', () => {
  it('gets its first answer, in another request or in the same one', async () => {
    const action = goodAction(bench, 'SS3');
    const [first, twin] = await push([action, action]);
    expect(first).toMatchObject({ status: 'accepted', repeated: false });
    expect(twin).toEqual({ ...first, repeated: true });
    const before = await hashTables(house.database);
    expect(await push([action])).toEqual([{ ...first, repeated: true }]);
    expect(await hashTables(house.database)).toEqual(before);
  });

  it('is refused by name when its content is another, and the first stands', async () => {
    const action = goodAction(bench, 'SS4');
    const changed = { ...action, args: { ...action.args, driven: false } };
    const [first, second] = await push([action, changed]);
    expect([first?.status, second?.status, second?.code]).toEqual([
      'accepted',
      'refused',
      'sameIdOtherContent',
    ]);
    const before = await hashTables(house.database);
    const [again] = await push([changed]);
    expect(again).toMatchObject({ status: 'refused', code: 'sameIdOtherContent', seqs: [] });
    expect(again?.sentence).toContain('used before for something else');
    expect(await push([action])).toEqual([{ ...first, repeated: true }]);
    expect(await hashTables(house.database)).toEqual(before);
  });
});

describe('what somebody else entered on a shared phone', () => {
  it('is taken under that person’s sign-in only; nothing changes before', async () => {
    const { team, mechanic } = bench;
    const { teamId, eventId } = team;
    const action = goodAction(bench, 'SS5');
    const before = await hashTables(house.database);
    const send = (cookie: string, enteredBy: string) =>
      askDoor(house.url, {
        path: '/trpc/work.push',
        cookie,
        body: { teamId, eventId, enteredBy, actions: [action] },
      });
    const refused = await send(team.cookie, mechanic.personId);
    expect(refused.problem).toMatchObject({
      code: 'notAllowed',
      message: expect.stringContaining('Someone else'),
    });
    expect(await hashTables(house.database)).toEqual(before);
    const taken = await send(mechanic.cookie, mechanic.personId);
    expect(taken.data).toMatchObject({ results: [{ status: 'accepted' }] });
  });
});

describe('an action of the version before', () => {
  it('is taken: a snag that does not say whether it is urgent is not', async () => {
    const snagId = randomUUID();
    const { entryId } = bench.team;
    const args = { snagId, entryId, serviceId: 'A', place: 'RR', words: 'oil on the hub' };
    const [result] = await push([badAction({ kind: 'raiseSnag', args, version: ACTION_VERSION - 1 })]);
    expect(result).toMatchObject({ status: 'accepted', code: null });
    const [snag] = await askOwner<{ body: object }>(house.database, 'SELECT body FROM snag WHERE id = $1', [
      snagId,
    ]);
    expect(snag?.body).toMatchObject({ words: 'oil on the hub', urgent: false });
  });
});

describe('words that no database keeps', () => {
  it('are mended, so that the finding is kept and nothing behind it waits', async () => {
    const finding = { lookId: null, position: null, grade: 'needsWork', words: `worn\0 ${'😀'.slice(1)}` };
    const task = taskRef(bench.team.entryId, bench.team.cardIds[1] ?? '');
    const action = badAction({ kind: 'closeTask', args: { task, findings: [finding], readings: [] } });
    const results = await push([action, goodAction(bench, 'SS5')]);
    expect(results.map(({ status }) => status)).toEqual(['accepted', 'accepted']);
    const [entry] = await askOwner<{ words: string }>(
      house.database,
      `SELECT body->'findings'->0->>'words' AS words FROM log_entry WHERE action_id = $1`,
      [action.actionId],
    );
    expect(entry?.words).toBe('worn \uFFFD');
  });
});

/** A fact, which is never refused. */
function goodAction(
  { team, mechanic }: Pick<Bench, 'team'> & { mechanic: { personId: string } },
  stageId: string,
) {
  const args = { entryId: team.entryId, stageId, driven: true, conditions: {} };
  return { ...makeAction({ kind: 'confirmStage', args }, mechanic.personId), args };
}

function badAction(differs: { kind: string; args: unknown; by?: string; version?: number }): SentAction {
  return { ...goodAction(bench, 'SS1'), ...differs };
}

async function push(actions: SentAction[]): Promise<PushResult[]> {
  const { teamId, eventId } = bench.team;
  const { cookie } = bench.mechanic;
  const told = await askDoor(house.url, {
    path: '/trpc/work.push',
    cookie,
    body: { teamId, eventId, actions },
  });
  expect([told.status, told.problem]).toEqual([200, null]);
  return (told.data as { results: PushResult[] }).results;
}

async function tracesOf(actionId: string) {
  const [row] = await askOwner<{ log: number; applied: number; stored: number }>(
    house.database,
    `SELECT (SELECT count(*)::int FROM log_entry WHERE action_id = $1) AS log,
       (SELECT count(*)::int FROM applied_action WHERE id = $1) AS applied,
       (SELECT count(*)::int FROM action WHERE id = $1) AS stored`,
    [actionId],
  );
  return row;
}

const TOUCHED = ['action', 'log_entry', 'log_head', 'applied_action', 'stage_run', 'control_time'];

/** The tables that two confirmed stages and a refusal have no business in. */
async function othersHash(): Promise<[string, string][]> {
  const hashes = Object.entries(await hashTables(house.database));
  return hashes.filter(([table]) => !TOUCHED.includes(table));
}
