import type { PersonId } from '@halfshaft/worklog';
import type { WaitingAction } from './waiting-action';
import type { OthersWaiting } from './work-snapshot';

/** Whose actions wait here beside one's own, and how many of each. */
export function othersIn(waiting: readonly WaitingAction[], me: PersonId): OthersWaiting[] {
  const counts = new Map<PersonId, OthersWaiting>();
  for (const { owner, ownerName: name } of waiting) {
    if (owner === me) continue;
    counts.set(owner, { name, count: (counts.get(owner)?.count ?? 0) + 1 });
  }
  return [...counts.values()];
}
