import { describe, expect, it } from 'vitest';
import { mayManageTeam } from './may-manage-team';

describe('mayManageTeam', () => {
  it.each([
    ['admin', null, true],
    ['manager', null, true],
    ['manager', 'one event', false],
    ['mechanic', null, false],
    ['driver', null, false],
  ] as const)('says of a %s let in for %s: %s', (role, eventId, may) => {
    expect(mayManageTeam({ role, eventId })).toBe(may);
  });
});
