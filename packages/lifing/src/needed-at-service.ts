import { judgeService } from './judge-service';
import type { CardVerdict, LastDone, LifingCard } from './model';
import { neededPersonSeconds } from './needed-person-seconds';
import type { CardsQuestion } from './questions';

export interface NeededAtService {
  /** Of what is due now there, in person-seconds. */
  doNowPersonSeconds: number;
  /** Of what may be done there if there is time. */
  ifTimePersonSeconds: number;
  doNowIds: string[];
  ifTimeIds: string[];
}

/**
 * The work that counters bring up at a service if everything that is due at the services before it gets done there
 * and nothing more. What triggers call for comes on top; it is not ordinary.
 *
 * @throws RangeError as `judgeCard` does
 * @example
 * neededAtService({ ...knowledge, serviceIndex: 1, position: 1, cards, lastDone: new Map() }).doNowPersonSeconds
 */
export function neededAtService(question: CardsQuestion): NeededAtService {
  const verdicts = judgeService({ ...question, lastDone: doneOnTheWay(question) });
  const doNowIds = idsWith(verdicts, 'doNow');
  const ifTimeIds = idsWith(verdicts, 'ifTime');
  return {
    doNowPersonSeconds: personSecondsOf(question.cards, doNowIds),
    ifTimePersonSeconds: personSecondsOf(question.cards, ifTimeIds),
    doNowIds,
    ifTimeIds,
  };
}

/**
 * When each card was last done on arrival at a service, if everything that was due at the services before it was done
 * there and nothing more.
 *
 * @throws RangeError as `judgeCard` does
 * @example
 * judgeService({ ...question, lastDone: doneOnTheWay(question) })
 */
export function doneOnTheWay(question: CardsQuestion): Map<string, LastDone> {
  const lastDone = new Map(question.lastDone);
  question.services.slice(0, question.serviceIndex).forEach(({ inIndex }, serviceIndex) => {
    for (const cardId of idsWith(judgeService({ ...question, serviceIndex, lastDone }), 'doNow')) {
      lastDone.set(cardId, { pointIndex: inIndex, carried: null });
    }
  });
  return lastDone;
}

function idsWith(verdicts: readonly CardVerdict[], verdict: CardVerdict['verdict']): string[] {
  return verdicts.filter((each) => each.verdict === verdict).map((each) => each.cardId);
}

function personSecondsOf(cards: readonly LifingCard[], ids: readonly string[]): number {
  return neededPersonSeconds(cards.filter((card) => ids.includes(card.id)));
}
