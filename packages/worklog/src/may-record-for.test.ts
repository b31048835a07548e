import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mayRecordFor } from './may-record-for';
import { ACTION_VERSION, type Action, type ActionBody } from './model';
import { NUTS } from './testing/bay';
import { randomSteps } from './testing/fixtures';

const actionOf = (body: ActionBody): Action => ({
  ...body,
  actionId: 'a1',
  deviceId: 'd1',
  deviceSeq: 1,
  deviceTime: 1,
  version: ACTION_VERSION,
  by: 'mia',
});

describe('mayRecordFor', () => {
  it('lets a signature on the device be given by the signer only', () => {
    const action = actionOf({ kind: 'signTask', args: { task: NUTS } });
    expect(mayRecordFor(action, 'mia')).toBe(true);
    expect(mayRecordFor(action, 'scribe')).toBe(false);
  });

  it('lets anyone type in a signature in ink', () => {
    const action = actionOf({ kind: 'signTask', args: { task: NUTS, onPaper: true } });
    expect(mayRecordFor(action, 'scribe')).toBe(true);
    const notInk = actionOf({ kind: 'signTask', args: { task: NUTS, onPaper: false } });
    expect(mayRecordFor(notInk, 'scribe')).toBe(false);
  });

  it('lets another sign by initials on this device', () => {
    const action = actionOf({ kind: 'signTask', args: { task: NUTS, byInitials: true } });
    expect(mayRecordFor(action, 'scribe')).toBe(true);
    const without = actionOf({ kind: 'signTask', args: { task: NUTS, byInitials: false } });
    expect(mayRecordFor(without, 'scribe')).toBe(false);
  });

  it('lets everything else be recorded for a named person', () => {
    fc.assert(
      fc.property(randomSteps, (steps) => {
        for (const { body } of steps) {
          if (body.kind !== 'signTask') expect(mayRecordFor(actionOf(body), 'scribe')).toBe(true);
        }
      }),
    );
  });
});
