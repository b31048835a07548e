import type { ServiceId, ServiceWindow } from '@halfshaft/itinerary';
import { canBeDoneAt } from '../can-be-done-at';
import { nameOfService, notHereInWords } from '../name-of-service';
import { nextChance } from '../next-chance';
import type { CardQuestion } from '../questions';
import { wearBetween } from '../wear-between';
import type { ReadingReason, ReadingVerdict, WearReading, WearSpec } from './model';
import { figuresOf, placeOfReading, valueInWords } from './value-in-words';
import { ownReadings, type WearRate, wearRate } from './wear-rate';

/** A place that is read, and what its readings may be compared with. */
export interface PlaceRead {
  position: string | null;
  group: string;
  part: string;
}

export interface PredictLimitQuestion extends CardQuestion {
  /** The reading that limits the card; `card` is the one that puts it right (pads: change), `lastDone` when it was. */
  spec: WearSpec;
  readings: readonly WearReading[];
  places: readonly PlaceRead[];
  cardRate: number | null;
  marginPerMille?: number;
  serviceName?: (id: ServiceId) => string;
}

/**
 * Whether what wears reaches the next service where it can be put right, place by place: due now when one does not,
 * or is past its limit already; the worst place first. Only the lower limit counts where there is one, else the upper.
 *
 * `wornMetres` of the readings must count from `lastDone` of the card, as `wearBetween` does. Null when the reading
 * has no limit, or nothing was read.
 *
 * @throws RangeError for a service that does not exist, and as `wearBetween` and `wearRate` do
 * @example
 * predictLimit({ ...question, card: frontPads, spec: pads, readings, places, cardRate: 60 })?.reasons[0]?.words
 * // "Pads FL: 6.2 mm, loses up to 1.9 a loop, limit 3.0: won't reach Service C"
 */
export function predictLimit(question: PredictLimitQuestion): ReadingVerdict | null {
  const here = serviceJudged(question);
  const next = nextChance(question.card, question.services, question.serviceIndex);
  const bound = limitOf(question.spec);
  if (bound === null) return null;
  const judged = question.places
    .flatMap((place) => judgePlace(place, bound, next, question))
    .sort((first, second) => first.roomLeft - second.roomLeft);
  const worst = judged[0];
  if (worst === undefined) return null;
  const bad = judged.filter(({ reason }) => isDue(reason));
  const doableHere = canBeDoneAt(question.card, here);
  const reasons = (bad.length > 0 ? bad : [worst]).map((each) => each.reason);
  return {
    cardId: question.card.id,
    verdict: bad.length > 0 && doableHere ? 'doNow' : 'leave',
    doableHere,
    overdue: judged.some(({ reason }) => reason.code === 'outOfOrder'),
    reasons: doableHere ? reasons : [notHere(next, question), ...reasons],
  };
}

interface Bound {
  direction: 'down' | 'up';
  limit: number;
}

interface JudgedPlace {
  reason: ReadingReason;
  /** Expected at the next chance, negative when it does not last. */
  roomLeft: number;
}

function serviceJudged({ services, serviceIndex }: PredictLimitQuestion): ServiceWindow {
  const service = services[serviceIndex];
  if (service === undefined) {
    throw new RangeError(
      `predictLimit: there is no service at index ${serviceIndex}; the event has ${services.length}.`,
    );
  }
  return service;
}

function limitOf({ low, high }: WearSpec): Bound | null {
  if (low !== null) return { direction: 'down', limit: low };
  return high === null ? null : { direction: 'up', limit: high };
}

function judgePlace(
  place: PlaceRead,
  { direction, limit }: Bound,
  next: ServiceWindow | null,
  question: PredictLimitQuestion,
): JudgedPlace[] {
  const rateQuestion = { ...question, ...place, direction, aheadMetres: 0 };
  const last = ownReadings(rateQuestion).at(-1);
  if (last === undefined) return [];
  const stretches = wornAtStops(question, next).map((worn) => Math.max(0, worn - last.wornMetres));
  const rateOver = (aheadMetres: number) => wearRate({ ...rateQuestion, aheadMetres });
  const whole = rateOver(stretches.at(-1) ?? 0);
  const room = direction === 'down' ? last.value - limit : limit - last.value;
  const lossAhead = whole?.lossAhead ?? null;
  const roomLeft = lossAhead === null ? room : room - lossAhead;
  const reason: ReadingReason = {
    code: codeOf(room, lossAhead),
    readingId: question.spec.id,
    position: place.position,
    value: last.value,
    limit,
    lossAhead,
    nextChance: next?.id ?? null,
    words: '',
  };
  const aLoop = longestStretch(stretches);
  return [{ roomLeft, reason: { ...reason, words: inWords(reason, rateOver(aLoop), question) } }];
}

function codeOf(room: number, lossAhead: number | null): ReadingReason['code'] {
  if (room < 0) return 'outOfOrder';
  if (lossAhead === null) return 'notKnown';
  return room - lossAhead < 0 ? 'wearsOut' : 'holds';
}

function isDue({ code }: ReadingReason): boolean {
  return code === 'outOfOrder' || code === 'wearsOut';
}

/** Stage metres on the part on arrival here, at each service on the way, and where it must last to. */
function wornAtStops(question: PredictLimitQuestion, next: ServiceWindow | null): number[] {
  const { services, serviceIndex, itinerary } = question;
  const endIndex = next?.inIndex ?? itinerary.points.length - 1;
  const onTheWay = services.slice(serviceIndex).filter((service) => service.inIndex < endIndex);
  return [...onTheWay.map((service) => service.inIndex), endIndex].map(
    (toIndex) => wearBetween({ ...question, toIndex }).stageMetres,
  );
}

function longestStretch(stretches: readonly number[]): number {
  return stretches.reduce((most, end, index) => Math.max(most, end - (stretches[index - 1] ?? end)), 0);
}

function inWords(reason: ReadingReason, aLoop: WearRate | null, question: PredictLimitQuestion): string {
  const { spec, serviceName } = question;
  const { position, value, limit, nextChance: nextId, code } = reason;
  const place = placeOfReading(spec, position);
  const read = `${place}: ${valueInWords(spec, value ?? 0)}`;
  const bounded = `limit ${figuresOf(spec, limit ?? 0)}`;
  const next = nextId === null ? 'the finish' : nameOfService(nextId, serviceName);
  const changes = spec.low === null ? 'grows by' : 'loses';
  const loses = `${changes} up to ${figuresOf(spec, aLoop?.lossAhead ?? 0)} a loop`;
  switch (code) {
    case 'outOfOrder':
      return `${read}, past its ${bounded}`;
    case 'wearsOut':
      return `${read}, ${loses}, ${bounded}: won't reach ${next}`;
    case 'holds':
      return `${read}, ${loses}, ${bounded}: lasts to ${next}`;
    default:
      return `${read}, ${bounded}: not known how fast it wears`;
  }
}

function notHere(next: ServiceWindow | null, question: PredictLimitQuestion): ReadingReason {
  return {
    code: 'notHere',
    readingId: question.spec.id,
    position: null,
    value: null,
    limit: null,
    lossAhead: null,
    nextChance: next?.id ?? null,
    words: notHereInWords(next, question.serviceName),
  };
}
