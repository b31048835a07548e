import { judgeOnRoute } from './judge-on-route';
import type { CardVerdict } from './model';
import type { CardQuestion } from './questions';
import { routeSteps } from './route-steps';

/**
 * Whether a card must be done at a service, may be, or can wait, and why.
 *
 * Each limit is judged on arrival here and on arrival at the next later service where the card can be done, or at the
 * end of the event when there is none. The worst limit decides; reasons stand most pressing first.
 * - do now: the limit is reached already, or will be passed by more than its tolerance before the next chance, or the
 *   calendar date falls before it;
 * - if time: it will be passed, within its tolerance;
 * - leave: it lasts to the next chance; or the card cannot be done here (`doableHere` false, first reason `notHere`);
 *   or it was done at this very service, when doing it again would change nothing. A limit that even the fresh work
 *   will not keep then still stands in the reasons as `wontReach`.
 *
 * `overdue` is true when a limit is passed already by more than its tolerance, also where the card cannot be done.
 * A calendar date rules until the card is given its next one, except at the service where the card was just done.
 *
 * @throws RangeError for a service that does not exist, an interval below 1, a negative or fractional amount, or a
 * card last done after this service
 * @example
 * judgeCard({ ...knowledge, serviceIndex: 1, position: 14, card, lastDone: { pointIndex: 1, carried: null } }).verdict
 */
export function judgeCard(question: CardQuestion): CardVerdict {
  return judgeOnRoute({ ...question, steps: routeSteps(question.itinerary, question.position) });
}
