import { describe, expect, it } from 'vitest';
import { decide } from '../decide';
import { taskIdOf } from '../task-id-of';
import { take, undo } from '../testing/asks';
import {
  actionOf,
  close,
  gist,
  LEAK,
  NUTS,
  OK,
  openBay,
  rulesOf,
  SNAG,
  STAGE,
  TIME,
  WHEEL,
} from '../testing/bay';
import { doerOf, JO, KAI, MANAGER, MIA } from '../testing/people';

describe('decide: taking back', () => {
  it('puts the task back as it was', () => {
    const bay = openBay();
    bay.act(take, MIA);
    const held = bay.task(NUTS);
    bay.act(close(NUTS, [OK]), MIA);
    expect(gist(bay.act(undo('a2'), MIA))).toBe('undone');
    expect(bay.task(NUTS)).toEqual({ ...held, changedSeq: 3 });
  });

  it('is for who did it, who typed it, or someone who may manage', () => {
    const bay = openBay();
    bay.act(take, doerOf(MIA, { enteredBy: KAI }));
    expect(gist(bay.act(undo('a1'), JO))).toBe('refused notAllowed');
    expect(gist(bay.act(undo('a1'), KAI))).toBe('undone');
    bay.act(take, MIA);
    expect(gist(bay.act(undo('a4'), MANAGER))).toBe('undone');
  });

  it('is refused with the name of who changed something since', () => {
    const bay = openBay();
    bay.act(close(NUTS), MIA);
    bay.act(close(NUTS), KAI);
    expect(bay.act(undo('a1'), MIA)).toEqual({
      status: 'refused',
      refusal: { code: 'changedSince', personId: KAI },
    });
  });

  it('is refused when only a task opened along with it changed since', () => {
    const bay = openBay();
    bay.act(close(NUTS), MIA);
    bay.act(close(WHEEL), MIA, rulesOf({ reopens: [taskIdOf(NUTS)] }));
    bay.act(take, KAI);
    expect(gist(bay.act(undo('a2'), MIA))).toBe('refused changedSince');
  });

  it('takes back both the closing and what it opened', () => {
    const bay = openBay();
    bay.act(close(NUTS), MIA);
    bay.act(close(WHEEL), MIA, rulesOf({ reopens: [taskIdOf(NUTS)] }));
    bay.act(undo('a2'), MIA);
    expect(bay.task(WHEEL).state).toBe('open');
    expect(bay.task(NUTS)).toMatchObject({ state: 'done', doneBy: MIA, round: 1 });
  });

  it('is not offered for an undo, for what was undone, refused or never asked', () => {
    const bay = openBay();
    bay.act(take, MIA);
    bay.act(take, KAI);
    bay.act(undo('a1'), MIA);
    for (const id of ['a1', 'a2', 'a3', 'a99', '__proto__']) {
      expect(gist(bay.act(undo(id), MANAGER))).toBe('refused nothingToUndo');
    }
  });

  it('withdraws a snag, unless someone has begun its repair', () => {
    const bay = openBay();
    bay.act(SNAG, MIA);
    bay.act(undo('a1'), MIA);
    expect(bay.state.snags.get('leak')?.withdrawn).toBe(true);
    expect(gist(bay.act({ kind: 'takeTask', args: { task: LEAK } }, KAI))).toBe('refused unknownSnag');
    bay.act(SNAG, MIA);
    expect(bay.state.snags.get('leak')?.withdrawn).toBe(false);
    bay.act({ kind: 'takeTask', args: { task: LEAK } }, KAI);
    expect(gist(bay.act(undo('a4'), MIA))).toBe('refused changedSince');
  });

  it('counts as a change of the snag when a repair is taken back', () => {
    const bay = openBay();
    bay.act(SNAG, MIA);
    bay.act({ kind: 'takeTask', args: { task: LEAK } }, KAI);
    bay.act(undo('a2'), MANAGER);
    expect(bay.state.snags.get('leak')).toMatchObject({ withdrawn: false, changedSeq: 3, changedBy: JO });
  });

  it('goes back to what was said of a stage before, or to nothing', () => {
    const bay = openBay();
    bay.act(STAGE, MIA);
    bay.act({ ...STAGE, args: { ...STAGE.args, driven: false } }, KAI);
    bay.act(undo('a2'), KAI);
    expect(bay.state.stages.get('car7~SS3')).toMatchObject({
      driven: true,
      confirmedBy: MIA,
      changedSeq: 3,
      changedBy: KAI,
    });
    const alone = openBay();
    alone.act(STAGE, MIA);
    alone.act(undo('a1'), MIA);
    expect(alone.state.stages.size).toBe(0);
  });

  it('goes back to the time a control was said to have written before, or to none', () => {
    const bay = openBay();
    bay.act(TIME, MIA);
    bay.act({ ...TIME, args: { ...TIME.args, writtenAt: 47_580, heldMinutes: 5 } }, KAI);
    expect(bay.state.times.get('car7~TC4A')).toMatchObject({ writtenAt: 47_580, heldMinutes: 5 });
    expect(gist(bay.act(undo('a1'), MIA))).toBe('refused changedSince');
    bay.act(undo('a2'), KAI);
    expect(bay.state.times.get('car7~TC4A')).toMatchObject({ writtenAt: 47_160, recordedBy: MIA });
    const alone = openBay();
    alone.act(TIME, MIA);
    alone.act(undo('a1'), MIA);
    expect(alone.state.times.size).toBe(0);
  });

  it('takes back what was done before control times were kept in the record', () => {
    const bay = openBay();
    bay.act(take, MIA);
    const record = bay.state.actions.get('a1');
    if (!record) throw new Error('Nothing was recorded of a1.');
    const { times: _, ...earlier } = record;
    const kept = { ...bay.state, actions: new Map([['a1', earlier]]) };
    const body = undo('a1');
    const action = actionOf(body, MIA, 'a2');
    expect(gist(decide(kept, action, doerOf(MIA), null))).toBe('undone');
  });
});
