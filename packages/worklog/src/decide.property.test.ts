import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyAll } from './apply';
import { changesOf } from './changes-of';
import { decide } from './decide';
import type { LogEntry } from './entry';
import { isFact } from './is-fact';
import { numberEntries } from './number-entries';
import { rebuild } from './rebuild';
import type { Outcome } from './refusal';
import { scopeOf } from './scope-of';
import { sliceOf } from './slice-of';
import { stageKeyOf } from './stage-key-of';
import type { WorkState } from './state';
import { taskIdOf } from './task-id-of';
import { taskOf } from './task-of';
import { actionOf, openBay } from './testing/bay';
import { randomSteps, type Step } from './testing/fixtures';
import { timeKeyOf } from './time-key-of';

interface Happening extends Step {
  actionId: string;
  before: WorkState;
  after: WorkState;
  outcome: Outcome;
}

function play(steps: readonly Step[]): { happenings: Happening[]; log: LogEntry[]; state: WorkState } {
  const bay = openBay();
  const happenings = steps.map((step, index) => {
    const before = bay.state;
    const outcome = bay.act(step.body, step.doer, step.rules);
    return { ...step, actionId: `a${index + 1}`, before, after: bay.state, outcome };
  });
  return { happenings, log: bay.log, state: bay.state };
}

const runs = { numRuns: 300 };
const forEveryBay = (hold: (played: ReturnType<typeof play>) => void) =>
  fc.assert(
    fc.property(randomSteps, (steps) => hold(play(steps))),
    runs,
  );

const undoneIds = (log: readonly LogEntry[]) =>
  new Set(log.flatMap(({ body }) => (body.kind === 'undone' ? [body.actionId] : [])));

