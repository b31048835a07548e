import { type PushResult, pushOutput } from '@halfshaft/contract';
import { taskIdOf } from '@halfshaft/worklog';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { foundTeamAtEvent, makeAction, type TeamAtEvent, taskRef } from '../support/event';
import { type House, openHouse } from '../support/house';
import { chanceFrom } from './chance';
import { postAllAtOnce } from './hold-back';
import { type ApiProcess, startApiProcess } from './start-process';
import { askOwner, hashTables } from './table-hashes';

const PEOPLE = 200;
const TASKS = 50;
const SERVICES = ['A', 'B', 'C', 'D', 'E'];

interface Racer {
  personId: string;
  name: string;
  cookie: string;
}

interface Race {
  team: TeamAtEvent;
  racers: Racer[];
  requests: { cookie: string; body: string }[];
}

let house: House;
let second: ApiProcess;

beforeAll(async () => {
  house = await openHouse();
  second = await startApiProcess(house.database);
});

afterAll(async () => {
  await second?.stop();
  await house?.close();
});

describe.each([
  { where: 'one process', addresses: () => [house.url] },
  { where: 'two processes on one database', addresses: () => [house.url, second.url] },
])('200 people ask for the same 50 jobs at once, over $where', ({ where, addresses }) => {
  let race: Race;
  let first: PushResult[];

  beforeAll(async () => {
    race = await prepareRace(where);
    const startedAt = performance.now();
    first = await run(race, addresses());
    report(`race over ${where}`, startedAt, PEOPLE * TASKS);
  });

  it('gives each job to one person and tells everyone else who has it', async () => {
    const accepted = first.filter((result) => result.status === 'accepted');
    const refused = first.filter((result) => result.status === 'refused');
    expect([accepted.length, refused.length]).toEqual([TASKS, PEOPLE * TASKS - TASKS]);

    const { eventId } = race.team;
    const log = await askOwner<{ seq: number; kind: string }>(
      house.database,
      `SELECT seq, kind FROM log_entry WHERE event_id = $1 ORDER BY seq`,
      [eventId],
    );
    expect(log.map((entry) => entry.seq)).toEqual(Array.from({ length: TASKS }, (_, index) => index + 1));
    expect(new Set(log.map((entry) => entry.kind))).toEqual(new Set(['claimed']));
    expect(accepted.flatMap((result) => result.seqs).sort((one, other) => one - other)).toEqual(
      log.map((entry) => entry.seq),
    );

    const tasks = await askOwner<{ id: string; holder: string; state: string }>(
      house.database,
      'SELECT id, holder, state FROM task WHERE event_id = $1 ORDER BY id',
      [eventId],
    );
    expect(tasks.map((task) => task.id)).toEqual(taskIdsOf(race.team).sort());
    expect(tasks.every((task) => task.state === 'claimed')).toBe(true);
    // Not one who came first with everything: people truly ran against each other.
    expect(new Set(tasks.map((task) => task.holder)).size).toBeGreaterThan(1);
    expectHolderNamed(race, refused, new Map(tasks.map((task) => [task.id, task.holder])));
  });

  it('answers the same again when every request is repeated, and changes nothing', async () => {
    const before = await hashTables(house.database);
    const startedAt = performance.now();
    const again = await run(race, addresses().reverse());
    report(`repeat over ${where}`, startedAt, PEOPLE * TASKS);
    expect(again).toEqual(first.map((result) => ({ ...result, repeated: true })));
    expect(await hashTables(house.database)).toEqual(before);
  });
});

async function prepareRace(where: string): Promise<Race> {
  const team = await foundTeamAtEvent(house, `Race over ${where}`);
  const { token } = await team.caller.invite.create({
    teamId: team.teamId,
    role: 'mechanic',
    eventId: team.eventId,
    days: 2,
  });
  const racers: Racer[] = [];
  for (let index = 0; index < PEOPLE; index += 1) {
    const name = `Helper ${String(index).padStart(3, '0')}`;
    const { userId, cookie } = await house.signInAnonymously();
    const { personId } = await house.callAs(userId).invite.accept({ token, name });
    racers.push({ personId, name, cookie });
  }
  return { team, racers, requests: racers.map((racer, index) => requestOf(team, racer, index)) };
}

function requestOf(team: TeamAtEvent, { personId, cookie }: Racer, index: number) {
  const { teamId, eventId } = team;
  const actions = chanceFrom(index + 1)
    .shuffled(tasksOf(team))
    .map((task) =>
      makeAction({ kind: 'takeTask', args: { task } }, personId, { deviceId: `phone ${index}` }),
    );
  return { cookie, body: JSON.stringify({ teamId, eventId, actions }) };
}

function tasksOf({ entryId, cardIds }: TeamAtEvent) {
  return SERVICES.flatMap((serviceId) => cardIds.map((cardId) => taskRef(entryId, cardId, serviceId))).slice(
    0,
    TASKS,
  );
}

function taskIdsOf(team: TeamAtEvent): string[] {
  return tasksOf(team).map(taskIdOf);
}

/** The results of all requests, person by person; requests go to the addresses in turn. */
async function run({ requests }: Race, addresses: string[]): Promise<PushResult[]> {
  const answers = await postAllAtOnce(
    requests.map((request, index) => ({
      ...request,
      url: `${addresses[index % addresses.length]}/trpc/work.push`,
    })),
  );
  return answers.flatMap(({ status, body }) => {
    if (status !== 200) throw new Error(`A push was answered with ${status}: ${body}`);
    return pushOutput.parse(JSON.parse(body).result.data).results;
  });
}

function expectHolderNamed({ racers, requests }: Race, refused: PushResult[], holders: Map<string, string>) {
  const nameOf = new Map(racers.map((racer) => [racer.personId, racer.name]));
  const taskOf = new Map<string, string>();
  for (const { body } of requests) {
    for (const { actionId, args } of JSON.parse(body).actions) taskOf.set(actionId, taskIdOf(args.task));
  }
  const wrong = refused.filter(({ actionId, code, personId, sentence }) => {
    const holder = holders.get(taskOf.get(actionId) ?? '') ?? '';
    return code !== 'heldByAnother' || personId !== holder || !sentence.includes(nameOf.get(holder) ?? '?');
  });
  expect(wrong).toEqual([]);
}

function report(what: string, startedAt: number, actions: number): void {
  const seconds = (performance.now() - startedAt) / 1000;
  console.log(
    `${what}: ${actions} actions in ${seconds.toFixed(1)} s, ${(actions / seconds).toFixed(0)} a second`,
  );
}
