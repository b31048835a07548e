import { describe, expect, it } from 'vitest';
import { taskIdOf } from '../task-id-of';
import { carryOver, reopen, sign, take } from '../testing/asks';
import { close, gist, LEAK, NUTS, OK, openBay, rulesOf, SIGNED, WHEEL } from '../testing/bay';
import { JO, KAI, MIA } from '../testing/people';

describe('decide: opening again', () => {
  it('clears who did it and who signed, and starts a new round', () => {
    const bay = openBay();
    bay.act(close(NUTS, [OK]), MIA, SIGNED);
    bay.act(close(NUTS), JO, SIGNED);
    bay.act(sign, KAI, SIGNED);
    expect(gist(bay.act(reopen(''), KAI, SIGNED))).toBe('refused reasonMissing');
    expect(gist(bay.act(reopen('one is loose'), KAI, SIGNED))).toBe('reopened');
    const open = { state: 'open', doneBy: null, alsoDoneBy: [], signedBy: null, round: 2, findings: [OK] };
    expect(bay.task(NUTS)).toMatchObject(open);
  });

  it('opens with it what rests on it, once, and only if that was done', () => {
    const bay = openBay();
    const reopens = [taskIdOf(NUTS), taskIdOf(NUTS), taskIdOf(LEAK), taskIdOf(WHEEL)];
    bay.act(close(WHEEL), MIA);
    bay.act(close(NUTS), MIA);
    const again = { kind: 'reopenTask', args: { task: WHEEL, reason: 'wrong pads' } } as const;
    expect(gist(bay.act(again, KAI, rulesOf({ reopens })))).toBe('reopened, reopened');
    expect(bay.task(NUTS)).toMatchObject({ state: 'open', round: 2, reason: 'wrong pads' });
  });

  it('leaves the nuts alone when work that was only carried over is opened again', () => {
    const bay = openBay();
    bay.act(close(WHEEL), MIA);
    bay.act(carryOver('no time'), MIA);
    expect(gist(bay.act(reopen('time after all'), KAI, rulesOf({ reopens: [taskIdOf(WHEEL)] })))).toBe(
      'reopened',
    );
    expect(bay.task(WHEEL).state).toBe('done');
  });

  it('does not take work out of the hands of who is at it', () => {
    const bay = openBay();
    bay.act(close(WHEEL), MIA);
    bay.act(take, JO);
    const again = { kind: 'reopenTask', args: { task: WHEEL, reason: 'wrong pads' } } as const;
    expect(gist(bay.act(again, KAI, rulesOf({ reopens: [taskIdOf(NUTS)] })))).toBe('reopened');
    expect(bay.task(NUTS)).toMatchObject({ state: 'claimed', holder: JO });
  });

  it('is not for what is still open', () => {
    expect(gist(openBay().act(reopen('why not'), MIA))).toBe('refused notClosed');
  });
});
