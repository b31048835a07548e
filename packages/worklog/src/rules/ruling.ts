import type { EntryBody } from '../entry';
import type { ActionBody, Doer, Flag, Task, TaskRef, TaskRules } from '../model';
import type { Refusal } from '../refusal';
import type { WorkState } from '../state';

/** What a rule says of an action, before it is stamped with who, when and from which device. */
export type Ruling = { entries: { body: EntryBody; flags?: Flag[] }[] } | { refusal: Refusal };

/** Actions about one task. */
export type TaskActionBody = Extract<ActionBody, { args: { task: TaskRef } }>;

/** A claim on a task whose card or snag is known. */
export interface TaskClaim {
  state: WorkState;
  task: Task;
  rules: TaskRules;
  doer: Doer;
}

export function refuse(refusal: Refusal): { refusal: Refusal } {
  return { refusal };
}
