import type { ArgsOf, Doer, Flag, Reading, Task, TaskRules } from '../model';
import type { WorkState } from '../state';
import { taskOf } from '../task-of';
import { isKnownTask } from './is-known-task';
import { reopenDependents } from './reopen-dependents';
import type { Ruling } from './ruling';

/** Work that was done is always kept, whatever stood against it; the flags say what did. */
export function ruleOnCloseTask(
  state: WorkState,
  args: ArgsOf<'closeTask'>,
  doer: Doer,
  rules: TaskRules | null,
): Ruling {
  const { task: ref, findings, readings } = args;
  const task = taskOf(state, ref, rules);
  const needsSignature = rules?.needsSignature ?? task.needsSignature;
  const flags: Flag[] = [...flagsOfState(task, doer.personId)];
  if (!isKnownTask(state, ref, rules)) flags.push({ code: 'unknownTask' });
  if (rules && !rules.serviceStands) flags.push({ code: 'serviceCancelled' });
  const newlyDone = task.state !== 'done';
  if (rules && newlyDone) flags.push(...missingReadings(rules, readings));
  const dependents = rules && newlyDone ? reopenDependents(state, task.id, rules, '') : [];
  return {
    entries: [
      { body: { kind: 'done', task: ref, needsSignature, findings, readings }, flags },
      ...dependents,
    ],
  };
}

function flagsOfState(task: Task, by: string): Flag[] {
  if (task.doneBy !== null) return task.doneBy === by ? [] : [{ code: 'alsoDoneBy', personId: task.doneBy }];
  if (task.holder !== null && task.holder !== by) return [{ code: 'heldByAnother', personId: task.holder }];
  if (task.state === 'carriedOver') return [{ code: 'afterCarryOver' }];
  if (task.state === 'notNeeded') return [{ code: 'afterNotNeeded' }];
  return [];
}

function missingReadings(rules: TaskRules, readings: readonly Reading[]): Flag[] {
  return rules.requiredReadings
    .filter(
      (asked) => !readings.some((r) => r.readingId === asked.readingId && r.position === asked.position),
    )
    .map(({ readingId, position }) => ({ code: 'readingMissing', readingId, position }));
}
