import type { ServiceId } from '@halfshaft/itinerary';
import type { JobCard, Surface } from '../job-card';
import type { LastDone } from '../model';
import type { CardsQuestion } from '../questions';
import { wearBetween } from '../wear-between';
import { type Gauge, gaugesOf } from './gauges-of';
import { judgeLastValues } from './judge-last-values';
import { type JudgedPlace, judgePlace } from './judge-place';
import type { PartEvent, WearReading } from './model';
import { type Series, seriesOf } from './series-of';
import { axleOfPosition, wearGroup } from './wear-group';

export interface ReadingsQuestion extends Omit<CardsQuestion, 'cards' | 'lastDone'> {
  cards: readonly JobCard[];
  /** What the log tells of this car's parts; what lies behind the service that is judged does not count. */
  history: readonly PartEvent[];
  /** Values of two surfaces are never compared. */
  surface: Surface;
  /** On top of the worst so far, per mille; 1200 unless told otherwise. */
  marginPerMille?: number;
  serviceName?: (id: ServiceId) => string;
}

/** One reading of one card, and what was read at each place. */
export interface ReadGauge {
  gauge: Gauge;
  series: Series[];
}

/** The same, and what that says. */
export interface JudgedGauge extends ReadGauge {
  /** The places there is something to say of. */
  judged: JudgedPlace[];
}

/**
 * Every reading of a car's cards as it stands at a service, the work done there included.
 *
 * @param gauges of these only; those that one card puts right stand or fall together
 * @throws RangeError for a service that does not exist
 * @example
 * judgeGauges(question).find(({ gauge }) => gauge.spec.id === 'pads')?.series[0]?.readings.at(-1)?.value // 41
 */
export function judgeGauges(
  question: ReadingsQuestion,
  gauges: readonly Gauge[] = gaugesOf(question.cards),
): JudgedGauge[] {
  const history = historyUntil(question);
  const read = readIn(history, gauges);
  return read.map(({ gauge, series }) => {
    if (gauge.spec.kind !== 'wear') {
      return { gauge, series, judged: judgeLastValues({ gauge, series, history }, question) };
    }
    const pool = read
      .filter((other) => isAlike(other.gauge, gauge))
      .flatMap((each) => wearReadings(each, question));
    return { gauge, series, judged: series.flatMap((place) => judgeWear(place, gauge, pool, question)) };
  });
}

/**
 * What was read of a car's cards up to a service, the work done there included, without judging it.
 *
 * @throws RangeError for a service that does not exist
 * @example
 * readGauges(question)[0]?.series[0]?.readings.at(-1)?.value // 41
 */
export function readGauges(question: ReadingsQuestion): ReadGauge[] {
  return readIn(historyUntil(question), gaugesOf(question.cards));
}

function readIn(history: readonly PartEvent[], gauges: readonly Gauge[]): ReadGauge[] {
  return gauges.map((gauge) => ({ gauge, series: seriesOf(gauge, history) }));
}

function historyUntil({ history, services, serviceIndex }: ReadingsQuestion): PartEvent[] {
  const here = services[serviceIndex]?.inIndex;
  if (here === undefined) {
    throw new RangeError(`judgeReadings: there is no service at index ${serviceIndex}.`);
  }
  return history.filter(({ pointIndex }) => pointIndex <= here);
}

/** Readings that one thing explains: the pads of both front corners, read on two rounds. */
function isAlike(one: Gauge, other: Gauge): boolean {
  const [first, second] = [one.spec, other.spec];
  const isSame =
    first.name === second.name && first.unit === second.unit && first.decimals === second.decimals;
  return one.remedy.id === other.remedy.id && isSame;
}

function wearReadings(
  { gauge, series }: Pick<JudgedGauge, 'gauge' | 'series'>,
  question: ReadingsQuestion,
): WearReading[] {
  return series.flatMap(({ position, readings }) =>
    readings.map(({ value, part, since, pointIndex, serviceId, compound }) => ({
      position,
      value,
      group: groupOf(position, compound, question),
      part: String(part),
      wornMetres: wornBetween(since, pointIndex, gauge, question),
      readAt: serviceId,
    })),
  );
}

function judgeWear(
  { position, part, since, compound }: Series,
  { remedy, spec }: Gauge,
  readings: readonly WearReading[],
  question: ReadingsQuestion,
): JudgedPlace[] {
  const lastDone = lastDoneAt(since);
  const place = {
    position,
    part: String(part),
    group: groupOf(position, compound, question),
    since: lastDone,
  };
  const judged = judgePlace(place, { ...question, card: remedy, lastDone, spec, readings, cardRate: null });
  return judged === null ? [] : [judged];
}

function groupOf(position: string | null, compound: string, { surface }: ReadingsQuestion): string {
  const axle = position === null ? null : axleOfPosition(position);
  // What sits at no wheel is like nothing but itself.
  return axle === null ? `at ${position ?? ''}|${surface}` : wearGroup({ axle, surface, compound });
}

function wornBetween(
  since: number | null,
  toIndex: number,
  { remedy }: Gauge,
  question: ReadingsQuestion,
): number {
  return wearBetween({ ...question, card: remedy, lastDone: lastDoneAt(since), toIndex }).stageMetres;
}

/** What was driven before the event cancels out: only what lies between readings is asked for. */
function lastDoneAt(since: number | null): LastDone {
  return since === null ? { pointIndex: null, carried: {} } : { pointIndex: since, carried: null };
}
