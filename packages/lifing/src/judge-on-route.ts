import { dueAt, type ServiceWindow } from '@halfshaft/itinerary';
import { canBeDoneAt } from './can-be-done-at';
import { type Horizon, horizonOf } from './horizon';
import { judgeDateLimit } from './judge-date-limit';
import { judgeInterval } from './judge-interval';
import { compareUrgency, type JudgedLimit } from './judged-limit';
import type { CardVerdict, Counters, VerdictReason } from './model';
import type { RoutedCard, RoutedQuestion } from './questions';
import { wearAlong } from './wear-between';
import { requireWholeNumber } from './whole-number';

/** `judgeCard`, with the route worked out by the caller. */
export function judgeOnRoute(question: RoutedQuestion): CardVerdict {
  const { card } = question;
  const service = serviceJudged(question);
  requireDoneBefore(question, service);
  const horizon = horizonOf(question);
  const doableHere = canBeDoneAt(card, service);
  const doneHere = question.lastDone.pointIndex === service.inIndex;
  const judged = judgeLimits(question, service.inIndex, horizon, doneHere).sort(compareUrgency);
  const reasons = judged.map((each) => each.reason);
  return {
    cardId: card.id,
    verdict: doableHere && !doneHere ? (judged[0]?.verdict ?? 'leave') : 'leave',
    doableHere,
    overdue: judged.some((each) => each.overdue),
    reasons: doableHere ? reasons : [bareReason('notHere', horizon), ...reasons],
  };
}

function serviceJudged({ services, serviceIndex }: RoutedQuestion): ServiceWindow {
  const service = services[serviceIndex];
  if (service === undefined) {
    throw new RangeError(
      `judgeCard: there is no service at index ${serviceIndex}; the event has ${services.length}.`,
    );
  }
  return service;
}

function requireDoneBefore({ card, lastDone }: RoutedQuestion, service: ServiceWindow): void {
  if (lastDone.pointIndex === null) return;
  requireWholeNumber('judgeCard', `the point ${card.id} was last done at`, lastDone.pointIndex);
  if (lastDone.pointIndex > service.inIndex) {
    throw new RangeError(
      `judgeCard: ${card.id} was last done at point ${lastDone.pointIndex}, after Service ${service.id}.`,
    );
  }
}

/** What each limit of the card says at a point of the route, in the order of the card. */
export function judgeLimits(
  question: RoutedCard,
  pointIndex: number,
  horizon: Horizon,
  doneHere: boolean,
): JudgedLimit[] {
  const { card, itinerary, position } = question;
  const wear = {
    now: wearOnArrival(question, pointIndex),
    atHorizon: wearOnArrival(question, horizon.pointIndex),
  };
  const judged = card.intervals.map((interval) => judgeInterval(interval, wear, horizon, question));
  if (card.dateLimit !== null && !doneHere) {
    const now = dueAt(itinerary, pointIndex, position);
    judged.push(judgeDateLimit(card.dateLimit, now, horizon, question));
  }
  if (judged.length > 0) return judged;
  return [{ verdict: 'leave', overdue: false, reason: bareReason('lasts', horizon) }];
}

/** Wear on every counter on arrival at a point, from when the card was last done. */
export function wearOnArrival(question: RoutedCard, toIndex: number): Counters {
  const fromIndex = question.lastDone.pointIndex ?? 0;
  const driven = question.steps
    .map((step) => step.segment)
    .filter((segment) => segment.fromIndex >= fromIndex && segment.toIndex <= toIndex);
  return wearAlong(driven, question);
}

function bareReason(code: VerdictReason['code'], horizon: Horizon): VerdictReason {
  return {
    code,
    counter: null,
    limit: null,
    wearNow: null,
    wearAtNextChance: null,
    nextChance: horizon.serviceId,
    passedAt: null,
  };
}
