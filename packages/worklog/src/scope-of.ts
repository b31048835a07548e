import type { CarFact } from './car-fact';
import type { PushedAction, SnagId, TaskId, TaskRules } from './model';
import type { ActionRecord, Scope } from './state';
import { taskIdOf } from './task-id-of';
import { taskRefOf } from './task-ref-of';
import { timeRefOf } from './time-key-of';
import { upgradeAction } from './upgrade-action';

const NOTHING: Scope = { taskIds: [], snagIds: [], stages: [], times: [], factIds: [], actionIds: [] };

/**
 * The slice of the state that `decide` and `apply` need for this action.
 *
 * The promise, held by a property test: with the same `action`, `doer` and `rules`,
 * `decide(sliceOf(state, scope), …)` equals `decide(state, …)`, and applying the entries to the slice changes the
 * same rows to the same values. So a server loads (and locks) only these rows.
 *
 * Which tasks an undo touches stands in the record of the action it undoes. Call once without `record`, load the
 * action ids it names, then call again with the record found (null when there is none).
 *
 * @example
 * scopeOf(takeNuts, rules).taskIds // ['e7~B~card~nuts']
 */
export function scopeOf(
  action: PushedAction,
  rules: TaskRules | null = null,
  record: ActionRecord | null = null,
): Scope {
  const upgrade = upgradeAction(action);
  if (!upgrade.ok) return NOTHING;
  const body = upgrade.action;
  switch (body.kind) {
    case 'raiseSnag':
      return { ...NOTHING, snagIds: [body.args.snagId] };
    case 'confirmStage': {
      const { entryId, stageId } = body.args;
      return { ...NOTHING, stages: [{ entryId, stageId }] };
    }
    case 'recordTime':
      return { ...NOTHING, times: [timeRefOf(body.args)] };
    case 'recordFact':
      return { ...NOTHING, factIds: [body.args.factId], snagIds: snagIdsBehind(body.args.fact) };
    case 'undo':
      return scopeOfUndo(body.args.actionId, record);
    default:
      return scopeOfTasks([taskIdOf(body.args.task), ...(rules?.reopens ?? [])]);
  }
}

function scopeOfUndo(actionId: string, record: ActionRecord | null): Scope {
  if (!record) return { ...NOTHING, actionIds: [actionId] };
  const scope = scopeOfTasks(record.tasks.map((touched) => touched.before.id));
  return {
    taskIds: scope.taskIds,
    snagIds: unique([...scope.snagIds, ...record.snags.map((touched) => touched.snagId)]),
    stages: record.stages.map(({ entryId, stageId }) => ({ entryId, stageId })),
    times: (record.times ?? []).map(timeRefOf),
    factIds: (record.facts ?? []).map(({ factId }) => factId),
    actionIds: [actionId],
  };
}

function scopeOfTasks(ids: readonly TaskId[]): Scope {
  const taskIds = unique(ids);
  return { ...NOTHING, taskIds, snagIds: unique(taskIds.flatMap(snagIdsOf)) };
}

/** A lasting repair or a photo may be of a snag's: whether that snag is known is for the caller to look at. */
function snagIdsBehind(fact: CarFact): SnagId[] {
  return 'of' in fact ? snagIdsOf(fact.of) : [];
}

function snagIdsOf(id: TaskId): SnagId[] {
  const { source } = taskRefOf(id);
  return source.kind === 'snag' ? [source.snagId] : [];
}

function unique(ids: readonly string[]): string[] {
  return [...new Set(ids)];
}
