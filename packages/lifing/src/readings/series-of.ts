import type { ServiceId } from '@halfshaft/itinerary';
import { isAtPosition, wheelOf } from '../positions-of-card';
import type { Gauge } from './gauges-of';
import type { PartEvent } from './model';

/** One value of one place. */
export interface SeriesReading {
  value: number;
  serviceId: ServiceId;
  pointIndex: number;
  /** 0 for the part that was on when the event began, one more with each new one. */
  part: number;
  /** The point its part went on at; null: before the event. */
  since: number | null;
  /** Of the tyre it was read on; empty for anything else. */
  compound: string;
}

/** What one place of a gauge has gone through. */
export interface Series {
  position: string | null;
  /** In the order in which they were read. */
  readings: SeriesReading[];
  /** The part that is on now; it may not have been read yet. */
  part: number;
  since: number | null;
  compound: string;
}

/**
 * The readings of each place of a gauge, parted wherever a new part went on. The value read when a new part is fitted is
 * the first of its own; what a round read at that same service is the last of the old part, whichever of the two was
 * closed first. Where nothing is read on fitting, the log's order parts them.
 *
 * @example
 * seriesOf(frontPadsGauge, history).find(({ position }) => position === 'FL')?.part // 1: changed once
 */
export function seriesOf(gauge: Gauge, history: readonly PartEvent[]): Series[] {
  const positions = gauge.spec.positions.length > 0 ? gauge.spec.positions : [null];
  return positions.map((position) => seriesAt(position, gauge, history));
}

function seriesAt(position: string | null, gauge: Gauge, history: readonly PartEvent[]): Series {
  const starts = history.flatMap((event, order) =>
    isNewPart(event, position, gauge) ? [{ event, order }] : [],
  );
  const readings = history.flatMap((event, order): SeriesReading[] => {
    if (event.kind !== 'read' || event.position !== position || !isReadingOf(event, gauge)) return [];
    const before = starts.filter(
      (start) => start.order < order && !isAfterRound(start.event, event, gauge, history),
    );
    const { value, serviceId, pointIndex } = event;
    const since = before.at(-1)?.event.pointIndex ?? null;
    const compound = compoundAt(position, gauge, history.slice(0, order));
    return [{ value, serviceId, pointIndex, part: before.length, since, compound }];
  });
  return {
    position,
    // What belongs to the old part may have been closed behind the fitting of the new one.
    readings: readings.sort((one, other) => one.part - other.part || one.pointIndex - other.pointIndex),
    part: starts.length,
    since: starts.at(-1)?.event.pointIndex ?? null,
    compound: compoundAt(position, gauge, history),
  };
}

type ReadEvent = Extract<PartEvent, { kind: 'read' }>;

function isReadingOf({ cardId, readingId }: ReadEvent, gauge: Gauge): boolean {
  return (cardId === gauge.card.id && readingId === gauge.spec.id) || isWhenNew({ cardId, readingId }, gauge);
}

/** What a card reads of the new part it fits. */
export function isWhenNew(
  { cardId, readingId }: Pick<ReadEvent, 'cardId' | 'readingId'>,
  gauge: Gauge,
): boolean {
  return gauge.whenNew !== null && cardId === gauge.remedy.id && readingId === gauge.whenNew.id;
}

function isNewPart(event: PartEvent, position: string | null, { card, remedy, isTyre }: Gauge): boolean {
  switch (event.kind) {
    case 'fitted':
      return event.cardId === remedy.id && isAtPosition(event.position, position);
    case 'done':
      return event.cardId === remedy.id && remedy.id !== card.id;
    case 'tyreOn':
      return isTyre && event.replaces && event.wheel === wheelOf(position);
    case 'read':
      return false;
  }
}

/** The new part's own first value tells that this one, read at the same service, is not of it. */
function isAfterRound(
  start: PartEvent,
  read: ReadEvent,
  gauge: Gauge,
  history: readonly PartEvent[],
): boolean {
  if (start.kind !== 'done' || start.pointIndex !== read.pointIndex || isWhenNew(read, gauge)) return false;
  return history.some(
    (event) =>
      event.kind === 'read' &&
      event.pointIndex === read.pointIndex &&
      event.position === read.position &&
      isWhenNew(event, gauge),
  );
}

function compoundAt(position: string | null, { isTyre }: Gauge, history: readonly PartEvent[]): string {
  if (!isTyre) return '';
  const wheel = wheelOf(position);
  const last = history.findLast((event) => event.kind === 'tyreOn' && event.wheel === wheel);
  return last?.kind === 'tyreOn' ? last.compound : '';
}
