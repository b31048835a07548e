import type { JobCard } from '../job-card';
import { type Gauge, gaugesOf } from './gauges-of';
import { judgeGauges, type ReadingsQuestion } from './judge-gauges';
import type { PartEvent, ReadingVerdict } from './model';
import { isWhenNew } from './series-of';
import { verdictOfPlaces } from './verdict-of-places';

/**
 * What the readings say of a car's cards at a service: one verdict for each card that a reading speaks of, in the order
 * of the cards. A reading speaks of the card that puts it right, with the worst place ruling.
 *
 * - wear: the last value less the most it is expected to lose to the next service where the card can be done
 *   (`wearRate`), against its limit. Readings are parted by new parts, and compared within an axle, a surface and a
 *   compound only;
 * - level, set value, passed or failed: out of order as it was last read, until it is read again or the card is done;
 * - topped up: too much on 100 stage km;
 * - hint: nothing. Nothing either where there is too little to go by: the card's own limits go on ruling.
 *
 * What was read here counts. That the card itself was done here does not: what was due stays due and shows as done.
 *
 * @throws RangeError for a service that does not exist
 * @example
 * judgeReadings({ ...knowledge, serviceIndex: 1, position: 1, cards, history, surface: 'gravel' })[0]?.reasons[0]?.words
 * // "Pad thickness FL: 4.1 mm at Service A, 2.3 expected at Service C, limit 3.0: won't last"
 */
export function judgeReadings(question: ReadingsQuestion): ReadingVerdict[] {
  const gauges = gaugesOf(question.cards);
  return question.cards.flatMap((card) => {
    const own = gauges.filter(({ remedy }) => remedy.id === card.id);
    const history = question.history.filter((event) => !isChangeHere(event, card, own, question));
    const judged = judgeGauges({ ...question, history }, own);
    const verdict = verdictOfPlaces(
      judged.flatMap((each) => each.judged),
      { ...question, card },
    );
    return verdict === null ? [] : [verdict];
  });
}

/** The card's own work at this service, and what it read of the new parts. */
function isChangeHere(
  event: PartEvent,
  card: JobCard,
  gauges: readonly Gauge[],
  { services, serviceIndex }: ReadingsQuestion,
): boolean {
  if (event.pointIndex !== services[serviceIndex]?.inIndex) return false;
  if (event.kind === 'done') return event.cardId === card.id;
  return event.kind === 'read' && event.cardId === card.id && gauges.some((gauge) => isWhenNew(event, gauge));
}
