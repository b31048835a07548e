import type { ServiceId } from '@halfshaft/itinerary';
import { nameOfService } from '../name-of-service';
import { nextChance } from '../next-chance';
import type { ServiceQuestion } from '../questions';
import { wearBetween } from '../wear-between';
import type { Gauge } from './gauges-of';
import { judgeConsumption } from './judge-consumption';
import type { JudgedPlace } from './judge-place';
import { judgeReading } from './judge-reading';
import type { PartEvent, PositionValue } from './model';
import type { Series, SeriesReading } from './series-of';

interface LastValues {
  gauge: Gauge;
  series: readonly Series[];
  history: readonly PartEvent[];
}

interface LastQuestion extends ServiceQuestion {
  serviceName?: (id: ServiceId) => string;
}

/**
 * What has no trend is held against its limits as it was last read: a level, a set value, passed or failed. The worst
 * place rules. Once the card was done again, a value from before no longer counts. A hint says nothing. What was topped
 * up is judged by the stage km it was used on, since the one before or since the start of the event.
 */
export function judgeLastValues(
  { gauge, series, history }: LastValues,
  question: LastQuestion,
): JudgedPlace[] {
  const doneAt = history.findLast((event) => event.kind === 'done' && event.cardId === gauge.card.id);
  const last = series.flatMap(({ position, readings }): LastRead[] => {
    const reading = readings.at(-1);
    if (reading === undefined || reading.pointIndex < (doneAt?.pointIndex ?? 0)) return [];
    return [{ position, reading, before: readings.at(-2) ?? null }];
  });
  const first = last[0];
  if (first === undefined) return [];
  const found = gauge.isToppedUp ? toppedUp(gauge, first, question) : outOfLimits(gauge, last);
  return found === null ? [] : [judgedPlace(gauge, found, question)];
}

interface LastRead extends Pick<Series, 'position'> {
  reading: SeriesReading;
  before: SeriesReading | null;
}

interface Found extends PositionValue {
  words: string;
  limit: number | null;
  room: number;
  serviceId: ServiceId;
}

function outOfLimits({ spec }: Gauge, last: readonly LastRead[]): Found | null {
  const values = last.map(({ position, reading }) => ({ position, value: reading.value }));
  const judged = judgeReading(spec, values);
  if (judged === null || !judged.counts || judged.state === 'inOrder') return null;
  const { worstPosition: position, worstValue: value, words, state } = judged;
  const limit = state === 'low' ? spec.low : spec.high;
  const serviceId = last.find((each) => each.position === position)?.reading.serviceId ?? '';
  return { position, value, words, limit, serviceId, room: -Math.abs(value - (limit ?? 1)) };
}

function toppedUp(
  { spec, card }: Gauge,
  { position, reading, before }: LastRead,
  question: LastQuestion,
): Found | null {
  const { value, pointIndex, serviceId } = reading;
  if (spec.high === null || value < 0) return null;
  const since = before === null ? null : before.pointIndex;
  const lastDone = since === null ? { pointIndex: null, carried: {} } : { pointIndex: since, carried: null };
  // Driven metres as they are: what a card's conditions do to wear, they do not do to thirst.
  const plain = { ...card, conditionFactors: {} };
  const { stageMetres } = wearBetween({ ...question, card: plain, lastDone, toIndex: pointIndex });
  const used = judgeConsumption({ spec, added: value, stageMetres, limit: spec.high });
  if (used.state !== 'high') return null;
  const room = spec.high - (used.perHundredKilometres ?? 0);
  return { position, value, words: used.words, limit: spec.high, room, serviceId };
}

function judgedPlace({ card, spec }: Gauge, found: Found, question: LastQuestion): JudgedPlace {
  const { services, serviceIndex, serviceName } = question;
  const { position, value, limit, words, serviceId } = found;
  const isHere = serviceId === services[serviceIndex]?.id;
  return {
    roomLeft: found.room,
    reason: {
      code: 'outOfOrder',
      readingId: spec.id,
      position,
      value,
      limit,
      lossAhead: null,
      expected: null,
      nextChance: nextChance(card, services, serviceIndex)?.id ?? null,
      words: isHere ? words : `${words}, read at ${nameOfService(serviceId, serviceName)}`,
    },
  };
}
