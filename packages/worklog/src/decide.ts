import type { EntryDraft } from './entry';
import { isFact } from './is-fact';
import type { Action, Doer, Flag, PushedAction, TaskRules } from './model';
import type { Outcome } from './refusal';
import { ruleOnRaiseSnag } from './rules/raise-snag';
import { ruleOnRecordFact } from './rules/record-fact';
import { type Ruling, refuse } from './rules/ruling';
import { ruleOnTask } from './rules/task';
import { ruleOnUndo } from './rules/undo';
import type { WorkState } from './state';
import { upgradeAction } from './upgrade-action';

/**
 * What becomes of an action: entries for the log, or a named refusal. The same on a phone (at once, on what it
 * knows) and on the server (the truth). Changes nothing; `apply` the numbered entries to go on.
 *
 * Claims (take, release, start, carry over, drop, open again, sign, undo) may be refused. Facts (close, snag, stage,
 * control time, fact of the car) are always kept, at worst flagged.
 *
 * @param state the whole state, or the slice that `scopeOf` names
 * @param action of this version or the one before
 * @param doer of the person in `action.by`; another person is a programming error and throws
 * @param rules of the task the action is about; null when its card or snag is not known, or it is about no task
 *
 * @example
 * decide(state, takeNuts, mia, rules) // { status: 'refused', refusal: { code: 'heldByAnother', personId: 'kai' } }
 */
export function decide(state: WorkState, action: PushedAction, doer: Doer, rules: TaskRules | null): Outcome {
  if (doer.personId !== action.by) {
    throw new Error(`decide: the doer is ${doer.personId}, but the action is by ${action.by}.`);
  }
  const upgrade = upgradeAction(action);
  if (!upgrade.ok) return { status: 'refused', refusal: upgrade.refusal };
  const ruling = rule(state, upgrade.action, doer, rules);
  if ('refusal' in ruling) return { status: 'refused', refusal: ruling.refusal };
  return { status: 'accepted', entries: draftsOf(ruling.entries, upgrade.action, doer) };
}

function rule(state: WorkState, action: Action, doer: Doer, rules: TaskRules | null): Ruling {
  if (madeAfterRevocation(action, doer) && !isFact(action.kind)) return refuse({ code: 'revoked' });
  switch (action.kind) {
    case 'raiseSnag':
      return ruleOnRaiseSnag(state, action.args, action.by);
    case 'confirmStage':
      return { entries: [{ body: { kind: 'stageConfirmed', ...action.args } }] };
    case 'recordTime':
      return { entries: [{ body: { kind: 'timeRecorded', ...action.args } }] };
    case 'recordFact':
      return ruleOnRecordFact(state, action.args, action.by);
    case 'undo':
      return ruleOnUndo(state, action.args.actionId, doer);
    default:
      return ruleOnTask(state, action, doer, rules);
  }
}

function madeAfterRevocation(action: Action, doer: Doer): boolean {
  return doer.revokedAt !== null && action.deviceTime >= doer.revokedAt;
}

function draftsOf(
  entries: Extract<Ruling, { entries: unknown }>['entries'],
  action: Action,
  doer: Doer,
): EntryDraft[] {
  const { actionId, by, deviceId, deviceTime } = action;
  const late: Flag[] = doer.revokedAt === null ? [] : [{ code: 'afterRevocation' }];
  return entries.map(({ body, flags = [] }) => ({
    actionId,
    by,
    enteredBy: doer.enteredBy,
    deviceId,
    deviceTime,
    flags: [...flags, ...late],
    body,
  }));
}
