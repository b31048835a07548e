import type { WorkSnapshot } from '../work/work-snapshot';
import type { KeptPhoto } from './kept-photo';
import type { Standing } from './photo-queue';

/** A picture follows its entry: under its own person, and not before the server has the entry. */
export function standingOf(
  { replica, state, confirmedSeq }: Pick<WorkSnapshot, 'replica' | 'state' | 'confirmedSeq'>,
  { photoId, owner }: Pick<KeptPhoto, 'photoId' | 'owner'>,
): Standing {
  const recorded = state.facts.get(photoId);
  if (replica?.me.personId !== owner || !recorded || recorded.changedSeq > confirmedSeq) return 'wait';
  return recorded.withdrawn ? 'gone' : 'send';
}
