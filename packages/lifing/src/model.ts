import type { Conditions, EpochSeconds, ServiceId, StageId } from '@halfshaft/itinerary';

/**
 * What a card counts. Every amount is a whole number in the counter's own unit:
 * stages, services, days, events: pieces; stageMetres, totalMetres: metres; engineSeconds: seconds.
 * A calendar date is not a counter: it is `DateLimit`.
 */
export type Counter =
  | 'stages'
  | 'stageMetres'
  | 'totalMetres'
  | 'engineSeconds'
  | 'services'
  | 'days'
  | 'events';

/** A limit on one counter. A card may hold several; the first one to be passed decides. */
export interface Interval {
  counter: Counter;
  /** How much may pass since last done. At least 1. */
  every: number;
  /** How far the limit may be overrun without harm, in the same unit. 0 when it may not. */
  tolerance: number;
}

/** A limit by the calendar: due at or after this instant (a harness that expires, fluid that ages). */
export interface DateLimit {
  dueAt: EpochSeconds;
}

/** By how much each condition at its worst multiplies wear: per mille, 1000 = no effect, 2000 = twice as fast. */
export type ConditionFactors = Conditions;

/** What one look or one job asks for, as far as due-ness is concerned. Positions, readings and words live in contract. */
export interface LifingCard {
  id: string;
  name: string;
  intervals: Interval[];
  dateLimit: DateLimit | null;
  conditionFactors: ConditionFactors;
  /** Whether several conditions at once add their excess or only the largest counts. */
  combineConditions: 'largest' | 'sum';
  /** Clock seconds it takes with `people` at it. */
  seconds: number;
  people: number;
  /** A service shorter than this is no chance to do the card. */
  leastServiceSeconds: number;
  /** Whether it can be done in a remote service. */
  remoteAllowed: boolean;
}

/** Amounts on every counter. */
export type Counters = Record<Counter, number>;

/**
 * When a card was last done. `pointIndex` is the place in the itinerary (the in-control of the service it was done in);
 * null when it was last done before this event, and `carried` is then the wear it brought along, conditions included.
 */
export type LastDone =
  | { pointIndex: number; carried: null }
  | { pointIndex: null; carried: Partial<Counters> };

/** "do now" · "if time" · "leave" on screens. */
export type Verdict = 'doNow' | 'ifTime' | 'leave';

/** Where along the route a limit is passed. */
export interface LimitPlace {
  /** The stage it is passed on, or null when on the road or at a control. */
  stageId: StageId | null;
  /** The point the car has just left, or is on. */
  pointIndex: number;
  /** Metres from the start of the event, road and stages. */
  routeMetres: number;
  /** Planned for the car's own start position. */
  at: EpochSeconds;
}

/** Why. One reason for each limit that matters, the most pressing first. */
export interface VerdictReason {
  code: /** The limit (plus tolerance) is passed already. */
    | 'past'
    /** It will be passed by more than the tolerance before the next service where the card can be done. */
    | 'wontReach'
    /** It will be passed before the next usable service, but stays within its tolerance. */
    | 'withinTolerance'
    /** It lasts to the next usable service. */
    | 'reaches'
    /** No limit of the card is reached in the rest of the event. */
    | 'lasts'
    /** The calendar date falls before the next usable service. */
    | 'dateFalls'
    /** This service is too short, or of the wrong kind, for the card. */
    | 'notHere';
  counter: Counter | 'date' | null;
  /** Of the counter `date` these three are instants: the date, this service's planned time, the next chance's. */
  limit: number | null;
  wearNow: number | null;
  wearAtNextChance: number | null;
  /** Null when there is no further usable service: then the finish is what must be reached. */
  nextChance: ServiceId | null;
  /** Null when the limit is not reached in the rest of the event, or was reached before the event began. */
  passedAt: LimitPlace | null;
}

export interface CardVerdict {
  cardId: string;
  verdict: Verdict;
  /** False when the card cannot be done at this service at all; the verdict then is 'leave' with a reason that says so, and `overdue` tells the danger. */
  doableHere: boolean;
  overdue: boolean;
  reasons: VerdictReason[];
}
