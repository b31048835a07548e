import type { ArgsOf, Flag, PersonId } from '../model';
import type { WorkState } from '../state';
import type { Ruling } from './ruling';

/** A snag is always kept. Raised again under the same id, its words are added to the first. */
export function ruleOnRaiseSnag(state: WorkState, args: ArgsOf<'raiseSnag'>, by: PersonId): Ruling {
  const first = state.snags.get(args.snagId);
  const again = first !== undefined && !first.withdrawn && first.raisedBy !== by;
  const flags: Flag[] = again ? [{ code: 'alsoRaisedBy', personId: first.raisedBy }] : [];
  return { entries: [{ body: { kind: 'snagRaised', ...args }, flags }] };
}
