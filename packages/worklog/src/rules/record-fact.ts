import type { ArgsOf, Flag, PersonId } from '../model';
import type { WorkState } from '../state';
import type { Ruling } from './ruling';

/** A fact of the car is always kept. Under an id that is taken the first one stands, and this one is in the log. */
export function ruleOnRecordFact(state: WorkState, args: ArgsOf<'recordFact'>, by: PersonId): Ruling {
  const first = state.facts.get(args.factId);
  const again = first !== undefined && !first.withdrawn && first.recordedBy !== by;
  const flags: Flag[] = again ? [{ code: 'alsoRecordedBy', personId: first.recordedBy }] : [];
  return { entries: [{ body: { kind: 'factRecorded', ...args }, flags }] };
}
