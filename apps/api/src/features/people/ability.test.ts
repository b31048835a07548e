import type { TeamRole } from '@halfshaft/contract';
import { describe, expect, it } from 'vitest';
import { mayDecideRoles, mayManage, maySeeEvent } from './ability';

const ROLES: TeamRole[] = ['admin', 'manager', 'mechanic', 'driver'];

describe('who may', () => {
  it.each<[TeamRole, boolean, boolean]>([
    ['admin', true, true],
    ['manager', true, false],
    ['mechanic', false, false],
    ['driver', false, false],
  ])('%s: manage %s, decide roles %s', (role, manage, decide) => {
    const standing = { role, eventId: null };
    expect([mayManage(standing), mayDecideRoles(standing)]).toEqual([manage, decide]);
  });

  it.each(ROLES)('%s let in for one event: sees that one, manages nothing', (role) => {
    const standing = { role, eventId: 'this' };
    expect([mayManage(standing), mayDecideRoles(standing)]).toEqual([false, false]);
    expect([maySeeEvent(standing, 'this'), maySeeEvent(standing, 'other')]).toEqual([true, false]);
    expect(maySeeEvent({ role, eventId: null }, 'other')).toBe(true);
  });
});
