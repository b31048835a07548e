import type { JobCard } from '@halfshaft/lifing';

/** What planning one service of one car starts from. All times count in seconds from its in-time. */
export interface VisitQuestion {
  /** From in-time to out-time. */
  workSeconds: number;
  /** A remote service: nothing goes up on stands (common practice, no source). */
  isRemote: boolean;
  /** Who is at the car, by id. */
  people: readonly string[];
  /** What is due, the most urgent first. */
  work: readonly VisitWork[];
}

/** A card that is due, and whether the car should not leave without it. */
export interface VisitWork {
  card: PlannedCard;
  mustDo: boolean;
}

/** As much of a card as a plan goes by. */
export type PlannedCard = Pick<
  JobCard,
  'id' | 'name' | 'starterId' | 'place' | 'seconds' | 'people' | 'tools'
>;
