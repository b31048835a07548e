import { dueAt, type ServiceId, type ServiceWindow } from '@halfshaft/itinerary';
import { canBeDoneAt } from './can-be-done-at';
import { type CombinedVerdict, combineVerdicts } from './combine-verdicts';
import type { JobCard } from './job-card';
import { judgeLimits } from './judge-on-route';
import { compareUrgency } from './judged-limit';
import type { CardVerdict, LastDone, LifingCard } from './model';
import type { CardsQuestion } from './questions';
import { routeSteps } from './route-steps';
import { callOf } from './triggers/call-of';
import type { Fact, Trigger, TriggerVerdict } from './triggers/model';
import { reasonOf } from './triggers/reason-of';
import { requireWholeNumber } from './whole-number';

export interface CrewQuestion extends Omit<CardsQuestion, 'serviceIndex' | 'cards'> {
  /** The point the car is at, or has last left. */
  pointIndex: number;
  cards: readonly Pick<JobCard, keyof LifingCard | 'tools'>[];
  triggers: readonly Trigger[];
  facts: readonly Fact[];
  /** Cards the crew can do: `outsideServiceIds`, or a team's own. */
  doableIds: ReadonlySet<string>;
  /** What is aboard the car, by the names the cards use; left out when everything is taken to be. */
  toolsAboard?: ReadonlySet<string>;
  serviceName?: (id: ServiceId) => string;
}

export interface CrewJob extends CombinedVerdict {
  /** Tools the card asks for that are not aboard. */
  missingTools: string[];
}

/**
 * What the two of the crew should do on a road section or at a halt outside service: cards they can do that a counter
 * or a trigger makes due there, the most pressing first, what lacks a tool last. A counter makes due what is past its
 * limit, or will be before the next service where the card can be done; passing a halt counts for no "every service".
 *
 * Empty inside service (from its in-control up to its out-control): there the service crew has the list.
 *
 * @throws RangeError when there is no such point, or a card was last done after it
 * @example
 * crewListOutside({ ...knowledge, pointIndex: 8, position: 1, cards, lastDone, triggers, facts, doableIds: outsideServiceIds })
 */
export function crewListOutside(question: CrewQuestion): CrewJob[] {
  const { pointIndex, services, doableIds, toolsAboard } = question;
  requirePoint(question);
  if (services.some((service) => service.inIndex <= pointIndex && pointIndex < service.outIndex)) return [];
  const cards = question.cards.filter((card) => doableIds.has(card.id));
  const tools = new Map(cards.map((card) => [card.id, card.tools]));
  const jobs = combineVerdicts({
    intervals: judgeOnRoad(question, cards),
    triggers: callsOnRoad(question, cards),
  })
    .filter((verdict) => verdict.verdict !== 'leave')
    .map((verdict) => ({
      ...verdict,
      missingTools: (tools.get(verdict.cardId) ?? []).filter((tool) => toolsAboard?.has(tool) === false),
    }));
  return [
    ...jobs.filter((job) => job.missingTools.length === 0),
    ...jobs.filter((job) => job.missingTools.length > 0),
  ];
}

function requirePoint({ pointIndex, itinerary, cards, lastDone }: CrewQuestion): void {
  requireWholeNumber('crewListOutside', 'pointIndex', pointIndex);
  if (pointIndex >= itinerary.points.length) {
    throw new RangeError(`crewListOutside: there is no point ${pointIndex} in the itinerary.`);
  }
  const later = cards.find((card) => (lastDone.get(card.id)?.pointIndex ?? 0) > pointIndex);
  if (later !== undefined) {
    throw new RangeError(`crewListOutside: ${later.id} was last done after point ${pointIndex}.`);
  }
}

function judgeOnRoad(question: CrewQuestion, cards: readonly LifingCard[]): CardVerdict[] {
  const { pointIndex, itinerary, position } = question;
  const steps = routeSteps(itinerary, position);
  return cards.map((card) => {
    const lastDone: LastDone = question.lastDone.get(card.id) ?? { pointIndex: null, carried: {} };
    const next = nextServiceFor(card, question);
    const endIndex = next?.inIndex ?? itinerary.points.length - 1;
    const horizon = {
      serviceId: next?.id ?? null,
      pointIndex: endIndex,
      at: dueAt(itinerary, endIndex, position),
    };
    const doneHere = lastDone.pointIndex === pointIndex;
    const judged = judgeLimits({ ...question, card, lastDone, steps }, pointIndex, horizon, doneHere);
    judged.sort(compareUrgency);
    return {
      cardId: card.id,
      verdict: doneHere ? 'leave' : (judged[0]?.verdict ?? 'leave'),
      doableHere: true,
      overdue: judged.some((each) => each.overdue),
      reasons: judged.map((each) => each.reason),
    };
  });
}

function callsOnRoad(question: CrewQuestion, cards: readonly LifingCard[]): TriggerVerdict[] {
  const { services, pointIndex, triggers } = question;
  const laterFrom = services.filter((service) => service.inIndex <= pointIndex).length;
  return cards.flatMap((card) => {
    const next = nextServiceFor(card, question)?.id ?? null;
    const reasons = triggers.flatMap((trigger) => {
      const call = callOf(trigger, { ...question, card, laterFrom, at: 'road' });
      return call === null ? [] : [reasonOf(call, trigger.id, next, question)];
    });
    if (reasons.length === 0) return [];
    return [{ cardId: card.id, verdict: 'doNow', doableHere: true, overdue: false, reasons }];
  });
}

function nextServiceFor(card: LifingCard, { services, pointIndex }: CrewQuestion): ServiceWindow | undefined {
  return services.find((service) => service.inIndex > pointIndex && canBeDoneAt(card, service));
}
