import { outsideServiceIds } from '../full-starter/outside-service-ids';
import { triggersAmong } from '../full-starter/triggers-among';
import type { JobCard } from '../job-card';
import { cardIdsThatFit } from './card-ids-that-fit';
import type { Trigger } from './model';

type StarterOf = Pick<JobCard, 'id' | 'starterId'>;

/**
 * The triggers of the starter set with the ids of a car's own cards in place of the starter's. A card that was copied
 * stands for its starter card too, so one id may become several; what the car has no card for is left out. A new part
 * calls for its look whatever its card began as.
 *
 * @example
 * triggersForCards([{ id: 'c7', starterId: 'starter:bleed-brakes', fitsNewPart: false }])
 * // [{ kind: 'incident', id: 'soft-pedal', codes: ['softPedal'], times: 1, cardIds: ['c7'] }, …]
 */
export function triggersForCards(cards: readonly (StarterOf & Pick<JobCard, 'fitsNewPart'>)[]): Trigger[] {
  return triggersOf(cards, cardIdsThatFit(cards));
}

type JobDoneTrigger = Extract<Trigger, { kind: 'jobDone' }>;

/** Of those the ones that work on another card sets off. */
export function jobDoneTriggersForCards(cards: readonly StarterOf[]): JobDoneTrigger[] {
  return triggersOf(cards, []).filter((trigger): trigger is JobDoneTrigger => trigger.kind === 'jobDone');
}

function triggersOf(cards: readonly StarterOf[], fittedCardIds: readonly string[]): Trigger[] {
  const there = new Set(cards.flatMap(({ starterId }) => starterId ?? []));
  const own = (ids: readonly string[]) =>
    ids.flatMap((id) => cards.filter((card) => card.starterId === id).map((card) => card.id));
  return triggersAmong(there, fittedCardIds).map((trigger) => withIds(trigger, own));
}

/** Of a car's cards, those the crew can do outside service: the ones that began as such a starter card. */
export function crewCardIds(cards: readonly StarterOf[]): Set<string> {
  const doable = cards.filter(({ starterId }) => starterId !== null && outsideServiceIds.has(starterId));
  return new Set(doable.map((card) => card.id));
}

function withIds(trigger: Trigger, own: (ids: readonly string[]) => string[]): Trigger {
  switch (trigger.kind) {
    case 'incident':
    case 'temporaryRepair':
      return { ...trigger, cardIds: own(trigger.cardIds) };
    case 'jobDone':
      return { ...trigger, afterCardIds: own(trigger.afterCardIds), cardIds: own(trigger.cardIds) };
    case 'nextConditions':
      return { ...trigger, onCardIds: own(trigger.onCardIds), offCardIds: own(trigger.offCardIds) };
    case 'newlyFitted':
      return { ...trigger, cardIds: own(trigger.cardIds) };
  }
}
