import type { PushResult, pushedAction } from '@halfshaft/contract';
import type { Itinerary } from '@halfshaft/itinerary';
import type { MemberTx, Store, TeamTx } from '@halfshaft/store';
import {
  type Action,
  applyAll,
  changesOf,
  contentKey,
  type Doer,
  decide,
  type Flag,
  flagInWords,
  type LogEntry,
  mayRecordFor,
  numberEntries,
  type Refusal,
  refusalInWords,
  scopeOf,
  type TaskRules,
  type WorkState,
} from '@halfshaft/worklog';
import type { z } from 'zod';
import { AppError, unknown } from '../../errors';
import { mayManage, maySeeEvent } from '../people/ability';
import { type Facts, factsOf, idsIn, refusalOf, rulesFor, type ShapedAction, shapeAction } from './actions';
import {
  appendToLog,
  findEventName,
  findNames,
  forMembers,
  hashContent,
  inTeam,
  listLogEntries,
  loadKnown,
  loadSlice,
  lockLog,
  readLastSeq,
  saveChanges,
  storeActions,
} from './data';

type Pushed = z.infer<typeof pushedAction>;

export interface Push {
  teamId: string;
  userId: string;
  eventId: string;
  /** Who entered them, where the phone says so. */
  enteredBy?: string | undefined;
  actions: Pushed[];
}

/**
 * So many actions share a transaction. More would mean fewer round trips; fewer, that nobody's single tap waits long while
 * a phone that was out of coverage hands in its backlog.
 */
const ACTIONS_AT_ONCE = 25;

/**
 * Decides pushed actions in their device's order, a few in each transaction. A refused or malformed one is answered like
 * the others and never holds them up; an unexpected error takes back its whole transaction, so a repeat starts afresh.
 */
export async function push(
  store: Store,
  { teamId, userId, eventId, enteredBy, actions }: Push,
  now: () => number,
) {
  const results: PushResult[] = [];
  const inOrder = [...actions].sort((one, other) => one.deviceSeq - other.deviceSeq);
  let lastSeq = 0;
  for (let from = 0; from < inOrder.length; from += ACTIONS_AT_ONCE) {
    const some = inOrder.slice(from, from + ACTIONS_AT_ONCE);
    const answer = await inTeam(store, { teamId, userId }, (tx) => {
      refuseOthers(tx, enteredBy);
      return pushSome(tx, eventId, some, now());
    });
    results.push(...answer.results);
    lastSeq = answer.lastSeq;
  }
  return { results, lastSeq };
}

/** A phone may be shared: what one person entered on it is not taken under the sign-in of the next. */
function refuseOthers({ member }: MemberTx, enteredBy: string | undefined): void {
  if (enteredBy === undefined || enteredBy === member.personId) return;
  throw new AppError('notAllowed', 'Someone else entered this. It waits until that person signs in here.');
}

/** What became of one pushed action, before it is put into words. */
type Ruling =
  /** Pushed before: in an earlier request, or as the action in this place of the same one. */
  | { kind: 'stored'; result: PushResult }
  | { kind: 'repeats'; place: number }
  | { kind: 'sameIdOtherContent' }
  | { kind: 'refused'; code: string; sentence: string }
  | { kind: 'refusal'; refusal: Refusal }
  | { kind: 'accepted'; entries: LogEntry[] };

/** An action as it reached this server, and what is known of how. */
export interface Arrival {
  pushed: Pushed;
  /** A check sum of what was pushed. */
  content: string;
  doer: Doer;
  /** From the log of another server: whether the service stood there when it was done, and who brought it in. */
  carried?: { serviceStood: boolean; broughtBy: string };
}

interface Shaped extends Arrival {
  shape: ShapedAction;
}

async function pushSome(tx: MemberTx, eventId: string, some: Pushed[], now: number) {
  const lockedSeq = maySeeEvent(tx.member, eventId) ? await lockLog(tx, eventId) : null;
  if (lockedSeq === null) throw unknown();
  const arrivals = some.map((pushed) => ({
    pushed,
    content: contentOf(eventId, pushed),
    doer: {
      personId: pushed.by,
      enteredBy: tx.member.personId,
      mayManage: mayManage(tx.member),
      revokedAt: tx.member.revokedAt?.getTime() ?? null,
    },
  }));
  return decideArrivals(tx, { eventId, lockedSeq, now }, arrivals);
}

/** A check sum that is equal exactly when the event and all that was pushed are. */
export function contentOf(eventId: string, pushed: Pushed): string {
  return hashContent(`${eventId}\n${contentKey(pushed)}`);
}

