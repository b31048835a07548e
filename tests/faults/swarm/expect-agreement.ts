import type { PushResult } from '@halfshaft/contract';
import type { TestDatabase } from '@halfshaft/store/embedded';
import { type ActionKind, isFact, type LogEntry, rebuild } from '@halfshaft/worklog';
import { expect } from 'vitest';
import { readProjection, rowsOf } from '../projection';
import { askOwner } from '../table-hashes';
import type { Phone } from './phone';
import type { Made, World } from './world';

interface Answered {
  id: string;
  outcome: PushResult;
}

/** Why alone a fact may be refused: what it speaks of is not there, or is gone with a version of the itinerary. */
const NOT_THERE = ['unknownTask', 'unknownStage', 'unknownControl'];

/** What must hold once all is quiet, whatever happened before. `kept`: what a phone had in its database. */
export async function expectAgreement(world: World, database: TestDatabase, kept: ReadonlySet<string>) {
  const { team, phones } = world.parts;
  const log = await readLog(world);
  expect(log.map(({ seq }) => seq)).toEqual(log.map((_, at) => at + 1));
  const truth = rowsOf(rebuild(log));
  expect(await readProjection(database, team.eventId), 'the tables of the server').toEqual(truth);
  for (const phone of phones) await expectPhone(phone, log.length, truth);
  const answers = await readAnswers(database, team.eventId);
  const made = new Map(world.made.map((each) => [each.actionId, each]));
  for (const entry of log) expectOwn(entry, made.get(entry.actionId));
  for (const each of world.made) {
    const answer = answers.get(each.actionId);
    if (answer) await expectTold(each, answer, log);
    else expect(kept.has(each.actionId), 'an action that a phone kept never came').toBe(false);
  }
  const refused = [...answers.values()].filter(({ outcome }) => outcome.status === 'refused').length;
  return { made: world.made.length, refused, entries: log.length };
}

async function expectPhone(phone: Phone, lastSeq: number, truth: object): Promise<void> {
  expect((await phone.box.readAll()).waiting, 'left on a phone').toEqual([]);
  for (const { store } of phone.tabs) {
    const { state, confirmedSeq, waiting, unkept, problem } = store.getSnapshot();
    expect({ confirmedSeq, waiting, unkept, problem }).toEqual({
      ...{ confirmedSeq: lastSeq, waiting: 0, unkept: 0, problem: null },
    });
    expect(rowsOf(state), 'what a phone shows').toEqual(truth);
  }
}

/** Nothing is in the log that nobody did, and what was done stands there with its own person, typist and time. */
function expectOwn({ enteredBy, deviceTime }: LogEntry, made: Made | undefined): void {
  expect({ enteredBy, deviceTime }).toEqual({ enteredBy: made?.owner, deviceTime: made?.deviceTime });
}

/** Once in the log, with nothing said against it; or not there, and its author is told on the phone it was made on. */
async function expectTold(
  { actionId, kind, owner, phone }: Made,
  { outcome }: Answered,
  log: readonly LogEntry[],
) {
  const seqs = log.filter((entry) => entry.actionId === actionId).map(({ seq }) => seq);
  expect(seqs).toEqual(outcome.seqs);
  const { notices } = await phone.box.readAll();
  const refused = notices.find(({ id, kind }) => id === actionId && kind === 'refused');
  if (outcome.status === 'accepted') {
    expect(seqs.length).toBeGreaterThan(0);
    expect(refused, 'an accepted action that its author was told to be refused').toBeUndefined();
  } else {
    expect(refused).toMatchObject({ owner, sentence: outcome.sentence });
    if (isFact(kind as ActionKind)) expect(NOT_THERE).toContain(outcome.code);
  }
}

async function readLog({ parts: { team } }: World): Promise<LogEntry[]> {
  const { teamId, eventId, caller } = team;
  const { entries, lastSeq } = await caller.work.pull({ teamId, eventId, since: 0 });
  // Far fewer than one page.
  expect(entries.length).toBe(lastSeq);
  return entries;
}

async function readAnswers(database: TestDatabase, eventId: string): Promise<Map<string, Answered>> {
  const rows = await askOwner<Answered>(
    database,
    'SELECT id::text, outcome FROM action WHERE event_id = $1',
    [eventId],
  );
  return new Map(rows.map((row) => [row.id, row]));
}
