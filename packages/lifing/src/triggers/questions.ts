import type { ServiceId } from '@halfshaft/itinerary';
import type { LifingCard } from '../model';
import type { RouteKnowledge, ServiceQuestion } from '../questions';
import type { Fact, Trigger } from './model';

interface TriggerKnowledge {
  cards: readonly LifingCard[];
  triggers: readonly Trigger[];
  /** In the order of the log. What happened after the point that is judged is passed over. */
  facts: readonly Fact[];
  /** How the screen names a service; "Service C" unless told otherwise. */
  serviceName?: (id: ServiceId) => string;
}

export interface TriggersQuestion extends ServiceQuestion, TriggerKnowledge {}

/** A question of one trigger and one card, at any point of the route. */
export interface CalledQuestion extends RouteKnowledge, TriggerKnowledge {
  card: LifingCard;
  /** The in-control of the service that is judged, or the point the car is at on the road. */
  pointIndex: number;
  /** Index into `services` of the first one after the point. */
  laterFrom: number;
  /** At a service, or by the crew on the road. */
  at: 'service' | 'road';
}

/** What a trigger says of a card that is due; null is said instead when it is not. */
export interface Call {
  code: 'incident' | 'jobDone' | 'conditionAhead' | 'conditionOver' | 'newlyFitted' | 'temporaryRepair';
  pointIndex: number | null;
  /** From this point on it could have been done: a usable service from here to the one judged was missed. */
  dueFrom: number;
  /** It is wanted before the next service where it can be done. */
  wantedBeforeNextChance: boolean;
  words: string;
}
