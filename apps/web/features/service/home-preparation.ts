import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import type { JobCard } from '@halfshaft/lifing';
import type { ActionId, PersonId, WorkState } from '@halfshaft/worklog';
import { judgeVisit } from './judge-visit';
import { visitsOf } from './visit';

/** What is known of a car's preparation at home. */
export type HomePreparation =
  /** Nothing was said yet; these fall due by the first service, and fill it unless they were done at home. */
  | { kind: 'asked'; cards: JobCard[] }
  /** Somebody said so. `actionId` takes it back. */
  | { kind: 'told'; count: number; by: PersonId; actionId: ActionId };

/** Null where nothing is to be asked: work of the event is done already, or nothing falls due by the first service. */
export function homePreparation(
  replica: EventReplica,
  state: WorkState,
  entry: EntryReplica,
): HomePreparation | null {
  const isOwn = ({ entryId }: { entryId: string }) => entryId === entry.entryId;
  const told = toldPreparation(state, entry);
  if (told) return told;
  const [first] = visitsOf(replica, entry);
  const hasBegun = [...state.tasks.values()].some(({ ref, state: now }) => isOwn(ref) && now === 'done');
  if (!first || hasBegun) return null;
  const cards = judgeVisit(replica, state, first).flatMap(({ card, judged }) =>
    judged.verdict === 'leave' ? [] : [card],
  );
  return cards.length > 0 ? { kind: 'asked', cards } : null;
}

function toldPreparation(state: WorkState, { entryId }: EntryReplica): HomePreparation | null {
  for (const { entryId: of, fact, factId, recordedBy, withdrawn } of state.facts.values()) {
    if (of !== entryId || withdrawn || fact.kind !== 'prepared') continue;
    const action = [...state.actions.values()].find(
      ({ facts, undone }) => !undone && facts?.some((each) => each.factId === factId),
    );
    if (action) {
      return { kind: 'told', count: fact.cardIds.length, by: recordedBy, actionId: action.actionId };
    }
  }
  return null;
}