describe('random work of several people in one bay', () => {
  it('reaches every kind of entry, and every refusal that good versions can meet', () => {
    const played = fc.sample(randomSteps, { seed: 7, numRuns: 300 }).map(play);
    const outcomes = played.flatMap((one) => one.happenings.map((happening) => happening.outcome));
    const refusals = outcomes.flatMap((one) => (one.status === 'refused' ? [one.refusal.code] : []));
    const entries = played.flatMap((one) => one.log.map((entry) => entry.body.kind));
    expect([...new Set(entries)].sort()).toEqual(
      [
        'carriedOver',
        'claimed',
        'done',
        'dropped',
        'factRecorded',
        'released',
        'reopened',
        'signed',
        'snagRaised',
        'stageConfirmed',
        'started',
        'timeRecorded',
        'undone',
      ].sort(),
    );
    expect([...new Set(refusals)].sort()).toEqual(
      [
        'alreadyDone',
        'alreadySigned',
        'alreadyYours',
        'changedSince',
        'heldByAnother',
        'needsAnotherPerson',
        'notAllowed',
        'notAwaitingSignature',
        'notClosed',
        'notHeld',
        'notOpen',
        'nothingToUndo',
        'reasonMissing',
        'revoked',
        'serviceCancelled',
        'unknownSnag',
        'unknownTask',
      ].sort(),
    );
  });

  it('never throws, changes nothing it was given, and accepts with at least one entry', () => {
    // The bay freezes every state, action and outcome all the way down: a mutation throws.
    forEveryBay(({ happenings }) => {
      for (const { outcome } of happenings) {
        if (outcome.status === 'accepted') expect(outcome.entries.length).toBeGreaterThan(0);
      }
    });
  });

  it('keeps every fact', () => {
    forEveryBay(({ happenings }) => {
      for (const { body, outcome } of happenings) {
        if (isFact(body.kind)) expect(outcome.status).toBe('accepted');
      }
    });
  });

  it('holds the findings and readings of every closing, and the words of every snag, not taken back', () => {
    forEveryBay(({ happenings, log, state }) => {
      const undone = undoneIds(log);
      for (const { body, actionId } of happenings) {
        if (undone.has(actionId)) continue;
        if (body.kind === 'closeTask') {
          const task = state.tasks.get(taskIdOf(body.args.task));
          expect(task?.findings).toEqual(expect.arrayContaining(body.args.findings));
          expect(task?.readings).toEqual(expect.arrayContaining(body.args.readings));
        }
        if (body.kind === 'raiseSnag') {
          expect(state.snags.get(body.args.snagId)?.words.split('\n')).toContain(body.args.words);
        }
        if (body.kind === 'recordFact') {
          // The row shows the first of its id; every one stands in the log.
          expect(state.facts.get(body.args.factId)?.withdrawn).toBe(false);
          expect(log).toContainEqual(
            expect.objectContaining({ actionId, body: { ...body.args, kind: 'factRecorded' } }),
          );
        }
      }
    });
  });

  it('gives a task to nobody while someone has it', () => {
    forEveryBay(({ log }) => {
      const holders = new Map<string, string>();
      for (const { body, by } of log) {
        if (body.kind === 'undone') {
          for (const { id, holder } of body.tasks) {
            if (holder === null) holders.delete(id);
            else holders.set(id, holder);
          }
        } else if (body.kind === 'claimed') {
          expect(holders.has(taskIdOf(body.task))).toBe(false);
          holders.set(taskIdOf(body.task), by);
        } else if (body.kind === 'started') {
          expect(holders.get(taskIdOf(body.task))).toBe(by);
        } else if ('task' in body && body.kind !== 'signed') {
          holders.delete(taskIdOf(body.task));
        }
      }
    });
  });

  it('agrees within each task: held when claimed or under way, done by someone when done', () => {
    forEveryBay(({ happenings }) => {
      for (const { after } of happenings) {
        for (const task of after.tasks.values()) {
          expect(task.holder !== null).toBe(task.state === 'claimed' || task.state === 'underWay');
          expect(task.doneBy !== null).toBe(task.state === 'done');
        }
      }
    });
  });

  it('shows a signature only of someone who had no hand in the work', () => {
    forEveryBay(({ happenings }) => {
      for (const { after } of happenings) {
        for (const { signedBy, doneBy, alsoDoneBy, state } of after.tasks.values()) {
          if (signedBy === null) continue;
          expect(state).toBe('done');
          expect([doneBy, ...alsoDoneBy]).not.toContain(signedBy);
        }
      }
    });
  });

  it('gives the same state when rebuilt from the log, in whatever order the entries are read', () => {
    forEveryBay(({ log, state }) => {
      expect(rebuild(log)).toEqual(state);
      expect(rebuild([...log].reverse())).toEqual(state);
    });
  });

  it('decides on the slice as on the whole, and changes the same rows', () => {
    forEveryBay(({ happenings }) => {
      for (const { body, doer, rules, actionId, before, outcome } of happenings) {
        const action = actionOf(body, doer.personId, actionId);
        const record = body.kind === 'undo' ? (before.actions.get(body.args.actionId) ?? null) : null;
        const slice = sliceOf(before, scopeOf(action, rules, record));
        expect(decide(slice, action, doer, rules)).toEqual(outcome);
        if (outcome.status === 'refused') continue;
        const entries = numberEntries(outcome.entries, 1_000, null);
        const changed = changesOf(slice, applyAll(slice, entries));
        expect(inOrder(changed)).toEqual(inOrder(changesOf(before, applyAll(before, entries))));
      }
    });
  });

  it('puts back exactly what stood before when an action is taken back', () => {
    forEveryBay(({ happenings }) => {
      for (const { body, outcome, after } of happenings) {
        if (body.kind !== 'undo' || outcome.status === 'refused') continue;
        const undone = happenings.find((one) => one.actionId === body.args.actionId);
        if (undone?.outcome.status !== 'accepted')
          throw new Error('An undo was accepted of what was refused.');
        const touched = changesOf(undone.before, undone.after);
        for (const { id, ref } of touched.tasks) {
          expect(unstamped(after.tasks.get(id))).toEqual(unstamped(taskOf(undone.before, ref, undone.rules)));
        }
        if (undone.body.kind === 'raiseSnag') {
          const [raised, earlier] = [undone.after, undone.before].map((state) => state.snags.get('leak'));
          const expected = earlier ?? { ...raised, withdrawn: true };
          expect(unstamped(after.snags.get('leak'))).toEqual(unstamped(expected));
        }
        for (const fact of touched.facts) {
          const earlier = undone.before.facts.get(fact.factId) ?? { ...fact, withdrawn: true };
          expect(unstamped(after.facts.get(fact.factId))).toEqual(unstamped(earlier));
        }
        for (const stage of touched.stages) {
          const key = stageKeyOf(stage);
          expect(unstamped(after.stages.get(key))).toEqual(unstamped(undone.before.stages.get(key)));
        }
        for (const time of touched.times) {
          const key = timeKeyOf(time);
          expect(unstamped(after.times.get(key))).toEqual(unstamped(undone.before.times.get(key)));
        }
      }
    });
  });
});

/** All but who changed it when. */
function unstamped(row: object | undefined): object | undefined {
  return row && { ...row, changedSeq: null, changedBy: null };
}

function inOrder(changes: ReturnType<typeof changesOf>) {
  const text = (rows: readonly unknown[]) => rows.map((row) => JSON.stringify(row)).sort();
  return Object.fromEntries(Object.entries(changes).map(([name, rows]) => [name, text(rows)]));
}
