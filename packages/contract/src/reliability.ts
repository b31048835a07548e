import type { CarPlace } from '@halfshaft/lifing';
import type { LifeData } from '@halfshaft/reliability';
import type { LifeCounter } from '@halfshaft/worklog';
import { teamId } from './ids';
import * as z from './zod';

export const reliabilityOfTeamInput = z.object({ teamId });

/** One failure of a part, once, where it was seen. */
export interface SeenFailure {
  /** What the car had run since its log begins. */
  at: number;
  eventId: string;
  position: string | null;
}

/** What the log has of one part of one car. All amounts by `counter`, in its unit. */
export interface PartOutline {
  partId: string;
  cardId: string;
  /** Of a job its name, of a round the look. */
  name: string;
  /** The round a look belongs to; null for a job. */
  roundName: string | null;
  place: CarPlace;
  /** The card is no longer in use. */
  removed: boolean;
  counter: LifeCounter;
  /** The card's own limit on that counter; null when it has none. */
  every: number | null;
  /** Doing the card puts a new part on: only then is a limit one on the part's life. */
  renews: boolean;
  watched: number;
  failures: SeenFailure[];
  lives: LifeData;
}

/** One car of the team, over all events its log is kept of. */
export interface CarOutline {
  carId: string;
  name: string;
  stageMetres: number;
  events: number;
  /** Cards in use of which nothing was ever seen out of order. */
  soundCards: number;
  parts: PartOutline[];
  /** Snags raised, by place as the log has it. */
  snags: { place: string; times: number }[];
}

export const reliabilityOfTeamOutput = z.object({
  cars: z.array(z.custom<CarOutline>()),
  events: z.array(z.object({ eventId: z.string(), name: z.string(), startsOn: z.string() })),
});
export type ReliabilityOfTeam = z.infer<typeof reliabilityOfTeamOutput>;