interface LockedLog {
  eventId: string;
  lockedSeq: number;
  now: number;
  /** Places that another server's itinerary had when something was done there. */
  places?: Itinerary[];
}

/** For callers that hold the log's lock. Load everything, decide in memory, save everything. */
export async function decideArrivals(
  tx: TeamTx,
  { eventId, lockedSeq, now, places = [] }: LockedLog,
  arrivals: Arrival[],
) {
  const shaped = arrivals.map((arrival) => ({ ...arrival, shape: shapeAction(arrival.pushed) }));
  const good = shaped.flatMap(({ shape, carried }) =>
    shape.ok && shape.ours ? [{ action: shape.action, carried }] : [],
  );
  const actions = good.map(({ action }) => action);
  const ids = { ...idsIn(actions), actions: arrivals.map(({ pushed }) => pushed.actionId) };
  const facts = factsOf(await loadKnown(tx, eventId, ids), places);
  const before = await loadSlice(
    tx,
    eventId,
    good.map(({ action, carried }) => scopeFor(facts, action, carried)),
  );
  const { rulings, after, lastSeq } = decideInOrder({ facts, now }, shaped, before, lockedSeq);
  const results = inWords(shaped, rulings, await findNames(tx, peopleIn(rulings)));
  const fresh = shaped.flatMap(({ pushed, content }, place) => {
    const result = results[place];
    return result && isFresh(rulings[place]) ? [{ ...pushed, content, result }] : [];
  });
  await storeActions(tx, eventId, fresh, now);
  const entries = rulings.flatMap((ruling) => (ruling.kind === 'accepted' ? ruling.entries : []));
  await appendToLog(tx, eventId, entries, now);
  await saveChanges(tx, eventId, changesOf(before, after));
  return { results, lastSeq };
}

/** Of a service that an amendment dropped later, what was done at it on another server was done while it stood. */
function rulesOf(facts: Facts, action: Action, carried: Arrival['carried']): TaskRules | null {
  const rules = rulesFor(facts, action);
  return rules && carried ? { ...rules, serviceStands: carried.serviceStood } : rules;
}

/** What an undo touches stands in the record of the action it undoes. */
function scopeFor(facts: Facts, action: Action, carried: Arrival['carried']) {
  const record = action.kind === 'undo' ? facts.records.get(action.args.actionId) : undefined;
  return scopeOf(action, rulesOf(facts, action, carried), record ?? null);
}

interface Deciding {
  facts: Facts;
  now: number;
}

/** Each action is decided on what those before it in the same request left behind. */
function decideInOrder(deciding: Deciding, shaped: Shaped[], before: WorkState, lockedSeq: number) {
  const rulings: Ruling[] = [];
  let after = before;
  let lastSeq = lockedSeq;
  for (const [place, each] of shaped.entries()) {
    const ruling = rulingOnRepeat(deciding.facts, shaped, place) ?? rule(deciding, each, after, lastSeq + 1);
    if (ruling.kind === 'accepted') {
      after = applyAll(after, ruling.entries);
      lastSeq += ruling.entries.length;
    }
    rulings.push(ruling);
  }
  return { rulings, after, lastSeq };
}

function rulingOnRepeat(facts: Facts, shaped: Shaped[], place: number): Ruling | null {
  const each = shaped[place];
  if (!each) return null;
  const { actionId } = each.pushed;
  const stored = facts.stored.get(actionId);
  const first = shaped.findIndex(({ pushed }) => pushed.actionId === actionId);
  if (!stored && first === place) return null;
  if ((stored ?? shaped[first])?.content !== each.content) return { kind: 'sameIdOtherContent' };
  return stored ? { kind: 'stored', result: stored.result } : { kind: 'repeats', place: first };
}

function rule({ facts, now }: Deciding, arrival: Shaped, state: WorkState, firstSeq: number): Ruling {
  const { shape, doer, carried } = arrival;
  if (!shape.ok) return { kind: 'refused', code: shape.code, sentence: shape.sentence };
  const { action, ours } = shape;
  const wrong = ours ? refusalOf(facts, state, action) : null;
  if (wrong) return { kind: 'refused', code: wrong.code, sentence: wrong.sentence };
  if (ours && !mayRecordFor(action, doer.enteredBy)) {
    const sentence = 'A second signature can only be given by the person who signs, on the phone or in ink.';
    return { kind: 'refused', code: 'signForYourself', sentence };
  }
  const outcome = decide(state, action, doer, ours ? rulesOf(facts, action, carried) : null);
  if (outcome.status === 'refused') return { kind: 'refusal', refusal: outcome.refusal };
  const mark: Flag[] = carried ? [{ code: 'broughtIn', personId: carried.broughtBy }] : [];
  const drafts = outcome.entries.map((entry) => ({ ...entry, flags: [...entry.flags, ...mark] }));
  return { kind: 'accepted', entries: numberEntries(drafts, firstSeq, now) };
}

