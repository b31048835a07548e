import type { PushResult } from '@halfshaft/contract';
import type { ActionId, PushedAction } from '@halfshaft/worklog';
import type { WorkNotice } from './waiting-action';

/** The server's word for an accepted action against which nothing stands. */
const PLAINLY_KEPT = 'Kept.';

/** What an author must be told of answers: it was not taken, or it was kept with something standing against it. */
export function noticesOfAnswers(
  results: readonly PushResult[],
  actions: ReadonlyMap<ActionId, PushedAction>,
  whose: Pick<WorkNotice, 'place' | 'owner'>,
): WorkNotice[] {
  return results.flatMap(({ actionId: id, status, sentence }) => {
    const action = actions.get(id);
    if (!action || (status === 'accepted' && sentence === PLAINLY_KEPT)) return [];
    return [{ id, ...whose, action, kind: status === 'refused' ? 'refused' : 'kept', sentence }];
  });
}
