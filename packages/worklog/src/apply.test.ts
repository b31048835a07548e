import { describe, expect, it } from 'vitest';
import { apply, applyAll } from './apply';
import { changesOf } from './changes-of';
import type { EntryBody, LogEntry } from './entry';
import { rebuild } from './rebuild';
import { emptyState } from './state';
import { taskIdOf } from './task-id-of';
import { taskOf } from './task-of';
import { close, FACT, FINISH, LEAK, NUTS, openBay, rulesOf, SNAG, STAGE, START, TIME } from './testing/bay';
import { KAI, MIA } from './testing/people';

function entryOf(body: EntryBody, seq = 1): LogEntry {
  const stamp = {
    actionId: `a${seq}`,
    by: MIA,
    enteredBy: MIA,
    deviceId: 'd',
    deviceTime: 1,
    serverTime: null,
  };
  return { ...stamp, seq, flags: [], body };
}

describe('apply', () => {
  it('leaves the state it was given alone', () => {
    const claimed = entryOf({ kind: 'claimed', task: NUTS, needsSignature: true });
    const after = apply(emptyState, claimed);
    expect(after.tasks.get(taskIdOf(NUTS))).toMatchObject({
      holder: MIA,
      needsSignature: true,
      changedSeq: 1,
    });
    expect(emptyState.tasks.size).toBe(0);
  });

  it('gives the same one by one, all at once, and rebuilt', () => {
    const bay = openBay();
    bay.act(SNAG, MIA);
    bay.act(close(LEAK), KAI);
    bay.act(STAGE, KAI);
    bay.act(TIME, KAI);
    bay.act(FACT, KAI);
    expect(bay.log.reduce(apply, emptyState)).toEqual(bay.state);
    expect(applyAll(emptyState, bay.log)).toEqual(bay.state);
    expect(rebuild(bay.log)).toEqual(bay.state);
  });

  it('survives entries that nothing stands behind, such as on a phone that knows only a part', () => {
    const entries = [
      entryOf({ kind: 'released', task: LEAK, heldBy: KAI }, 1),
      entryOf({ kind: 'signed', task: NUTS }, 2),
      entryOf({ kind: 'undone', actionId: 'z', doneBy: KAI, kinds: [], tasks: [], snags: [], stages: [] }, 3),
    ];
    expect(() => applyAll(emptyState, entries)).not.toThrow();
  });

  it('takes an id such as __proto__ for an id', () => {
    const { kind: _, ...said } = { ...SNAG, ...SNAG.args, snagId: '__proto__' };
    const { args: _args, ...body } = said;
    const after = apply(emptyState, entryOf({ kind: 'snagRaised', ...body }));
    expect(after.snags.get('__proto__')?.words).toBe('oil on the hub');
  });
});

describe('taskOf', () => {
  it('implies an open task until someone touches it', () => {
    const implied = taskOf(emptyState, NUTS, rulesOf({ needsSignature: true }));
    const open = {
      state: 'open',
      holder: null,
      round: 1,
      changedSeq: 0,
      changedBy: null,
      needsSignature: true,
    };
    expect(implied).toMatchObject({ id: taskIdOf(NUTS), ref: NUTS, ...open });
    const bay = openBay();
    bay.act(close(NUTS), MIA);
    expect(taskOf(bay.state, NUTS, null)).toBe(bay.state.tasks.get(taskIdOf(NUTS)));
  });
});

describe('changesOf', () => {
  it('names the rows that changed, and no others', () => {
    const bay = openBay();
    bay.act(SNAG, MIA);
    bay.act(close(NUTS), MIA);
    const before = bay.state;
    bay.act(close(LEAK), KAI);
    const changes = changesOf(before, bay.state);
    expect(changes.tasks.map((task) => task.id)).toEqual([taskIdOf(LEAK)]);
    expect(changes.snags).toMatchObject([{ id: 'leak', changedSeq: 3, changedBy: KAI }]);
    expect(changes.actions.map((record) => record.actionId)).toEqual(['a3']);
    expect(changes.stages).toEqual([]);
  });

  it('names a stage of which nothing is said any more', () => {
    const bay = openBay();
    bay.act(STAGE, MIA);
    const before = bay.state;
    bay.act({ kind: 'undo', args: { actionId: 'a1' } }, MIA);
    expect(changesOf(before, bay.state)).toMatchObject({
      stages: [],
      removedStages: [{ entryId: 'car7', stageId: 'SS3' }],
    });
  });

  it('names a time that was recorded, and a control without one any more', () => {
    const bay = openBay();
    const before = bay.state;
    bay.act(TIME, MIA);
    const recorded = bay.state;
    expect(changesOf(before, recorded).times).toMatchObject([{ controlId: 'TC4A', writtenAt: 47_160 }]);
    bay.act({ kind: 'undo', args: { actionId: 'a1' } }, MIA);
    expect(changesOf(recorded, bay.state)).toMatchObject({
      times: [],
      removedTimes: [{ entryId: 'car7', controlId: 'TC4A' }],
    });
  });

  it('names the finish of a stage, not its start, when the finish is taken back', () => {
    const bay = openBay();
    bay.act(START, MIA);
    bay.act(FINISH, MIA);
    const before = bay.state;
    bay.act({ kind: 'undo', args: { actionId: 'a2' } }, MIA);
    const removedTimes = [{ entryId: 'car7', controlId: 'SS4', finish: true }];
    expect(changesOf(before, bay.state)).toMatchObject({ times: [], removedTimes });
  });

  it('names a fact that was recorded, and withdrawn again', () => {
    const bay = openBay();
    const before = bay.state;
    bay.act(FACT, MIA);
    const recorded = bay.state;
    expect(changesOf(before, recorded).facts).toMatchObject([
      { factId: 'landed', entryId: 'car7', recordedBy: MIA, withdrawn: false, changedSeq: 1 },
    ]);
    bay.act({ kind: 'undo', args: { actionId: 'a1' } }, MIA);
    expect(changesOf(recorded, bay.state).facts).toMatchObject([{ factId: 'landed', withdrawn: true }]);
  });
});
