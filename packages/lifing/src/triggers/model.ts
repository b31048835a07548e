import type { ConditionName, ServiceId, StageId } from '@halfshaft/itinerary';
import type { Verdict } from '../model';

/** What a crew reports of the road, or somebody sees on arrival. */
export const INCIDENT_CODES = [
  'off',
  'contact',
  'hardLanding',
  'ford',
  'puncture',
  'hot',
  'softPedal',
  'electrics',
  'fuelSmell',
  'pullsAside',
] as const;
export type IncidentCode = (typeof INCIDENT_CODES)[number];

/** Makes its cards due beside any interval. `id` is stable, so that a team can switch one off. */
export type Trigger =
  /** Something happened: due at the next service where it can be done. */
  | {
      kind: 'incident';
      id: string;
      codes: IncidentCode[];
      /** From this many within one leg on; 1 for the first. */
      times: number;
      cardIds: string[];
    }
  /** Another card was done. */
  | {
      kind: 'jobDone';
      id: string;
      afterCardIds: string[];
      cardIds: string[];
      /** At this or the next service, or by the crew on the road up to the next service. */
      where: 'service' | 'firstHalt';
    }
  /** What the stages ahead are like: on at the last usable service before one, off again when it is over. */
  | {
      kind: 'nextConditions';
      id: string;
      condition: ConditionName;
      /** Per mille; a stage counts from this level on. */
      least: number;
      onCardIds: string[];
      offCardIds: string[];
      /** Off when no such stage is left in the event, or already when none comes before it could be put on again. */
      offWhen: 'noneLeft' | 'noneBeforeNextChance';
    }
  /** Something new is looked at again when it has been driven for so many stages. */
  | { kind: 'newlyFitted'; id: string; fittedCardIds: string[]; afterStages: number; cardIds: string[] }
  /** A temporary repair is looked at on its own card, and on these, at every service until it is made good. */
  | { kind: 'temporaryRepair'; id: string; cardIds: string[] };

export type TriggerKind = Trigger['kind'];

/**
 * What happened, in the order of the log. `pointIndex` is the point of the itinerary the car was at or had last left;
 * of work at a service it is the in-control. Of two facts at the same point the later one in the list is the later one.
 */
export type Fact =
  | { kind: 'incident'; code: IncidentCode; pointIndex: number }
  | { kind: 'done'; cardId: string; pointIndex: number }
  /** Fitted anew without its card being done, such as a part changed by the crew on the road. */
  | { kind: 'fitted'; cardId: string; pointIndex: number }
  /** On the work of this card; `madeGoodAt` is the point where a lasting repair replaced it, or null. */
  | {
      kind: 'temporaryRepair';
      cardId: string;
      words: string;
      pointIndex: number;
      madeGoodAt: number | null;
    };

export interface TriggerReason {
  code:
    | 'incident'
    | 'jobDone'
    | 'conditionAhead'
    | 'conditionOver'
    | 'newlyFitted'
    | 'temporaryRepair'
    | 'notHere';
  triggerId: string;
  /** Where it happened, or the stage ahead it is for; null when it is over. */
  pointIndex: number | null;
  stageId: StageId | null;
  nextChance: ServiceId | null;
  /** A plain piece of a sentence, to stand after "do now:". */
  words: string;
}

/** What the triggers say of one card. A card no trigger calls for has none. */
export interface TriggerVerdict {
  cardId: string;
  /** `doNow`, or `leave` where the card cannot be done. */
  verdict: Verdict;
  doableHere: boolean;
  /** A service where it could have been done has gone by, or what it is for comes before the next one. */
  overdue: boolean;
  reasons: TriggerReason[];
}
