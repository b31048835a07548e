import fc from 'fast-check';
import { combineVerdicts } from '../combine-verdicts';
import { judgeService } from '../judge-service';
import type { LastDone, LifingCard, Verdict } from '../model';
import { card, randomQuestion } from '../random-questions/fixtures';
import { type SlowCall, slowCall } from '../slow-triggers/fixtures';
import { slowVerdict } from '../slow-wear/fixtures';
import { judgeTriggers } from '../triggers/judge-triggers';
import type { Fact, Trigger } from '../triggers/model';
import type { TriggersQuestion } from '../triggers/questions';

/** For tests only: random events with a log and triggers, and both answers in a shape that can be compared. */

export interface EventQuestion extends TriggersQuestion {
  lastDone: ReadonlyMap<string, LastDone>;
}

const IDS = ['a', 'b', 'c', 'd'];
const id = fc.constantFrom(...IDS);
const ids = fc.subarray(IDS, { minLength: 1, maxLength: 2 });

/** Places are drawn as shares of the way, since the event they belong to is drawn at the same time. */
const share = fc.integer({ min: 0, max: 999 });
type Drawn = {
  kind: Fact['kind'];
  code: 'off' | 'ford';
  cardId: string;
  share: number;
  later: number | null;
};
const drawnFact: fc.Arbitrary<Drawn> = fc.record({
  kind: fc.constantFrom<Fact['kind']>('incident', 'incident', 'done', 'done', 'fitted', 'temporaryRepair'),
  code: fc.constantFrom('off' as const, 'ford' as const),
  cardId: id,
  share,
  later: fc.option(share),
});

const trigger: fc.Arbitrary<Trigger> = fc.oneof(
  fc.record({
    kind: fc.constant('incident' as const),
    id: fc.constant('incident'),
    codes: fc.subarray(['off' as const, 'ford' as const], { minLength: 1 }),
    times: fc.integer({ min: 1, max: 3 }),
    cardIds: ids,
  }),
  fc.record({
    kind: fc.constant('jobDone' as const),
    id: fc.constant('jobDone'),
    afterCardIds: ids,
    cardIds: ids,
    where: fc.constantFrom('service' as const, 'service' as const, 'firstHalt' as const),
  }),
  fc
    .record({
      order: fc.shuffledSubarray(IDS, { minLength: 2, maxLength: 4 }),
      least: fc.constantFrom(1, 500, 900),
    })
    .chain(({ order, least }) =>
      fc.record({
        kind: fc.constant('nextConditions' as const),
        id: fc.constant('nextConditions'),
        condition: fc.constant('dust' as const),
        least: fc.constant(least),
        onCardIds: fc.constant(order.slice(0, Math.floor(order.length / 2))),
        offCardIds: fc.constant(order.slice(Math.floor(order.length / 2))),
        offWhen: fc.constantFrom('noneLeft' as const, 'noneBeforeNextChance' as const),
      }),
    ),
  fc.record({
    kind: fc.constant('newlyFitted' as const),
    id: fc.constant('newlyFitted'),
    fittedCardIds: ids,
    afterStages: fc.integer({ min: 1, max: 2 }),
    cardIds: ids,
  }),
  fc.record({
    kind: fc.constant('temporaryRepair' as const),
    id: fc.constant('temporaryRepair'),
    cardIds: fc.subarray(IDS, { maxLength: 1 }),
  }),
);

export const randomEvent: fc.Arbitrary<EventQuestion> = fc
  .record({
    random: randomQuestion,
    cards: fc.array(card, { minLength: 4, maxLength: 4 }),
    drawn: fc.array(drawnFact, { maxLength: 12, size: 'max' }),
    triggers: fc.array(trigger, { minLength: 2, maxLength: 6, size: 'max' }),
    carriedSeconds: fc.integer({ min: 0, max: 900 }),
  })
  .map(({ random, cards, drawn, triggers, carriedSeconds }): EventQuestion => {
    const { card: _card, lastDone: _done, ...service } = random.question;
    const points = service.itinerary.points.length;
    const facts = drawn.map((each) => factOf(each, points));
    const named = cards.map((each, index): LifingCard => ({ ...each, id: IDS[index] ?? 'none' }));
    const here = service.services[service.serviceIndex]?.inIndex ?? 0;
    const carried = { ...random.question.lastDone.carried, engineSeconds: carriedSeconds };
    const lastDone = new Map(named.map((each) => [each.id, lastDoneOf(each.id, facts, here, carried)]));
    return { ...service, cards: named, facts, triggers, lastDone };
  });

function factOf({ kind, code, cardId, share: place, later }: Drawn, points: number): Fact {
  const at = (share: number) => Math.floor((share * points) / 1000);
  const pointIndex = at(place);
  switch (kind) {
    case 'incident':
      return { kind, code, pointIndex };
    case 'temporaryRepair':
      return { kind, cardId, words: 'tape', pointIndex, madeGoodAt: later === null ? null : at(later) };
    default:
      return { kind, cardId, pointIndex };
  }
}

export function lastDoneOf(
  cardId: string,
  facts: readonly Fact[],
  here: number,
  carried: Partial<Record<string, number>>,
): LastDone {
  const done = facts.filter(
    (fact) => fact.kind === 'done' && fact.cardId === cardId && fact.pointIndex <= here,
  );
  if (done.length === 0) return { pointIndex: null, carried };
  return { pointIndex: Math.max(...done.map((fact) => fact.pointIndex)), carried: null };
}

export interface Answer {
  cardId: string;
  verdict: Verdict;
  overdue: boolean;
  doableHere: boolean;
  /** Triggers that call for the card, in their order. */
  calledBy: string[];
  /** Limits of its intervals with the wear here and where it must last to. */
  limits: string[];
}

export function quickAnswers(question: EventQuestion): Answer[] {
  const combined = combineVerdicts({
    intervals: judgeService(question),
    triggers: judgeTriggers(question),
  });
  return question.cards.map(({ id: cardId }) => {
    const found = combined.find((each) => each.cardId === cardId);
    if (found === undefined) throw new Error(`no verdict of ${cardId}`);
    const { verdict, overdue, doableHere, reasons } = found;
    const calledBy = reasons.flatMap((each) =>
      each.source === 'trigger' && each.reason.code !== 'notHere' ? [each.reason.triggerId] : [],
    );
    const limits = reasons.flatMap(({ source, reason }) =>
      source === 'interval' && reason.counter !== null
        ? [`${reason.counter} ${reason.limit} ${reason.wearNow} ${reason.wearAtNextChance}`]
        : [],
    );
    return { cardId, verdict, overdue, doableHere, calledBy: calledBy.sort(), limits: limits.sort() };
  });
}

export function slowAnswers(question: EventQuestion): Answer[] {
  return question.cards.map((each) => {
    const lastDone = question.lastDone.get(each.id) ?? { pointIndex: null, carried: {} };
    const byLimits = slowVerdict({ ...question, card: each, lastDone });
    const calls: (SlowCall & { id: string })[] = [];
    for (const one of question.triggers) {
      const call = slowCall(one, each, question);
      if (call !== null) calls.push({ ...call, id: one.id });
    }
    const { doableHere, limits } = byLimits;
    const called: Verdict = calls.length > 0 && doableHere ? 'doNow' : 'leave';
    return {
      cardId: each.id,
      verdict: called === 'doNow' ? 'doNow' : byLimits.verdict,
      overdue: byLimits.overdue || calls.some((call) => call.late),
      doableHere,
      calledBy: calls.map((call) => call.id).sort(),
      limits,
    };
  });
}
