import { describe, expect, it } from 'vitest';
import { readInvite, WHOLE_TEAM } from './invite-values';

const TEAM = '0b7f3a52-6d1e-4c8a-9f10-2a3b4c5d6e7f';
const EVENT = '7e6d5c4b-3a2b-4f10-8c8a-6d1e0b7f3a52';
const GOOD = { role: 'mechanic', scope: WHOLE_TEAM, days: '7' };

describe('readInvite', () => {
  it('reads an invitation for the whole team and for one event', () => {
    expect(readInvite(TEAM, GOOD)).toEqual({
      ok: true,
      input: { teamId: TEAM, role: 'mechanic', eventId: null, days: 7 },
    });
    expect(readInvite(TEAM, { ...GOOD, scope: EVENT })).toMatchObject({
      ok: true,
      input: { eventId: EVENT },
    });
  });

  it.each([
    ['scope', '', 'Choose what the invitation is for.'],
    ['days', '', 'The number of days must be a whole number from 1 to 60.'],
    ['days', '61', 'The number of days must be a whole number from 1 to 60.'],
    ['days', '1.5', 'The number of days must be a whole number from 1 to 60.'],
  ] as const)('says of %s %j what is wrong', (field, text, sentence) => {
    expect(readInvite(TEAM, { ...GOOD, [field]: text })).toEqual({
      ok: false,
      problems: { [field]: sentence },
    });
  });

  it('invites nobody as admin', () => {
    expect(readInvite(TEAM, { ...GOOD, role: 'admin' })).toMatchObject({ ok: false });
  });
});
