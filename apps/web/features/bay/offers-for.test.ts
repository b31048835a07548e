import { emptyState, type Task, taskOf } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { KAI, MIA, NUTS, taskAt } from '../work/fixtures';
import { offersFor } from './offers-for';

const open = taskOf(emptyState, taskAt(NUTS), null);
const task = (more: Partial<Task>): Task => ({ ...open, ...more });
const mia = { by: MIA, me: MIA, mayManage: false };

describe('offersFor', () => {
  it('offers to take what is open', () => {
    expect(offersFor(open, mia)[0]).toBe('take');
  });

  it('offers the holder to close it or let it go, another only to say it is done', () => {
    const held = task({ state: 'claimed', holder: MIA });
    expect(offersFor(held, mia)).toEqual(['problem', 'done', 'leave', 'release']);
    expect(offersFor(held, { ...mia, by: KAI, me: KAI })).toEqual(['problem', 'done']);
    expect(offersFor(held, { by: KAI, me: KAI, mayManage: true })).toContain('release');
  });

  it('leaves "done" where it was when a task is taken, so that a double tap closes nothing', () => {
    const held = task({ state: 'claimed', holder: MIA });
    expect(offersFor(held, mia).indexOf('done')).toBe(offersFor(open, mia).indexOf('done'));
  });

  it('offers the signature to another person only, whoever is recorded for, or to another on this device', () => {
    const done = task({ state: 'done', doneBy: MIA, needsSignature: true });
    expect(offersFor(done, mia)).toEqual(['signHere', 'reopen']);
    expect(offersFor(done, { ...mia, by: KAI })).toEqual(['signHere', 'reopen']);
    expect(offersFor(done, { ...mia, me: KAI })).toEqual(['sign', 'signHere', 'reopen']);
    expect(offersFor(task({ ...done, alsoDoneBy: [KAI] }), { ...mia, me: KAI })).not.toContain('sign');
    expect(offersFor(task({ ...done, signedBy: KAI }), { ...mia, me: 'jo' })).toEqual(['reopen']);
  });

  it('offers to open again what was left', () => {
    expect(offersFor(task({ state: 'carriedOver' }), mia)).toEqual(['reopen']);
    expect(offersFor(task({ state: 'notNeeded' }), mia)).toEqual(['reopen']);
  });
});
