import type { RecordedFact } from './car-fact';
import type { EntryId, Task } from './model';
import type { WorkState } from './state';

/** Work that was closed with a temporary repair. */
export interface TemporaryRepair {
  task: Task;
  /** What was found, of every such finding. */
  words: string;
  /** Null while it is not made good. */
  madeGood: RecordedFact | null;
}

/**
 * The temporary repairs of one car, of cards and of snags alike, in the order of the log. `open`: those that still ask for
 * a lasting repair.
 *
 * @example
 * repairsOf(state, entryId)[0]?.words // 'wire round the hanger'
 */
export function repairsOf(
  state: WorkState,
  entryId: EntryId,
  which: 'open' | 'all' = 'open',
): TemporaryRepair[] {
  const lasting = new Map<string, RecordedFact>();
  for (const recorded of state.facts.values()) {
    if (recorded.fact.kind === 'madeGood' && !recorded.withdrawn) lasting.set(recorded.fact.of, recorded);
  }
  return [...state.tasks.values()]
    .filter((task) => task.ref.entryId === entryId && task.state === 'done')
    .flatMap((task) => {
      const made = task.findings.filter(({ grade }) => grade === 'temporaryRepair');
      if (made.length === 0) return [];
      const words = made
        .map(({ position, words: said }) => [position, said].filter(Boolean).join(' '))
        .join('; ');
      return [{ task, words, madeGood: lasting.get(task.id) ?? null }];
    })
    .filter(({ madeGood }) => which === 'all' || madeGood === null)
    .sort((one, other) => one.task.changedSeq - other.task.changedSeq);
}
