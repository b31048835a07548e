import type { PushResult, pushedAction } from '@halfshaft/contract';
import type { MemberTx, Store } from '@halfshaft/store';
import {
  type Action,
  applyAll,
  changesOf,
  contentKey,
  type Doer,
  decide,
  flagInWords,
  numberEntries,
  type Outcome,
  refusalInWords,
  scopeOf,
  type TaskRules,
} from '@halfshaft/worklog';
import type { z } from 'zod';
import { unknown } from '../../errors';
import { mayManage, maySeeEvent } from '../people/ability';
import { mayRecordFor } from './ability';
import { checkAction } from './actions';
import {
  appendDrafts,
  findActionRecord,
  findEventName,
  findPersonName,
  findStoredAction,
  hashContent,
  inTeam,
  listLogEntries,
  loadSlice,
  lockLog,
  readLastSeq,
  saveChanges,
  storeAction,
} from './data';

export interface Push {
  teamId: string;
  userId: string;
  eventId: string;
  actions: z.infer<typeof pushedAction>[];
}

/**
 * Decides pushed actions in their device's order, each in a transaction of its own: one that is refused, or malformed,
 * never holds up the others.
 */
export async function push(store: Store, { teamId, userId, eventId, actions }: Push, now: () => number) {
  const results: PushResult[] = [];
  const inOrder = [...actions].sort((one, other) => one.deviceSeq - other.deviceSeq);
  for (const action of inOrder) {
    results.push(await inTeam(store, { teamId, userId }, (tx) => pushOne(tx, eventId, action, now())));
  }
  const lastSeq = await inTeam(store, { teamId, userId }, (tx) => readLastSeq(tx, eventId));
  return { results, lastSeq };
}

async function pushOne(
  tx: MemberTx,
  eventId: string,
  pushed: Push['actions'][number],
  now: number,
): Promise<PushResult> {
  const lastSeq = maySeeEvent(tx.member, eventId) ? await lockLog(tx, eventId) : null;
  if (lastSeq === null) throw unknown();
  const content = hashContent(`${eventId}\n${contentKey(pushed)}`);
  const stored = await findStoredAction(tx, pushed.actionId);
  if (stored)
    return stored.content === content
      ? { ...stored.result, repeated: true }
      : sameIdOtherContent(pushed.actionId);
  const result = await decideAndAppend(tx, eventId, pushed, now, async (accepted) => {
    await storeAction(tx, { ...pushed, eventId, content, result: accepted }, now);
  });
  return result;
}

/** `store` is called before anything is appended, since the log's entries point at their action. */
async function decideAndAppend(
  tx: MemberTx,
  eventId: string,
  pushed: Push['actions'][number],
  now: number,
  store: (result: PushResult) => Promise<void>,
): Promise<PushResult> {
  const checked = await checkAction(tx, eventId, pushed);
  if (!checked.ok) return refuse(pushed.actionId, checked.code, checked.sentence, null, store);
  const { action, rules } = checked;
  if (!mayRecordFor(action.kind, action.by, tx.member.personId)) {
    return refuse(
      pushed.actionId,
      'signForYourself',
      'A second signature can only be given by the person who signs.',
      null,
      store,
    );
  }
  const slice = await loadSlice(tx, eventId, await scopeFor(tx, eventId, action, rules));
  const outcome = decide(slice, action, doerOf(tx, action), rules);
  if (outcome.status === 'refused') return tellRefusal(tx, action.actionId, outcome, store);
  const firstSeq = (await readLastSeq(tx, eventId)) + 1;
  const result: PushResult = {
    actionId: action.actionId,
    status: 'accepted',
    code: null,
    sentence: await flagsInWords(tx, outcome),
    personId: null,
    repeated: false,
    seqs: outcome.entries.map((_, index) => firstSeq + index),
  };
  await store(result);
  const taken = await appendDrafts(tx, eventId, outcome.entries, now);
  if (taken !== firstSeq) throw new Error('push: the log moved although it was locked');
  const entries = numberEntries(outcome.entries, firstSeq, now);
  await saveChanges(tx, eventId, changesOf(slice, applyAll(slice, entries)));
  return result;
}

/** An undo's scope depends on what the action it undoes had touched. */
async function scopeFor(tx: MemberTx, eventId: string, action: Action, rules: TaskRules | null) {
  const first = scopeOf(action, rules);
  if (action.kind !== 'undo') return first;
  return scopeOf(action, rules, await findActionRecord(tx, eventId, action.args.actionId));
}

function doerOf({ member }: MemberTx, action: Action): Doer {
  return {
    personId: action.by,
    enteredBy: member.personId,
    mayManage: mayManage(member),
    revokedAt: member.revokedAt?.getTime() ?? null,
  };
}

async function tellRefusal(
  tx: MemberTx,
  actionId: string,
  outcome: Extract<Outcome, { status: 'refused' }>,
  store: (result: PushResult) => Promise<void>,
): Promise<PushResult> {
  const { refusal } = outcome;
  const personId = 'personId' in refusal ? refusal.personId : null;
  const name = personId ? await findPersonName(tx, personId) : null;
  return refuse(
    actionId,
    refusal.code,
    refusalInWords(refusal, () => name ?? 'Someone'),
    personId,
    store,
  );
}

async function flagsInWords(
  tx: MemberTx,
  outcome: Extract<Outcome, { status: 'accepted' }>,
): Promise<string> {
  const sentences: string[] = [];
  for (const flag of outcome.entries.flatMap((entry) => entry.flags)) {
    const name = 'personId' in flag ? await findPersonName(tx, flag.personId) : null;
    sentences.push(flagInWords(flag, () => name ?? 'Someone', String));
  }
  return sentences.length > 0 ? `Kept. Note: ${sentences.join('; ')}.` : 'Kept.';
}

async function refuse(
  actionId: string,
  code: string,
  sentence: string,
  personId: string | null,
  store: (result: PushResult) => Promise<void>,
): Promise<PushResult> {
  const result: PushResult = {
    actionId,
    status: 'refused',
    code,
    sentence,
    personId,
    repeated: false,
    seqs: [],
  };
  await store(result);
  return result;
}

/** Not stored: the id belongs to the action that came first. */
function sameIdOtherContent(actionId: string): PushResult {
  const sentence = 'This action id was used before for something else, so it was not taken. Do it once more.';
  return {
    actionId,
    status: 'refused',
    code: 'sameIdOtherContent',
    sentence,
    personId: null,
    repeated: false,
    seqs: [],
  };
}

/** A page of the log after `since`. */
export async function pull(tx: MemberTx, eventId: string, since: number) {
  if (!maySeeEvent(tx.member, eventId)) throw unknown();
  const entries = await listLogEntries(tx, eventId, since);
  const lastSeq = await readLastSeq(tx, eventId);
  return { entries, lastSeq };
}

/** Whether this account may watch this event. Throws `NotAMember` for a stranger to the team. */
export function mayWatch(
  store: Store,
  claim: { teamId: string; userId: string },
  eventId: string,
): Promise<boolean> {
  return inTeam(store, claim, async (tx) => {
    if (tx.member.revokedAt || !maySeeEvent(tx.member, eventId)) return false;
    return (await findEventName(tx, eventId)) !== null;
  });
}
