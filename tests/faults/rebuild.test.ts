import type { PushResult } from '@halfshaft/contract';
import { ACTION_KINDS, type EntryKind, isFact, type LogEntry, rebuild } from '@halfshaft/worklog';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { foundTeamAtEvent, joinTeam, makeAction, type TeamAtEvent, taskRef } from '../support/event';
import { type Caller, type House, openHouse } from '../support/house';
import { chanceFrom } from './chance';
import { readProjection, rowsOf } from './projection';
import { randomWork, type WorkAction, type WorkPlace } from './random-work';
import { askOwner } from './table-hashes';

const SEEDS = [3, 17, 42];
const STEPS = 160;
const ALL_ENTRY_KINDS: EntryKind[] = [
  ...(['claimed', 'released', 'started', 'done', 'carriedOver', 'dropped'] as const),
  ...([
    'reopened',
    'signed',
    'snagRaised',
    'stageConfirmed',
    'timeRecorded',
    'factRecorded',
    'undone',
  ] as const),
];

interface Bay {
  team: TeamAtEvent;
  callers: Caller[];
  place: WorkPlace;
}

let house: House;

beforeAll(async () => {
  house = await openHouse();
});

afterAll(() => house?.close());

describe('the log is the truth', () => {
  const seen = { kinds: new Set<string>(), entries: new Set<string>() };

  it.each(SEEDS)('rebuilds every table of the projection, row for row (seed %i)', async (seed) => {
    const bay = await openBay(`Bay ${seed}`);
    const work = randomWork(bay.place, seed, STEPS, 'first');
    const results = await pushInRuns(bay, work, 1);
    const log = await expectConsistent(bay);
    expect(results.flatMap((result) => result.seqs)).toEqual(log.map((entry) => entry.seq));
    results.forEach((result, index) => {
      if (result.status === 'accepted') seen.kinds.add(work[index]?.kind ?? '');
    });
    for (const entry of log) seen.entries.add(entry.body.kind);

    // The same day for another team, a whole run of one device in each push: the answers are the same.
    const other = await openBay(`Other bay ${seed}`);
    const again = await pushInRuns(other, randomWork(other.place, seed, STEPS, 'second'), STEPS);
    expect(again.map(outcomeOf)).toEqual(results.map(outcomeOf));
    await expectConsistent(other);
  });

  it('has been asked everything: every kind of action was taken, every kind of entry written', () => {
    expect([...seen.kinds].sort()).toEqual([...ACTION_KINDS].sort());
    expect([...seen.entries].sort()).toEqual([...ALL_ENTRY_KINDS].sort());
  });

  it.each(SEEDS)('stays consistent when devices hand in in another order (seed %i)', async (seed) => {
    const bay = await openBay(`Late bay ${seed}`);
    const work = randomWork(bay.place, seed, STEPS, 'late');
    const arrived = inOtherOrder(work, seed);
    expect(arrived.map((action) => action.actionId)).not.toEqual(work.map((action) => action.actionId));
    const results = await pushInRuns(bay, arrived, 7);
    const log = await expectConsistent(bay);
    expectFactsKept(arrived, results);
    for (const device of new Set(log.map((entry) => entry.deviceId))) {
      const times = log.filter((entry) => entry.deviceId === device).map((entry) => entry.deviceTime);
      expect(times).toEqual([...times].sort((one, later) => one - later));
    }
  });
});

describe('after a revocation', () => {
  it('what was made before still counts and is flagged; of what was made after only facts are kept', async () => {
    const bay = await openBay('Left bay');
    const { team } = bay;
    const { teamId, eventId, entryId, cardIds } = team;
    const leaver = await joinTeam(house, team, 'Leaver');
    const people = await team.caller.people.list({ teamId });
    const membershipId = people.find((person) => person.personId === leaver.personId)?.membership
      ?.membershipId;
    const leftAt = 1_790_000_000_000;
    house.clock.set(leftAt);
    await team.caller.people.revoke({ teamId, membershipId: membershipId ?? '' });

    const [one, two, three, four] = cardIds.map((cardId) => taskRef(entryId, cardId));
    if (!one || !two || !three || !four) throw new Error('The fixture car has too few cards.');
    const before = { deviceTime: leftAt - 60_000 };
    const after = { deviceTime: leftAt + 60_000 };
    const close = { findings: [], readings: [] };
    const { results } = await leaver.caller.work.push({
      teamId,
      eventId,
      actions: [
        makeAction({ kind: 'takeTask', args: { task: one } }, leaver.personId, before),
        makeAction({ kind: 'closeTask', args: { task: two, ...close } }, leaver.personId, before),
        makeAction({ kind: 'takeTask', args: { task: three } }, leaver.personId, after),
        makeAction({ kind: 'closeTask', args: { task: four, ...close } }, leaver.personId, after),
      ],
    });
    expect(results.map(outcomeOf)).toEqual([
      ['accepted', null, [1]],
      ['accepted', null, [2]],
      ['refused', 'revoked', []],
      ['accepted', null, [3]],
    ]);
    for (const index of [0, 1, 3]) {
      expect(results[index]?.sentence).toContain('came in after the person had left the team');
    }
    expect(results[2]?.sentence).toContain('no longer in this team');
    const log = await expectConsistent(bay);
    expect(log.every((entry) => entry.flags.some((flag) => flag.code === 'afterRevocation'))).toBe(true);
    // Reading is over for them, whatever they still hand in.
    await expect(leaver.caller.work.pull({ teamId, eventId, since: 0 })).rejects.toThrow('does not exist');
  });
});