/** To be stored: the first answer to an id. */
function isFresh(ruling: Ruling | undefined): boolean {
  return ruling?.kind === 'refused' || ruling?.kind === 'refusal' || ruling?.kind === 'accepted';
}

/** Whom the sentences will name. */
function peopleIn(rulings: Ruling[]): string[] {
  return rulings.flatMap((ruling) => {
    if (ruling.kind === 'refusal') return 'personId' in ruling.refusal ? [ruling.refusal.personId] : [];
    if (ruling.kind !== 'accepted') return [];
    const flags = ruling.entries.flatMap((entry) => entry.flags);
    return flags.flatMap((flag) => ('personId' in flag ? [flag.personId] : []));
  });
}

function inWords(shaped: Shaped[], rulings: Ruling[], names: ReadonlyMap<string, string>): PushResult[] {
  const nameOf = (personId: string) => names.get(personId) ?? 'Someone';
  const results: PushResult[] = [];
  for (const [place, { pushed }] of shaped.entries()) {
    const ruling = rulings[place];
    const first = ruling?.kind === 'repeats' ? results[ruling.place] : undefined;
    if (first) results.push({ ...first, repeated: true });
    else if (ruling) results.push(resultOf(pushed.actionId, ruling, nameOf));
  }
  return results;
}

const SAME_ID_OTHER_CONTENT =
  'This action id was used before for something else, so it was not taken. Do it once more.';

function resultOf(actionId: string, ruling: Ruling, nameOf: (personId: string) => string): PushResult {
  const refused = { actionId, status: 'refused' as const, personId: null, repeated: false, seqs: [] };
  switch (ruling.kind) {
    case 'stored':
      return { ...ruling.result, repeated: true };
    case 'refused':
      return { ...refused, code: ruling.code, sentence: ruling.sentence };
    case 'refusal': {
      const { refusal } = ruling;
      const personId = 'personId' in refusal ? refusal.personId : null;
      return { ...refused, code: refusal.code, sentence: refusalInWords(refusal, nameOf), personId };
    }
    case 'accepted': {
      const sentence = flagsInWords(ruling.entries, nameOf);
      const seqs = ruling.entries.map((entry) => entry.seq);
      return { actionId, status: 'accepted', code: null, sentence, personId: null, repeated: false, seqs };
    }
    default:
      return { ...refused, code: 'sameIdOtherContent', sentence: SAME_ID_OTHER_CONTENT };
  }
}

function flagsInWords(entries: LogEntry[], nameOf: (personId: string) => string): string {
  const sentences = entries.flatMap((entry) => entry.flags.map((flag) => flagInWords(flag, nameOf, String)));
  return sentences.length > 0 ? `Kept. Note: ${sentences.join('; ')}.` : 'Kept.';
}

/** A page of the log after `since`. */
export async function pull(tx: MemberTx, eventId: string, since: number) {
  if (!maySeeEvent(tx.member, eventId) || (await findEventName(tx, eventId)) === null) throw unknown();
  const entries = await listLogEntries(tx, eventId, since);
  const lastSeq = await readLastSeq(tx, eventId);
  return { entries, lastSeq };
}

/** What the log has after a seq, and which accounts may know it now. */
export interface LogNews {
  entries: readonly LogEntry[];
  watchers: ReadonlySet<string>;
}

/** More new entries than this are pulled and not told by the stream. */
const MOST_TOLD = 50;

/**
 * What the log of an event has after `since`, and which of these accounts may know it now: one look for all who watch. Without
 * entries when they are more than a stream should carry: then each asks page by page. Null when none belongs to the team.
 */
export function readNews(
  store: Store,
  { teamId, eventId }: { teamId: string; eventId: string },
  userIds: readonly string[],
  since: number,
): Promise<LogNews | null> {
  return forMembers(store, { teamId, userIds }, async (tx, members) => {
    const may = members.filter((member) => maySeeEvent(member, eventId));
    const entries = may.length > 0 ? await listLogEntries(tx, eventId, since, MOST_TOLD + 1) : [];
    return {
      entries: entries.length > MOST_TOLD ? [] : entries,
      watchers: new Set(may.map(({ userId }) => userId)),
    };
  });
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
