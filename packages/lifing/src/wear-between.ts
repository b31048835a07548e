import { type RouteSegment, segmentsBetween } from '@halfshaft/itinerary';
import { addCounters, COUNTER_NAMES, emptyCounters, wholeUnits } from './counters';
import type { Counters } from './model';
import type { WearQuestion } from './questions';
import { isChanceAt, segmentWear } from './segment-wear';
import { requireWholeNumber } from './whole-number';

/**
 * Wear of a card on every counter from when it was last done to the arrival at a point, in whole units, cut.
 *
 * Wear is the sum over the route of counter × conditions of the card. Conditions multiply what happens on stages
 * (pieces, metres, engine seconds) and never road metres, services, days or events; of the total metres only the
 * stage part is multiplied. What was driven wins over what is planned.
 *
 * What a counter counts here:
 * - services: arrivals at a service where the card can be done (length and kind), the arrival at `toIndex` included;
 * - days: starts of a leg; the start of the event is one for a card done before it;
 * - events: only what was carried; nothing is added inside an event, the one who closes it adds one.
 *
 * @throws RangeError when `toIndex` lies outside the itinerary or before the card was last done, or when a carried
 * amount is not a whole number
 * @example
 * wearBetween({ ...knowledge, card, lastDone: { pointIndex: null, carried: { stageMetres: 12000 } }, toIndex: 7 })
 */
export function wearBetween(question: WearQuestion): Counters {
  const { itinerary, lastDone, toIndex } = question;
  const fromIndex = lastDone.pointIndex ?? 0;
  requireWholeNumber('wearBetween', 'toIndex', toIndex);
  requireWholeNumber('wearBetween', 'the point the card was last done at', fromIndex);
  if (toIndex >= itinerary.points.length) {
    throw new RangeError(`wearBetween: there is no point ${toIndex} in the itinerary.`);
  }
  if (toIndex < fromIndex) {
    throw new RangeError(
      `wearBetween: the card was last done at point ${fromIndex}, after point ${toIndex}.`,
    );
  }
  return wearAlong(segmentsBetween(itinerary, fromIndex, toIndex), question);
}

/** The same over segments at hand, in driving order and beginning where the card was last done. */
export function wearAlong(
  segments: readonly RouteSegment[],
  question: Omit<WearQuestion, 'toIndex' | 'itinerary'>,
): Counters {
  const gained = segments.map((segment) => segmentWear(segment, question));
  return wholeUnits(gained.reduce(addCounters, startingWear(question)));
}

/** Wear at the point the count begins, in thousandths: what was carried, and the arrival at the event's first point. */
export function startingWear(question: Omit<WearQuestion, 'toIndex' | 'itinerary'>): Counters {
  const wear = emptyCounters();
  if (question.lastDone.pointIndex !== null) return wear;
  for (const name of COUNTER_NAMES) {
    const carried = question.lastDone.carried[name] ?? 0;
    requireWholeNumber('wearBetween', `the carried amount of ${name}`, carried);
    wear[name] = carried * 1000;
  }
  wear.days += 1000;
  if (isChanceAt(0, question)) wear.services += 1000;
  return wear;
}
