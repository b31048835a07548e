import type { TeamPerson } from '@halfshaft/contract';
import { describe, expect, it } from 'vitest';
import { orderPeople } from './order-people';

function person(name: string, revokedAt?: number | null): TeamPerson {
  const membership =
    revokedAt === undefined
      ? null
      : { membershipId: name, role: 'mechanic' as const, eventId: null, revokedAt };
  return { personId: name, name, initials: name.slice(0, 2), membership };
}

describe('orderPeople', () => {
  it('puts who is in first, then who is only named, then who was taken out', () => {
    const people = [
      person('Out', 5),
      person('Zed'),
      person('Named'),
      person('Pip', null),
      person('Ann', null),
    ];
    expect(orderPeople(people).map(({ name }) => name)).toEqual(['Ann', 'Pip', 'Named', 'Zed', 'Out']);
    expect(people[0]?.name).toBe('Out');
  });
});
