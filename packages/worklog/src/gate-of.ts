import type { ServiceId } from '@halfshaft/itinerary';
import type { FactId, GateChange, GateCheck, RecordedFact } from './car-fact';
import type { EntryId, PersonId } from './model';

/** How the checks before work stand at one service of one car. */
export type Gate =
  | { kind: 'notChecked' }
  | { kind: 'checked'; factId: FactId; by: PersonId; checks: readonly GateCheck[] }
  | { kind: 'opened'; because: GateChange; by: PersonId };

/**
 * What was said last of the checks before work: done, or due again. It asks and reminds only: work that was done without
 * it counts all the same.
 *
 * @example
 * gateOf(state.facts.values(), entryId, 'B') // { kind: 'opened', because: 'refuelled', by: 'mia' }
 */
export function gateOf(facts: Iterable<RecordedFact>, entryId: EntryId, serviceId: ServiceId): Gate {
  let gate: Gate = { kind: 'notChecked' };
  let newest = -1;
  for (const { factId, entryId: of, at, fact, recordedBy: by, withdrawn, changedSeq } of facts) {
    if (of !== entryId || withdrawn || changedSeq < newest) continue;
    if (at.kind !== 'service' || at.serviceId !== serviceId) continue;
    if (fact.kind === 'gateChecked') gate = { kind: 'checked', factId, by, checks: fact.checks };
    else if (fact.kind === 'gateOpened') gate = { kind: 'opened', because: fact.because, by };
    else continue;
    newest = changedSeq;
  }
  return gate;
}
