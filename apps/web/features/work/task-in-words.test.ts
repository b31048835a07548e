import { emptyState, type Task, taskOf } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { KAI, MIA, NUTS, taskAt } from './fixtures';
import { findingInWords, taskInWords } from './task-in-words';

const open = taskOf(emptyState, taskAt(NUTS), null);
const names = new Map([
  [MIA, 'Mia'],
  [KAI, 'Kai'],
]);
const say = (more: Partial<Task>, confirmedSeq = 9) =>
  taskInWords({ ...open, ...more }, { nameOf: (id) => names.get(id) ?? id, me: MIA, confirmedSeq });

describe('taskInWords', () => {
  it('says who has it', () => {
    expect(say({})).toBe('open');
    expect(say({ state: 'claimed', holder: KAI, changedSeq: 9 })).toBe('Kai has it');
    expect(say({ state: 'claimed', holder: MIA, changedSeq: 9 })).toBe('you have it');
  });

  it('says asked for until the server has answered', () => {
    expect(say({ state: 'claimed', holder: MIA, changedSeq: 10 })).toBe('asked for by you');
  });

  it('says who did it and whether a signature waits', () => {
    expect(say({ state: 'done', doneBy: KAI, alsoDoneBy: [MIA] })).toBe('done by Kai and you');
    expect(say({ state: 'done', doneBy: KAI, needsSignature: true })).toBe(
      'done by Kai, a second person must sign',
    );
    expect(say({ state: 'done', doneBy: KAI, needsSignature: true, signedBy: MIA })).toBe(
      'done by Kai, signed by you',
    );
  });

  it('says why it was left or opened again', () => {
    expect(say({ state: 'carriedOver', reason: 'no time' })).toBe('carried over: no time');
    expect(say({ round: 2, reason: 'not right' })).toBe('open again: not right');
  });
});

describe('findingInWords', () => {
  it('says where, which look, how bad', () => {
    const finding = { lookId: 'pads', position: 'FL', grade: 'needsWork', words: 'down to 2 mm' } as const;
    expect(findingInWords(finding, [{ id: 'pads', words: 'pads' }])).toBe(
      'FL, pads: needs work. down to 2 mm',
    );
    expect(findingInWords({ ...finding, newPart: true }, [{ id: 'pads', words: 'pads' }])).toBe(
      'FL, pads: needs work, a new part went on. down to 2 mm',
    );
    expect(findingInWords({ ...finding, lookId: null, position: null, words: '' }, [])).toBe('needs work');
  });
});
