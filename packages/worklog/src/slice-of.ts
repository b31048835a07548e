import { stageKeyOf } from './stage-key-of';
import type { Scope, WorkState } from './state';
import { timeKeyOf } from './time-key-of';

/**
 * Only the part of the state that a scope names: what a server would have loaded.
 *
 * @example
 * sliceOf(state, scopeOf(action, rules)).tasks.size // 1
 */
export function sliceOf(state: WorkState, scope: Scope): WorkState {
  return {
    tasks: pick(state.tasks, scope.taskIds),
    snags: pick(state.snags, scope.snagIds),
    stages: pick(state.stages, scope.stages.map(stageKeyOf)),
    times: pick(state.times, scope.times.map(timeKeyOf)),
    facts: pick(state.facts, scope.factIds),
    actions: pick(state.actions, scope.actionIds),
  };
}

function pick<V>(all: ReadonlyMap<string, V>, keys: readonly string[]): Map<string, V> {
  const picked = new Map<string, V>();
  for (const key of keys) {
    const value = all.get(key);
    if (value !== undefined) picked.set(key, value);
  }
  return picked;
}
