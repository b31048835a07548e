import type { EntryReplica } from '@halfshaft/contract';
import { starterCards } from '@halfshaft/lifing';
import {
  ACTION_VERSION,
  type ActionBody,
  applyAll,
  decide,
  emptyState,
  type Finding,
  type LogEntry,
  numberEntries,
  type WorkState,
} from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { endOfEvent, partsNeeded, workshopItems } from './open-items';
import { notTakenYet } from './snag-words';

const cards = starterCards('front', 'gravel');
const [first, second] = cards;
if (!first || !second) throw new Error('The starter cards are missing.');
const entry: EntryReplica = {
  entryId: 'e',
  car: { carId: 'c', name: 'Heron', drive: 'front', surface: 'gravel' },
  carNumber: '7',
  startPosition: 7,
  people: 2,
  cards,
  positionsBySection: {},
  carried: {},
};
const rules = { needsSignature: false, requiredReadings: [], reopens: [], serviceStands: true };
const refOf = (cardId: string, serviceId = 'A') =>
  ({ entryId: 'e', serviceId, source: { kind: 'card', cardId } }) as const;

/** The log after these actions by one person. */
function logOf(...bodies: ActionBody[]): { state: WorkState; entries: LogEntry[] } {
  let state = emptyState;
  const entries: LogEntry[] = [];
  for (const [index, body] of bodies.entries()) {
    const stamp = {
      actionId: `a${index + 1}`,
      deviceId: 'd',
      deviceSeq: index + 1,
      deviceTime: 1000 * index,
    };
    const action = { ...body, ...stamp, version: ACTION_VERSION, by: 'mia' };
    const doer = { personId: 'mia', enteredBy: 'mia', mayManage: false, revokedAt: null };
    const outcome = decide(state, action, doer, 'task' in body.args ? rules : null);
    if (outcome.status === 'refused') throw new Error(outcome.refusal.code);
    const numbered = numberEntries(outcome.entries, entries.length + 1, 0);
    entries.push(...numbered);
    state = applyAll(state, numbered);
  }
  return { state, entries };
}

function close(
  cardId: string,
  grade: 'ok' | 'needsWork' | 'temporaryRepair',
  serviceId = 'A',
  more: Pick<Finding, 'newPart'> = {},
): ActionBody {
  const finding = { lookId: null, position: null, grade, words: 'split hose', ...more };
  return { kind: 'closeTask', args: { task: refOf(cardId, serviceId), findings: [finding], readings: [] } };
}
const endOf = (...bodies: ActionBody[]) => {
  const { state, entries } = logOf(...bodies);
  return endOfEvent(state, entries, entry);
};

describe('endOfEvent', () => {
  it('tells what was found, by whom and where, but nothing that was OK or taken back', () => {
    const end = endOf(close(first.id, 'needsWork'), close(second.id, 'ok'));
    expect(end.found).toMatchObject([{ by: 'mia', serviceId: 'A', grade: 'needsWork' }]);
    expect(endOf(close(first.id, 'needsWork'), { kind: 'undo', args: { actionId: 'a1' } }).found).toEqual([]);
  });

  it('lets a temporary repair stand after a later look', () => {
    const end = endOf(close(first.id, 'temporaryRepair'), close(first.id, 'ok', 'B'));
    expect(end.temporary).toHaveLength(1);
  });

  it('forgets what was carried over once it is done at a later service', () => {
    const carry: ActionBody = { kind: 'carryOverTask', args: { task: refOf(first.id), reason: 'no time' } };
    expect(endOf(carry).carriedOver).toMatchObject([{ words: 'no time' }]);
    expect(endOf(carry, close(first.id, 'ok', 'B')).carriedOver).toEqual([]);
  });
});

describe('partsNeeded', () => {
  it('are for temporary repairs that stand and for what needs work, not for what was OK', () => {
    const end = endOf(
      close(first.id, 'needsWork'),
      close(second.id, 'temporaryRepair'),
      close(first.id, 'ok', 'B'),
    );
    expect(partsNeeded(end).map(({ grade }) => grade)).toEqual(['temporaryRepair', 'needsWork']);
  });

  it('are not for what was changed when it was found: the workshop has nothing left to do', () => {
    const end = endOf(close(first.id, 'needsWork', 'A', { newPart: true }), close(second.id, 'needsWork'));
    expect(end.found).toHaveLength(2);
    expect(partsNeeded(end).map(({ taskId }) => taskId)).toEqual([end.found[1]?.taskId]);
    expect(workshopItems(end)).toHaveLength(1);
  });
});

describe('to the next event', () => {
  it('takes each thing once, with the event it comes from', () => {
    const items = workshopItems(endOf(close(first.id, 'temporaryRepair'), close(second.id, 'needsWork')));
    const taken = notTakenYet(items, 'Larchwater Stages', []);
    expect(taken).toHaveLength(2);
    expect(taken[0]?.words).toMatch(/^From Larchwater Stages: .*split hose/);
    const there = taken.map(({ words }) => ({ words, withdrawn: false }));
    expect(notTakenYet(items, 'Larchwater Stages', there)).toEqual([]);
  });
});
