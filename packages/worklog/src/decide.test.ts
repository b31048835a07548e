import { describe, expect, it } from 'vitest';
import { decide } from './decide';
import type { PushedAction } from './model';
import { emptyState } from './state';
import { carryOver, drop, reopen, start, take, undo } from './testing/asks';
import { actionOf, CANCELLED, close, gist, LEAK, NUTS, OK, openBay, SNAG, STAGE, TIME } from './testing/bay';
import { doerOf, KAI, MIA } from './testing/people';

describe('decide: cancelled services, revoked people, unknown tasks', () => {
  it('refuses new work at a cancelled service', () => {
    for (const body of [take, start, carryOver('x'), drop('x'), reopen('x')]) {
      expect(gist(openBay().act(body, MIA, CANCELLED))).toBe('refused serviceCancelled');
    }
  });

  it('keeps only facts of what was made after a revocation, flagged', () => {
    const gone = doerOf(MIA, { revokedAt: 1_000 });
    expect(gist(openBay().act(take, gone))).toBe('refused revoked');
    expect(gist(openBay().act(undo('a0'), gone))).toBe('refused revoked');
    expect(gist(openBay().act(close(NUTS, [OK]), gone))).toBe('done +afterRevocation');
    expect(gist(openBay().act(SNAG, gone))).toBe('snagRaised +afterRevocation');
    expect(gist(openBay().act(STAGE, gone))).toBe('stageConfirmed +afterRevocation');
    expect(gist(openBay().act(TIME, gone))).toBe('timeRecorded +afterRevocation');
  });

  it('still counts what was made before the revocation, flagged', () => {
    expect(gist(openBay().act(take, doerOf(MIA, { revokedAt: 1_001 })))).toBe('claimed +afterRevocation');
  });

  it('refuses a claim on a card or snag nobody knows', () => {
    expect(gist(openBay().act(take, MIA, null))).toBe('refused unknownTask');
    expect(gist(openBay().act({ kind: 'takeTask', args: { task: LEAK } }, MIA, null))).toBe(
      'refused unknownSnag',
    );
  });
});

describe('decide: versions and misuse', () => {
  const snagBefore: PushedAction = {
    ...actionOf(SNAG, MIA, 'a1'),
    version: 0,
    args: { snagId: 'leak', entryId: 'car7', serviceId: 'B', place: 'RR', words: 'oil' },
  };

  it('takes the version before', () => {
    const outcome = decide(emptyState, snagBefore, doerOf(MIA), null);
    expect(outcome).toMatchObject({
      status: 'accepted',
      entries: [{ body: { kind: 'snagRaised', urgent: false } }],
    });
  });

  it('refuses others by name', () => {
    const other = (version: number) =>
      gist(decide(emptyState, { ...snagBefore, version }, doerOf(MIA), null));
    expect(other(-1)).toBe('refused versionTooOld');
    expect(other(2)).toBe('refused versionTooNew');
    const unknown = { ...snagBefore, kind: 'washCar' };
    expect(gist(decide(emptyState, unknown, doerOf(MIA), null))).toBe('refused unknownKind');
  });

  it('throws when the doer is not the person of the action', () => {
    expect(() => decide(emptyState, actionOf(take, MIA, 'a1'), doerOf(KAI), null)).toThrow(
      'decide: the doer is kai',
    );
  });
});