async function openBay(name: string): Promise<Bay> {
  const team = await foundTeamAtEvent(house, name);
  const mia = await joinTeam(house, team, `${name} Mia`);
  const kai = await joinTeam(house, team, `${name} Kai`);
  const cards = await team.caller.card.list({ teamId: team.teamId, carId: team.carId });
  const signed = cards.filter((card) => card.needsSignature).map((card) => card.id);
  const others = cards.filter((card) => !card.needsSignature).map((card) => card.id);
  const cardIds = [...signed.slice(0, 2), ...others.slice(0, 1)];
  const workers = [team, mia, kai].map(({ personId }) => ({ personId }));
  return {
    team,
    callers: [team.caller, mia.caller, kai.caller],
    place: { entryId: team.entryId, cardIds, workers },
  };
}

/** Pushes in this order; neighbours from one device go together, `most` at a time and jumbled: the server sorts them. */
async function pushInRuns({ team, callers }: Bay, work: WorkAction[], most: number): Promise<PushResult[]> {
  const { teamId, eventId } = team;
  const answers = new Map<string, PushResult>();
  for (let from = 0; from < work.length; ) {
    const worker = work[from]?.worker ?? 0;
    let to = from;
    while (to < work.length && to - from < most && work[to]?.worker === worker) to += 1;
    const actions = chanceFrom(from)
      .shuffled(work.slice(from, to))
      .map(({ worker: _, ...action }) => action);
    const { results } = await callerOf(callers, worker).work.push({ teamId, eventId, actions });
    for (const result of results) answers.set(result.actionId, result);
    from = to;
  }
  return work.flatMap((action) => answers.get(action.actionId) ?? []);
}

function callerOf(callers: Caller[], worker: number): Caller {
  const caller = callers[worker];
  if (!caller) throw new Error(`There is no worker ${worker}.`);
  return caller;
}

/** Each device keeps its own order; which of them comes first is drawn anew. */
function inOtherOrder(work: WorkAction[], seed: number): WorkAction[] {
  const chance = chanceFrom(seed + 1000);
  const queues = [0, 1, 2].map((worker) => work.filter((action) => action.worker === worker));
  const arrived: WorkAction[] = [];
  while (queues.some((queue) => queue.length > 0)) {
    const queue = chance.pick(queues.filter((each) => each.length > 0));
    arrived.push(...queue.splice(0, 1 + chance.whole(12)));
  }
  return arrived;
}

/** A fact is never refused, except about a snag that nobody had raised by then. */
function expectFactsKept(arrived: WorkAction[], results: PushResult[]): void {
  const refusedFacts = arrived.filter((action, index) => {
    if (!isFact(action.kind)) return false;
    return results[index]?.status === 'refused' && results[index]?.code !== 'unknownTask';
  });
  expect(results).toHaveLength(arrived.length);
  expect(refusedFacts).toEqual([]);
}

function outcomeOf({ status, code, seqs }: PushResult) {
  return [status, code, seqs];
}

/** The log as pulled has no gap, and what it rebuilds is what stands in the tables. */
async function expectConsistent({ team }: Bay): Promise<LogEntry[]> {
  const { caller, teamId, eventId } = team;
  const { entries, lastSeq } = await caller.work.pull({ teamId, eventId, since: 0 });
  expect(entries.map((entry) => entry.seq)).toEqual(Array.from({ length: lastSeq }, (_, index) => index + 1));
  const rebuilt = rebuild(entries);
  expect(await readProjection(house.database, eventId)).toEqual(rowsOf(rebuilt));
  await expectColumnsAgree(eventId);
  return entries;
}

/** Columns that queries use say the same as the body. */
async function expectColumnsAgree(eventId: string): Promise<void> {
  const wrong = await askOwner(
    house.database,
    `SELECT id FROM task WHERE event_id = $1 AND (
       state <> body->>'state' OR holder::text IS DISTINCT FROM body->>'holder' OR changed_seq <> (body->>'changedSeq')::int
       OR entry_id::text <> body->'ref'->>'entryId' OR service_id <> body->'ref'->>'serviceId'
       OR card_id::text IS DISTINCT FROM body->'ref'->'source'->>'cardId'
       OR snag_id::text IS DISTINCT FROM body->'ref'->'source'->>'snagId')`,
    [eventId],
  );
  expect(wrong).toEqual([]);
}
