import { comparePassing } from './judged-limit';
import type { CardVerdict, Verdict, VerdictReason } from './model';
import type { ReadingReason, ReadingVerdict } from './readings/model';
import type { TriggerReason, TriggerVerdict } from './triggers/model';

/** One reason, and where it comes from. */
export type CombinedReason =
  | { source: 'interval'; reason: VerdictReason }
  | { source: 'trigger'; reason: TriggerReason }
  | { source: 'reading'; reason: ReadingReason };

export interface CombinedVerdict {
  cardId: string;
  verdict: Verdict;
  doableHere: boolean;
  overdue: boolean;
  reasons: CombinedReason[];
}

type AnyVerdict = CardVerdict | TriggerVerdict | ReadingVerdict;
type Code = CombinedReason['reason']['code'];

const VERDICT_ORDER: readonly Verdict[] = ['doNow', 'ifTime', 'leave'];
/** What happened comes before what is to come, and what is nearer to harm before what is a precaution. */
const CODE_ORDER: readonly Code[] = [
  'incident',
  'temporaryRepair',
  'outOfOrder',
  'past',
  'jobDone',
  'conditionAhead',
  'wearsOut',
  'wontReach',
  'dateFalls',
  'newlyFitted',
  'conditionOver',
  'withinTolerance',
  'holds',
  'reaches',
  'lasts',
  'notKnown',
  'notHere',
];
const ASKS_FOR: Partial<Record<Code, Verdict>> = { withinTolerance: 'ifTime' };
const ASKS_FOR_NOTHING: readonly Code[] = ['holds', 'reaches', 'lasts', 'notKnown', 'notHere'];

/**
 * One verdict for each card out of what its intervals, the triggers and its readings say: the worst wins, and every
 * reason is listed, the most pressing first. That a card cannot be done here stands before all of them, once.
 *
 * Cards stand as `judgeService` has them, the most pressing first: by verdict, then what is overdue, then by the first
 * reason; equal ones keep the order they came in.
 *
 * @example
 * combineVerdicts({ intervals: judgeService(question), triggers: judgeTriggers(question) })[0]?.reasons[0]
 */
export function combineVerdicts({
  intervals,
  triggers = [],
  readings = [],
}: {
  intervals: readonly CardVerdict[];
  triggers?: readonly TriggerVerdict[];
  readings?: readonly ReadingVerdict[];
}): CombinedVerdict[] {
  const cardIds = new Set([...intervals, ...triggers, ...readings].map((verdict) => verdict.cardId));
  return [...cardIds]
    .map((cardId) =>
      combine(cardId, [
        ...verdictsOf(cardId, 'interval', intervals),
        ...verdictsOf(cardId, 'trigger', triggers),
        ...verdictsOf(cardId, 'reading', readings),
      ]),
    )
    .map((verdict) => ({ verdict, lead: leadOf(verdict) }))
    .sort(
      (first, second) =>
        compareVerdicts(first.verdict, second.verdict) || compareLeads(first.lead, second.lead),
    )
    .map((each) => each.verdict);
}

interface Sourced {
  source: CombinedReason['source'];
  verdict: AnyVerdict;
}

function verdictsOf(cardId: string, source: Sourced['source'], all: readonly AnyVerdict[]): Sourced[] {
  return all.filter((verdict) => verdict.cardId === cardId).map((verdict) => ({ source, verdict }));
}

function combine(cardId: string, said: readonly Sourced[]): CombinedVerdict {
  const verdicts = said.map((each) => each.verdict);
  const doableHere = verdicts.every((each) => each.doableHere);
  const worst = VERDICT_ORDER.find((verdict) => verdicts.some((each) => each.verdict === verdict)) ?? 'leave';
  return {
    cardId,
    verdict: doableHere ? worst : 'leave',
    doableHere,
    overdue: verdicts.some((each) => each.overdue),
    reasons: reasonsOf(said),
  };
}

function reasonsOf(said: readonly Sourced[]): CombinedReason[] {
  const all = said.flatMap(({ source, verdict }) =>
    verdict.reasons.map((reason) => ({
      // The source says which of the three shapes the reason has.
      each: { source, reason } as CombinedReason,
      asksFor: verdict.verdict === 'leave' ? 'leave' : asksFor(reason.code),
    })),
  );
  const notHere = all.filter(({ each }) => each.reason.code === 'notHere').slice(0, 1);
  const others = all
    .filter(({ each }) => each.reason.code !== 'notHere')
    .sort(
      (first, second) =>
        VERDICT_ORDER.indexOf(first.asksFor) - VERDICT_ORDER.indexOf(second.asksFor) ||
        // Limits of one card come in their own order already, and stay in it.
        compareCodes(first.each, second.each),
    );
  return [...notHere, ...others].map(({ each }) => each);
}

function asksFor(code: Code): Verdict {
  return ASKS_FOR_NOTHING.includes(code) ? 'leave' : (ASKS_FOR[code] ?? 'doNow');
}

function compareVerdicts(first: CombinedVerdict, second: CombinedVerdict): number {
  return (
    VERDICT_ORDER.indexOf(first.verdict) - VERDICT_ORDER.indexOf(second.verdict) ||
    Number(second.overdue) - Number(first.overdue)
  );
}

/** A card ranks by its most pressing reason; that it cannot be done here says nothing of how pressing it is. */
function leadOf({ cardId, reasons }: CombinedVerdict): CombinedReason {
  const lead = reasons.find((each) => each.reason.code !== 'notHere');
  if (lead === undefined) throw new Error(`combineVerdicts: the verdict of ${cardId} came without a reason.`);
  return lead;
}

function compareLeads(first: CombinedReason, second: CombinedReason): number {
  const byCode = compareCodes(first, second);
  if (byCode !== 0 || first.source !== 'interval' || second.source !== 'interval') return byCode;
  return comparePassing(first.reason, second.reason);
}

function compareCodes(first: CombinedReason, second: CombinedReason): number {
  return CODE_ORDER.indexOf(first.reason.code) - CODE_ORDER.indexOf(second.reason.code);
}
