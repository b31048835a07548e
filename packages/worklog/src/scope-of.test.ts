import { describe, expect, it } from 'vitest';
import { scopeOf } from './scope-of';
import { taskIdOf } from './task-id-of';
import {
  actionOf,
  close,
  FACT,
  FINISH,
  LEAK,
  NUTS,
  openBay,
  rulesOf,
  SNAG,
  STAGE,
  TIME,
  WHEEL,
} from './testing/bay';
import { MIA } from './testing/people';

const none = { taskIds: [], snagIds: [], stages: [], times: [], factIds: [], actionIds: [] };

describe('scopeOf', () => {
  it('names the task, what it opens again, and the snags behind them', () => {
    const rules = rulesOf({ reopens: [taskIdOf(LEAK), taskIdOf(WHEEL)] });
    expect(scopeOf(actionOf(close(WHEEL), MIA, 'a1'), rules)).toEqual({
      ...none,
      taskIds: [taskIdOf(WHEEL), taskIdOf(LEAK)],
      snagIds: ['leak'],
    });
  });

  it('names the snag, the stage or the control', () => {
    expect(scopeOf(actionOf(SNAG, MIA, 'a1'))).toEqual({ ...none, snagIds: ['leak'] });
    expect(scopeOf({ ...actionOf(SNAG, MIA, 'a1'), version: 0 })).toEqual({ ...none, snagIds: ['leak'] });
    const stages = [{ entryId: 'car7', stageId: 'SS3' }];
    expect(scopeOf(actionOf(STAGE, MIA, 'a1'))).toEqual({ ...none, stages });
    const times = [{ entryId: 'car7', controlId: 'TC4A' }];
    expect(scopeOf(actionOf(TIME, MIA, 'a1'))).toEqual({ ...none, times });
    const finish = [{ entryId: 'car7', controlId: 'SS4', finish: true }];
    expect(scopeOf(actionOf(FINISH, MIA, 'a1'))).toEqual({ ...none, times: finish });
    expect(scopeOf(actionOf(FACT, MIA, 'a1'))).toEqual({ ...none, factIds: ['landed'] });
  });

  it('names with a lasting repair or a photo the snag it was of', () => {
    const of = { of: taskIdOf(LEAK), words: '' };
    for (const fact of [
      { kind: 'madeGood', ...of } as const,
      { kind: 'photo', ...of, bytes: 9, sha256: '' } as const,
    ]) {
      const action = actionOf({ ...FACT, args: { ...FACT.args, fact } }, MIA, 'a1');
      expect(scopeOf(action)).toEqual({ ...none, factIds: ['landed'], snagIds: ['leak'] });
    }
  });

  it('names for an undo first the action, then with its record all it touched', () => {
    const bay = openBay();
    bay.act(close(NUTS), MIA);
    bay.act(close(WHEEL), MIA, rulesOf({ reopens: [taskIdOf(NUTS)] }));
    const undo = actionOf({ kind: 'undo', args: { actionId: 'a2' } }, MIA, 'a3');
    expect(scopeOf(undo)).toEqual({ ...none, actionIds: ['a2'] });
    expect(scopeOf(undo, null, bay.state.actions.get('a2'))).toEqual({
      ...none,
      taskIds: [taskIdOf(WHEEL), taskIdOf(NUTS)],
      actionIds: ['a2'],
    });
  });

  it('names nothing for what will be refused unread', () => {
    expect(scopeOf({ ...actionOf(SNAG, MIA, 'a1'), version: 9 })).toEqual(none);
    expect(scopeOf({ ...actionOf(SNAG, MIA, 'a1'), kind: 'washCar' })).toEqual(none);
  });
});
