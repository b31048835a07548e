import type { ServiceId } from '@halfshaft/itinerary';
import type { ReadingSpec } from '../job-card';
import type { Verdict } from '../model';

/** One value as it was read: whole, in the reading's own smallest unit. */
export interface PositionValue {
  /** One of the reading's positions, or null for a reading without any. */
  position: string | null;
  value: number;
}

/** A reading of something that wears, with how far the part had been driven when it was read. */
export interface WearReading extends PositionValue {
  /** What may be compared with each other: see `wearGroup`. */
  group: string;
  /** Which part was on: a new one has a new name. Readings of two parts never make one loop. */
  part: string;
  /** Stage metres on the part, conditions included (`wearBetween(…).stageMetres`). */
  wornMetres: number;
  /** Where it was read; left out, the words do not say. */
  readAt?: ServiceId;
}

/**
 * What the log tells of the parts of one car. A list of them stands in the order in which it came about: by the point of
 * the route, what happened on the road before what happened in the service at its end, and there by the log.
 */
export type PartEvent =
  | ({
      kind: 'read';
      cardId: string;
      readingId: string;
      serviceId: ServiceId;
      pointIndex: number;
    } & PositionValue)
  /** The whole card was done: new parts all round, when it is a card that changes them. */
  | { kind: 'done'; cardId: string; pointIndex: number }
  /** A new part although the card was not done. `position` null: all of the card's. */
  | { kind: 'fitted'; cardId: string; position: string | null; pointIndex: number }
  /** A tyre was put on this wheel; `replaces` when another one was known to be there. */
  | { kind: 'tyreOn'; wheel: string; compound: string; replaces: boolean; pointIndex: number };

export type WearSpec = Pick<ReadingSpec, 'id' | 'name' | 'unit' | 'decimals' | 'low' | 'high'>;

export interface ReadingReason {
  code: /** Past its limit already. */
    | 'outOfOrder'
    /** Comes up to its limit before the next service where the card can be done. */
    | 'wearsOut'
    /** Stays within its limit to there. */
    | 'holds'
    /** One reading and no rate to go by. */
    | 'notKnown'
    | 'notHere';
  readingId: string;
  position: string | null;
  value: number | null;
  limit: number | null;
  /** The most it is expected to lose to the next chance, whole, cut upwards. */
  lossAhead: number | null;
  /** The worst value to be expected there; null when nothing is known of it. */
  expected: number | null;
  nextChance: ServiceId | null;
  /** A plain sentence without a full stop, to stand after "do now:". */
  words: string;
}

/** What the readings of a card say of it. */
export interface ReadingVerdict {
  cardId: string;
  verdict: Verdict;
  doableHere: boolean;
  overdue: boolean;
  reasons: ReadingReason[];
}
