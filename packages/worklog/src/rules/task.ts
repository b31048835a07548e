import type { Doer, TaskRules } from '../model';
import type { WorkState } from '../state';
import { taskOf } from '../task-of';
import { ruleOnCloseTask } from './close-task';
import { isKnownTask } from './is-known-task';
import { ruleOnLeaveTask } from './leave-task';
import { ruleOnReleaseTask } from './release-task';
import { ruleOnReopenTask } from './reopen-task';
import { type Ruling, refuse, type TaskActionBody } from './ruling';
import { ruleOnSignTask } from './sign-task';
import { ruleOnTakeTask } from './take-task';

/** Sends an action about a task to its rule, after what all claims have in common. */
export function ruleOnTask(
  state: WorkState,
  action: TaskActionBody,
  doer: Doer,
  rules: TaskRules | null,
): Ruling {
  const ref = action.args.task;
  const task = taskOf(state, ref, rules);
  if (action.kind === 'closeTask') return ruleOnCloseTask(state, action.args, doer, rules);
  if (!rules || !isKnownTask(state, ref, rules)) {
    return refuse({ code: ref.source.kind === 'snag' ? 'unknownSnag' : 'unknownTask' });
  }
  const claim = { state, task, rules, doer };
  if (action.kind === 'releaseTask') return ruleOnReleaseTask(claim);
  if (action.kind === 'signTask') return ruleOnSignTask(claim, action.args);
  if (!rules.serviceStands) return refuse({ code: 'serviceCancelled' });
  switch (action.kind) {
    case 'takeTask':
    case 'startTask':
      return ruleOnTakeTask(claim, action.kind);
    case 'carryOverTask':
    case 'dropTask':
      return ruleOnLeaveTask(claim, action.kind, action.args.reason);
    case 'reopenTask':
      return ruleOnReopenTask(claim, action.args.reason);
  }
}
