import { judgeOnRoute } from './judge-on-route';
import { compareUrgency, type JudgedLimit } from './judged-limit';
import type { CardVerdict, LastDone } from './model';
import type { CardsQuestion } from './questions';
import { routeSteps } from './route-steps';

const DONE_JUST_BEFORE_THE_EVENT: LastDone = { pointIndex: null, carried: {} };

/**
 * The verdicts of all cards of a car at one service: do now first, the most urgent on top, then if time, then leave.
 * Cards that are equally urgent keep the order they were given in. Each card is judged on its own: what was done to
 * another one changes nothing here.
 *
 * @throws RangeError as `judgeCard` does
 * @example
 * judgeService({ ...knowledge, serviceIndex: 0, position: 1, cards, lastDone: new Map() }).map((each) => each.verdict)
 */
export function judgeService(question: CardsQuestion): CardVerdict[] {
  const steps = routeSteps(question.itinerary, question.position);
  return question.cards
    .map((card) => {
      const lastDone = question.lastDone.get(card.id) ?? DONE_JUST_BEFORE_THE_EVENT;
      return judgeOnRoute({ ...question, steps, card, lastDone });
    })
    .map((verdict) => ({ verdict, lead: leadOf(verdict) }))
    .sort((first, second) => compareUrgency(first.lead, second.lead))
    .map((each) => each.verdict);
}

/** A card ranks by its most pressing limit; that it cannot be done here says nothing of how pressing it is. */
function leadOf({ verdict, overdue, reasons }: CardVerdict): JudgedLimit {
  const reason = reasons.find((each) => each.code !== 'notHere');
  if (reason === undefined) throw new Error('judgeService: a verdict came without a reason.');
  return { verdict, overdue, reason };
}
