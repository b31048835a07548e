import type { TeamPerson } from '@halfshaft/contract';

/** Who is in first, then who is only named, then who was taken out; by name within each. */
export function orderPeople(people: readonly TeamPerson[]): TeamPerson[] {
  return people.toSorted(
    (one, other) => rankOf(one) - rankOf(other) || one.name.localeCompare(other.name, 'en'),
  );
}

function rankOf({ membership }: TeamPerson): number {
  if (membership === null) return 1;
  return membership.revokedAt === null ? 0 : 2;
}
