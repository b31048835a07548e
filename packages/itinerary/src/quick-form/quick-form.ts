import type { ServiceWindow } from '../model';

/** A loop of stages and the service at its end. */
export interface QuickLoop {
  stages: readonly { name?: string; metres: number }[];
  /** All road of the loop, stages not counted. */
  roadMetres: number;
  /** 0 where the loop ends without one. */
  serviceMinutes: number;
  serviceKind?: ServiceWindow['kind'];
}

/** What is known of an event before its itinerary is out: its loops. */
export interface QuickForm {
  /** IANA name. */
  timeZone: string;
  /** `YYYY-MM-DD` */
  startDate: string;
  /** `HH:MM`, of the first car at the start. */
  firstCarAt: string;
  loops: readonly QuickLoop[];
  /** 50 km/h unless given (common practice, no source). */
  roadSpeedMetresPerHour?: number;
  startIntervalSeconds: number;
  /** Time control to stage start. */
  gapSeconds: number;
}

export const QUICK_ROAD_METRES_PER_HOUR = 50_000;
/** The speed a stage is planned at where its times are not known (common practice, no source). */
export const QUICK_STAGE_METRES_PER_HOUR = 80_000;
