import { type MemberTx, type Store, withTeam } from '@halfshaft/store';

export { findItinerary, listEntries, listPeople } from '../event/data';

/** The fence of one team, for as long as it takes to load. */
export function inTeam<T>(
  store: Store,
  { teamId, userId }: { teamId: string; userId: string },
  work: (tx: MemberTx) => Promise<T>,
): Promise<T> {
  return withTeam(store, { teamId, userId }, work);
}
