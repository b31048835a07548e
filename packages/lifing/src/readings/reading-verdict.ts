import type { ServiceId, ServiceWindow } from '@halfshaft/itinerary';
import { canBeDoneAt } from '../can-be-done-at';
import type { LifingCard } from '../model';
import { notHereInWords } from '../name-of-service';
import { nextChance } from '../next-chance';
import type { ReadingReason, ReadingVerdict } from './model';

interface VerdictQuestion {
  /** The card that puts it right. */
  card: LifingCard;
  services: readonly ServiceWindow[];
  serviceIndex: number;
  serviceName?: (id: ServiceId) => string;
}

/**
 * One verdict of a card out of what its readings say, the reasons given with the worst first: due now as soon as one of
 * them asks for it, and then only those are listed.
 *
 * @throws RangeError for a service that does not exist
 */
export function readingVerdict(
  reasons: readonly [ReadingReason, ...ReadingReason[]],
  question: VerdictQuestion,
): ReadingVerdict {
  const { card, services, serviceIndex } = question;
  const here = services[serviceIndex];
  if (here === undefined) {
    throw new RangeError(
      `readingVerdict: there is no service at index ${serviceIndex}; the event has ${services.length}.`,
    );
  }
  const due = reasons.filter(isDue);
  const doableHere = canBeDoneAt(card, here);
  const told = due.length > 0 ? due : [reasons[0]];
  return {
    cardId: card.id,
    verdict: due.length > 0 && doableHere ? 'doNow' : 'leave',
    doableHere,
    overdue: reasons.some(({ code }) => code === 'outOfOrder'),
    reasons: doableHere ? told : [notHere(reasons[0].readingId, question), ...told],
  };
}

export function isDue({ code }: ReadingReason): boolean {
  return code === 'outOfOrder' || code === 'wearsOut';
}

function notHere(
  readingId: string,
  { card, services, serviceIndex, serviceName }: VerdictQuestion,
): ReadingReason {
  const next = nextChance(card, services, serviceIndex);
  return {
    code: 'notHere',
    readingId,
    position: null,
    value: null,
    limit: null,
    lossAhead: null,
    expected: null,
    nextChance: next?.id ?? null,
    words: notHereInWords(next, serviceName),
  };
}
