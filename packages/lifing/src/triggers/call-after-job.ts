import type { ServiceWindow } from '@halfshaft/itinerary';
import { factsOf, isDoneAfter } from './facts';
import type { Trigger } from './model';
import { placeInWords } from './place-in-words';
import type { Call, CalledQuestion } from './questions';

/**
 * At a service: due from when the other card was done until this one is done after it. By the crew: due from the
 * next point on, up to the next service, where others take over.
 */
export function callAfterJob(
  trigger: Extract<Trigger, { kind: 'jobDone' }>,
  question: CalledQuestion,
): Call | null {
  const { card, facts, pointIndex, at, cards } = question;
  if (!trigger.cardIds.includes(card.id)) return null;
  if ((trigger.where === 'firstHalt') !== (at === 'road')) return null;
  const open = factsOf(facts, 'done', pointIndex).filter(
    (done) =>
      trigger.afterCardIds.includes(done.fact.cardId) &&
      done.fact.cardId !== card.id &&
      (trigger.where === 'service' || isOnTheWayFrom(done.fact.pointIndex, question)) &&
      !isDoneAfter(facts, card.id, done, pointIndex),
  );
  const first = open[0];
  const last = open.at(-1);
  if (first === undefined || last === undefined) return null;
  const name = cards.find((each) => each.id === last.fact.cardId)?.name ?? 'other work';
  return {
    code: 'jobDone',
    pointIndex: last.fact.pointIndex,
    dueFrom: first.fact.pointIndex,
    wantedBeforeNextChance: false,
    words: `follows "${name}", done ${placeInWords(question, last.fact.pointIndex)}`,
  };
}

/** After the service (or the place on the road) where work was done, and no other service in between. */
function isOnTheWayFrom(doneAt: number, { services, pointIndex }: CalledQuestion): boolean {
  const within = services.find((service) => service.inIndex <= doneAt && doneAt < service.outIndex);
  const leftAt = within?.outIndex ?? doneAt;
  return pointIndex > leftAt && !services.some((service) => isBetween(service, doneAt, pointIndex));
}

function isBetween({ inIndex }: ServiceWindow, after: number, upTo: number): boolean {
  return inIndex > after && inIndex <= upTo;
}
