import {
  ACTION_VERSION,
  type ActionBody,
  applyAll,
  emptyState,
  type LogEntry,
  numberEntries,
} from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { decideLocally } from '../work/decide-locally';
import { MIA, NUTS, nextId, OIL, replicaOf, taskAt } from '../work/fixtures';
import { lastUndoable } from './last-undoable';

const MINUTE = 60_000;
const PHONE = 'phone';

/** A log of actions, each by Mia, `minute` minutes after the epoch. */
function logOf(...said: { body: ActionBody; minute: number; deviceId?: string }[]) {
  let state = emptyState;
  const entries: LogEntry[] = [];
  for (const { body, minute, deviceId = PHONE } of said) {
    const stamp = { deviceId, deviceSeq: 1, deviceTime: minute * MINUTE, version: ACTION_VERSION, by: MIA };
    const outcome = decideLocally(state, { ...body, ...stamp, actionId: nextId() }, replicaOf());
    if (!outcome.ok) throw new Error(outcome.sentence);
    const more = numberEntries(outcome.entries, entries.length + 1, 0);
    entries.push(...more);
    state = applyAll(state, more);
  }
  return { entries, state };
}

const take: ActionBody = { kind: 'takeTask', args: { task: taskAt(NUTS) } };
const startOil: ActionBody = { kind: 'startTask', args: { task: taskAt(OIL) } };

function find(log: ReturnType<typeof logOf>, atMinute: number) {
  return lastUndoable(log.entries, log.state, PHONE, atMinute * MINUTE)?.body;
}

describe('lastUndoable', () => {
  it('is the newest of this phone, for five minutes', () => {
    const log = logOf({ body: take, minute: 10 });
    expect(find(log, 15)).toMatchObject({ kind: 'claimed' });
    expect(find(log, 15.1)).toBeUndefined();
  });

  it('passes over what another phone did', () => {
    const log = logOf({ body: take, minute: 10 }, { body: startOil, minute: 11, deviceId: 'other' });
    expect(find(log, 12)).toMatchObject({ task: taskAt(NUTS) });
  });

  it('names an action that made several entries by its first', () => {
    expect(find(logOf({ body: startOil, minute: 10 }), 11)).toMatchObject({ kind: 'claimed' });
  });

  it('goes on to the one before once the last was taken back', () => {
    const log = logOf({ body: take, minute: 10 }, { body: startOil, minute: 11 });
    const actionId = log.entries.at(-1)?.actionId ?? '';
    const undone = decideLocally(
      log.state,
      {
        kind: 'undo',
        args: { actionId },
        by: MIA,
        actionId: nextId(),
        deviceId: PHONE,
        deviceSeq: 3,
        deviceTime: 11 * MINUTE,
        version: ACTION_VERSION,
      },
      replicaOf(),
    );
    if (!undone.ok) throw new Error(undone.sentence);
    const entries = numberEntries(undone.entries, log.entries.length + 1, 0);
    const after = { entries: [...log.entries, ...entries], state: applyAll(log.state, entries) };
    expect(find(after, 12)).toMatchObject({ task: taskAt(NUTS) });
  });
});
