import type { TeamPerson, TeamRole } from '@halfshaft/contract';

interface Standing {
  role: TeamRole;
  eventId: string | null;
}

/** Describing cars, events and entries, and steering the work of others. */
export function mayManage({ role, eventId }: Standing): boolean {
  return (role === 'admin' || role === 'manager') && eventId === null;
}

/** Deciding who belongs to the team and with which role. */
export function mayDecideRoles({ role, eventId }: Standing): boolean {
  return role === 'admin' && eventId === null;
}

/** Helpers are let in for one event and see no other. */
export function maySeeEvent({ eventId }: Standing, wanted: string): boolean {
  return eventId === null || eventId === wanted;
}

/**
 * The people of the team as this member may know them: everybody's name, since names stand in the log, but to a helper of
 * one event nothing of those who are let in for another.
 */
export function peopleFor(member: Standing, people: TeamPerson[]): TeamPerson[] {
  return people.map((person) => {
    const forEvent = person.membership?.eventId ?? null;
    return forEvent === null || maySeeEvent(member, forEvent) ? person : { ...person, membership: null };
  });
}
