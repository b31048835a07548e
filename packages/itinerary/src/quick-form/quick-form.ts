import type { ServiceWindow } from '../model';

export interface QuickStage {
  name?: string;
  metres: number;
  /** A short one for spectators: it is called so. */
  superSpecial?: boolean;
}

/** A loop of stages and the service at its end. */
export interface QuickLoop {
  stages: readonly QuickStage[];
  /** All road of the loop, stages not counted. */
  roadMetres: number;
  /** 0 where the loop ends without one. */
  serviceMinutes: number;
  serviceKind?: ServiceWindow['kind'];
  /** Fuel is taken before the first stage of the loop. */
  refuel?: boolean;
  /** The stages of the loop before are driven again, one by one where their lengths are the same. */
  again?: boolean;
}

/** A day, which is a leg. Between two of them the car is in parc fermé. */
export interface QuickDay {
  /** `YYYY-MM-DD` */
  date: string;
  /** `HH:MM`, of the first car at the start, or out of parc fermé. */
  firstCarAt: string;
  /** Before the first stage; 0 or left away where there is no service then. */
  serviceMinutes?: number;
  loops: readonly QuickLoop[];
}

/** What is known of an event before its itinerary is out: its days and their loops. */
export interface QuickForm {
  /** IANA name. */
  timeZone: string;
  days: readonly QuickDay[];
  /** 50 km/h unless given (common practice, no source). */
  roadSpeedMetresPerHour?: number;
  startIntervalSeconds: number;
  /** Time control to stage start. */
  gapSeconds: number;
}

export const QUICK_ROAD_METRES_PER_HOUR = 50_000;
/** The speed a stage is planned at where its times are not known (common practice, no source). */
export const QUICK_STAGE_METRES_PER_HOUR = 80_000;
