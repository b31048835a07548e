import type { WaitingAction } from './waiting-action';

/**
 * How many entries of whom.
 *
 * @example
 * entriesOf('Mia', 2) // '2 entries of Mia'
 */
export function entriesOf(name: string, count: number): string {
  return `${count === 1 ? '1 entry' : `${count} entries`} of ${name}`;
}

/**
 * The same of photos.
 *
 * @example
 * photosOfPerson('Mia', 2) // '2 photos of Mia'
 */
export function photosOfPerson(name: string, count: number): string {
  return `${count === 1 ? '1 photo' : `${count} photos`} of ${name}`;
}

/**
 * What is told to whoever holds the phone while another's entries wait on it.
 *
 * @example
 * waitsForSignIn({ name: 'Mia', count: 2 }) // '2 entries of Mia wait on this phone until Mia signs in here again.'
 */
export function waitsForSignIn({ name, count }: { name: string; count: number }): string {
  return `${entriesOf(name, count)} ${count === 1 ? 'waits' : 'wait'} on this phone until ${name} signs in here again.`;
}

/** Of a whole phone: each person once, in the order of their first entry. */
export function countByName(
  waiting: readonly Pick<WaitingAction, 'ownerName'>[],
): { name: string; count: number }[] {
  const counts = new Map<string, number>();
  for (const { ownerName } of waiting) counts.set(ownerName, (counts.get(ownerName) ?? 0) + 1);
  return [...counts].map(([name, count]) => ({ name, count }));
}
