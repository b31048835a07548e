import type {
  Conditions,
  Itinerary,
  ServiceWindow,
  StageId,
  StageRun,
  StartPosition,
} from '@halfshaft/itinerary';
import type { LastDone, LifingCard } from './model';
import type { RouteStep } from './route-steps';

/** What the event is, what has been driven of it and what is expected of the rest. */
export interface RouteKnowledge {
  itinerary: Itinerary;
  /** All visits to service, in driving order. */
  services: readonly ServiceWindow[];
  /** What the crew confirmed. Wins over the plan. */
  runs: ReadonlyMap<StageId, StageRun>;
  /** What the stages nobody has confirmed yet are expected to be like; a stage without an entry has no conditions. */
  plannedConditions: ReadonlyMap<StageId, Conditions>;
}

export interface WearQuestion extends RouteKnowledge {
  card: LifingCard;
  lastDone: LastDone;
  /** The point up to which wear is wanted, arrival there included. */
  toIndex: number;
}

export interface ServiceQuestion extends RouteKnowledge {
  /** Index into `services` of the service that is judged. */
  serviceIndex: number;
  /** The car's start position, 1 for the first car; or its positions by section. */
  position: StartPosition;
}

export interface CardQuestion extends ServiceQuestion {
  card: LifingCard;
  lastDone: LastDone;
}

/** A card on a route worked out once, since a service asks it for every card. */
export interface RoutedCard extends RouteKnowledge {
  position: StartPosition;
  card: LifingCard;
  lastDone: LastDone;
  steps: readonly RouteStep[];
}

/** A card's question with the route worked out. */
export interface RoutedQuestion extends CardQuestion {
  steps: readonly RouteStep[];
}

export interface CardsQuestion extends ServiceQuestion {
  cards: readonly LifingCard[];
  /** By card id. A card without an entry is taken as done just before the event: no wear carried. */
  lastDone: ReadonlyMap<string, LastDone>;
}
