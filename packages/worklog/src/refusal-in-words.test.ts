import { describe, expect, it } from 'vitest';
import type { Refusal, RefusalCode } from './refusal';
import { refusalInWords } from './refusal-in-words';
import { MIA, nameOf } from './testing/people';

const refusals: { [C in RefusalCode]: Extract<Refusal, { code: C }> } = {
  heldByAnother: { code: 'heldByAnother', personId: MIA },
  alreadyDone: { code: 'alreadyDone', personId: MIA },
  alreadyYours: { code: 'alreadyYours' },
  notHeld: { code: 'notHeld' },
  notOpen: { code: 'notOpen', state: 'notNeeded' },
  notClosed: { code: 'notClosed', state: 'open' },
  serviceCancelled: { code: 'serviceCancelled' },
  notAllowed: { code: 'notAllowed' },
  revoked: { code: 'revoked' },
  needsAnotherPerson: { code: 'needsAnotherPerson' },
  notAwaitingSignature: { code: 'notAwaitingSignature' },
  alreadySigned: { code: 'alreadySigned', personId: MIA },
  nothingToUndo: { code: 'nothingToUndo' },
  changedSince: { code: 'changedSince', personId: MIA },
  unknownTask: { code: 'unknownTask' },
  unknownSnag: { code: 'unknownSnag' },
  versionTooOld: { code: 'versionTooOld', version: -1 },
  versionTooNew: { code: 'versionTooNew', version: 2 },
  unknownKind: { code: 'unknownKind', kind: 'washCar' },
  reasonMissing: { code: 'reasonMissing' },
};
const sentences = Object.values(refusals).map((refusal) => refusalInWords(refusal, nameOf));

describe('refusalInWords', () => {
  it('says who and what to do', () => {
    expect(refusalInWords(refusals.heldByAnother, nameOf)).toBe(
      'Mia has it already. Ask Mia, or pick another.',
    );
  });

  it('says for each refusal something of its own, in at least one full sentence', () => {
    expect(new Set(sentences).size).toBe(sentences.length);
    for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z].* .*\.$/);
  });

  it('never shows an id or a code name', () => {
    for (const sentence of sentences) expect(sentence).not.toMatch(/\bmia\b|notNeeded|[a-z][A-Z](?!ar")/);
  });

  it('tells carried over from not needed', () => {
    const carried = refusalInWords({ code: 'notOpen', state: 'carriedOver' }, nameOf);
    expect(carried).toContain('carried over');
    expect(refusalInWords(refusals.notOpen, nameOf)).toContain('not needed');
  });
});
