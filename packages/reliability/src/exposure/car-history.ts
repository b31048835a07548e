/**
 * What the log of a car says of its parts, as this package asks for it. Plain shapes: this package reads no log itself.
 * What each record does to a life stands in rules.md.
 */
export interface CarHistory {
  carId: string;
  /** What the car had run by each counter before the first event; 0 where it is left out. */
  ranBefore: Readonly<Partial<Record<string, number>>>;
  /** How old parts were at the first event. A place that is not listed carries a part of unknown age. */
  carried: readonly CarriedAge[];
  /** In the order driven. */
  events: readonly WatchedEvent[];
}

export interface CarriedAge {
  cardId: string;
  /** Exactly as in `PartQuestion.positions`; null for a part that has one place. */
  position: string | null;
  /** By counter. 0: new. */
  age: Readonly<Partial<Record<string, number>>>;
}

/** One car at one event. */
export interface WatchedEvent {
  eventId: string;
  /** Reached the end. False also when nobody said why not. */
  finished: boolean;
  /**
   * By counter, what the car had run at each point of its route since this event began: really driven, so it stands still
   * while the car is out. The first point is 0 unless driving into it counts (a leg begins, a service is reached).
   */
  counted: Readonly<Record<string, readonly number[]>>;
  /** In any order of points; at one point in the order of the log. */
  records: readonly PartRecord[];
}

export type FindingGrade = 'ok' | 'watch' | 'needsWork' | 'temporaryRepair';

interface RecordPlace {
  /** Index into `counted`. */
  point: number;
  /** Taken back: as if it had never been written. */
  withdrawn?: boolean | undefined;
}

interface PartPlace extends RecordPlace {
  cardId: string;
  /** As it was said: "FL" also speaks of "FL inner"; null of the whole card. */
  position: string | null;
}

/** A crew feels a failure somewhere since the last point, unless it knows the place, which then is a point of its own. */
export type FeltWhere = 'here' | 'sinceLastPoint';

export interface FoundPart {
  position: string | null;
  grade: FindingGrade;
  /** A new part went on in its place before the card was closed. */
  newPart?: true;
}

export type PartRecord =
  /** A task of the card was closed. A place without a finding was in order: only what is not is written down. */
  | (RecordPlace & { kind: 'closed'; cardId: string; findings: readonly FoundPart[] })
  /** An incident in which this part broke. */
  | (PartPlace & { kind: 'broke'; where: FeltWhere })
  /** A new part went on. `because` null: nobody said why. */
  | (PartPlace & { kind: 'fitted'; because: 'broken' | 'preventive' | null })
  | (PartPlace & { kind: 'madeGood' })
  /** The part or how it is mounted is another design from here on; with a new part, or with the old one altered. */
  | (PartPlace & { kind: 'modified'; newPart: boolean })
  /** The car is out, for the day or for good. `cardId` when a part was the cause; `cause` null: not stated. */
  | (RecordPlace & {
      kind: 'out';
      cause: string | null;
      cardId: string | null;
      position: string | null;
      where: FeltWhere;
    })
  /** The car goes on after it was out. */
  | (RecordPlace & { kind: 'restarted' });

/** Which parts are asked about. */
export interface PartQuestion {
  cardId: string;
  /** One part at each; empty when there is but one. */
  positions: readonly string[];
  /** What its life is counted in: a key of `counted`. */
  counter: string;
  /** Closing the card puts new parts on everywhere; else it is a look. */
  doneRenews: boolean;
  /** Whether a failure is felt at once, or can stay hidden until somebody looks. */
  shows: 'atOnce' | 'whenLooked';
}
