import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ArgsOf } from '../model';
import { actionOf, openBay } from '../testing/bay';
import { randomSteps } from '../testing/fixtures';
import { actionOfEntries } from './action-of-entries';

describe('the action that entries of a log came from', () => {
  it('says all that was pushed, whatever its kind', () => {
    const kinds = new Set<string>();
    fc.assert(
      fc.property(randomSteps, (steps) => {
        const bay = openBay();
        for (const [index, { body, doer, rules }] of steps.entries()) {
          const outcome = bay.act(body, doer, rules);
          if (outcome.status === 'refused') continue;
          const pushed = actionOf(body, doer.personId, `a${index + 1}`);
          const entries = bay.log.filter(({ actionId }) => actionId === pushed.actionId);
          const { deviceId, deviceSeq } = pushed;
          expect(actionOfEntries(entries, { deviceId, deviceSeq })).toEqual({
            action: pushed,
            enteredBy: doer.enteredBy,
          });
          kinds.add(body.kind);
        }
      }),
      { numRuns: 300, seed: 11 },
    );
    expect(kinds.size).toBe(13);
  });

  it('is none for no entries', () => {
    expect(actionOfEntries([], { deviceId: 'd', deviceSeq: 1 })).toBeNull();
  });

  it('keeps how a signature was given', () => {
    const args: ArgsOf<'signTask'> = {
      task: { entryId: 'e', serviceId: 'A', source: { kind: 'card', cardId: 'c' } },
      onPaper: true,
    };
    const stamp = {
      actionId: 'a',
      by: 'p',
      enteredBy: 'q',
      deviceId: 'd',
      deviceTime: 1,
      seq: 1,
      serverTime: 2,
    };
    const entry = {
      ...stamp,
      flags: [],
      body: { kind: 'signed' as const, ...args, onPaper: true as const, byInitials: undefined },
    };
    expect(actionOfEntries([entry], { deviceId: 'd', deviceSeq: 1 })?.action).toMatchObject({
      kind: 'signTask',
      args: { onPaper: true },
    });
  });
});
