import type { ServiceWindow } from '@halfshaft/itinerary';
import { canBeDoneAt } from '../can-be-done-at';
import type { LifingCard } from '../model';
import { notHereInWords } from '../name-of-service';
import { nextChance } from '../next-chance';
import { callOf } from './call-of';
import type { TriggerReason, TriggerVerdict } from './model';
import type { Call, TriggersQuestion } from './questions';
import { reasonOf } from './reason-of';

/**
 * What happened, what was done and what lies ahead, as it makes cards due at a service beside their intervals. One
 * verdict for each card that is called for, in the order of the cards; none for the rest.
 *
 * - an incident: due at the next service where the card can be done, until it is done after the incident;
 * - a job done: its follower is due at that service, or the next one where it can be done;
 * - conditions ahead: on at the last usable service before such a stage, off at the first usable one when it is over;
 * - newly fitted: a look once it has been driven for a stage;
 * - temporary repair: a look at every service until it is made good.
 *
 * `overdue` is true when a service where the card could have been done has gone by since it fell due, and when it
 * cannot be done here although the stage it is for comes before the next chance. A trigger or a fact that names a
 * card the car does not have says nothing.
 *
 * @throws RangeError for a service that does not exist, or a fact at a point that does not
 * @example
 * judgeTriggers({ ...knowledge, serviceIndex: 1, position: 1, cards, triggers: starterTriggers('four', 'gravel'),
 *   facts: [{ kind: 'incident', code: 'softPedal', pointIndex: 5 }] })
 * // [{ cardId: 'starter:bleed-brakes', verdict: 'doNow', doableHere: true, overdue: false,
 * //    reasons: [{ code: 'incident', words: 'soft brake pedal on SS2', … }] }]
 */
export function judgeTriggers(question: TriggersQuestion): TriggerVerdict[] {
  const { services, serviceIndex, cards } = question;
  const service = services[serviceIndex];
  if (service === undefined) {
    throw new RangeError(
      `judgeTriggers: there is no service at index ${serviceIndex}; the event has ${services.length}.`,
    );
  }
  requirePoints(question);
  return cards.flatMap((card) => verdictOf(card, service, question));
}

function requirePoints({ facts, itinerary }: TriggersQuestion): void {
  for (const { pointIndex } of facts) {
    if (itinerary.points[pointIndex] === undefined) {
      throw new RangeError(`judgeTriggers: there is no point ${pointIndex} in the itinerary.`);
    }
  }
}

function verdictOf(card: LifingCard, service: ServiceWindow, question: TriggersQuestion): TriggerVerdict[] {
  const called = {
    ...question,
    card,
    pointIndex: service.inIndex,
    laterFrom: question.serviceIndex + 1,
    at: 'service' as const,
  };
  const next = nextChance(card, question.services, question.serviceIndex);
  const calls: Call[] = [];
  const reasons: TriggerReason[] = [];
  for (const trigger of question.triggers) {
    const call = callOf(trigger, called);
    if (call === null) continue;
    calls.push(call);
    reasons.push(reasonOf(call, trigger.id, next?.id ?? null, question));
  }
  if (calls.length === 0) return [];
  const doableHere = canBeDoneAt(card, service);
  const overdue = calls.some(
    (call) => isMissed(call, card, service, question) || (call.wantedBeforeNextChance && !doableHere),
  );
  return [
    {
      cardId: card.id,
      verdict: doableHere ? 'doNow' : 'leave',
      doableHere,
      overdue,
      reasons: doableHere ? reasons : [notHere(next, question), ...reasons],
    },
  ];
}

/** A service where it could have been done lies between when it fell due and this one. */
function isMissed(
  call: Call,
  card: LifingCard,
  here: ServiceWindow,
  { services }: TriggersQuestion,
): boolean {
  return services.some(
    (service) =>
      service.inIndex >= call.dueFrom && service.inIndex < here.inIndex && canBeDoneAt(card, service),
  );
}

function notHere(next: ServiceWindow | null, question: TriggersQuestion): TriggerReason {
  return {
    code: 'notHere',
    triggerId: '',
    pointIndex: null,
    stageId: null,
    nextChance: next?.id ?? null,
    words: notHereInWords(next, question.serviceName),
  };
}
