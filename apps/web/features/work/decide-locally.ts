import type { EventReplica } from '@halfshaft/contract';
import {
  type Action,
  type Doer,
  decide,
  type EntryDraft,
  mayRecordFor,
  type PersonId,
  type PushedAction,
  refusalInWords,
  type TaskRules,
  upgradeAction,
  type WorkState,
} from '@halfshaft/worklog';
import { checkArgs } from './check-args';
import { nameOf } from './names';
import { taskRulesOf } from './task-rules';

export type LocalOutcome = { ok: true; entries: EntryDraft[] } | { ok: false; sentence: string };

const GONE = 'That job is not on the list of this event. Look at the list again.';
const SIGN_YOURSELF = 'A second signature can only be given by the person who signs, on the phone or in ink.';

/**
 * What the server will say of an action, as far as this device can know. The same checks in the same order as there:
 * shape, a signature given by oneself or in ink, known task, then `decide`.
 */
export function decideLocally(state: WorkState, pushed: PushedAction, replica: EventReplica): LocalOutcome {
  const upgrade = upgradeAction(pushed);
  if (!upgrade.ok) return no(refusalInWords(upgrade.refusal, (id) => nameOf(replica, id)));
  const checked = checkArgs(upgrade.action.kind, upgrade.action.args);
  if (!checked.ok) return no(checked.sentence);
  const action = { ...upgrade.action, args: checked.args } as Action;
  if (!mayRecordFor(action, replica.me.personId)) return no(SIGN_YOURSELF);

  let rules: TaskRules | null = null;
  if ('task' in action.args) {
    rules = taskRulesOf(replica, state, action.args.task);
    if (!rules) return no(GONE);
  }
  const outcome = decide(state, action, doerOf(replica, action.by), rules);
  return outcome.status === 'accepted'
    ? { ok: true, entries: outcome.entries }
    : no(refusalInWords(outcome.refusal, (id) => nameOf(replica, id)));
}

/** The person an action is by, typed by whoever the session belongs to. */
export function doerOf(replica: EventReplica, personId: PersonId): Doer {
  const { me, people } = replica;
  const membership = people.find((person) => person.personId === me.personId)?.membership ?? null;
  const manages = me.role === 'admin' || me.role === 'manager';
  return {
    personId,
    enteredBy: me.personId,
    mayManage: manages && (membership?.eventId ?? null) === null,
    revokedAt: membership?.revokedAt ?? null,
  };
}

function no(sentence: string): LocalOutcome {
  return { ok: false, sentence };
}
