import type { ControlId, ControlRole } from '../model';

/** Where accumulated lateness goes back to nothing. */
export type LatenessReset = 'regroup' | 'leg' | 'mainControl' | 'serviceOut';

/** The penalties of an event, all of them settings: each event prints its own. Minutes are whole minutes. */
export interface PenaltyRules {
  /** `target`: due is the actual time before plus the target time. `scheduled`: the timetable, plus what the car is behind it. */
  timing: 'target' | 'scheduled';
  /** Seconds of penalty a minute late; 0 where lateness within the maximum costs nothing. */
  lateSecondsPerMinute: number;
  earlySecondsPerMinute: number;
  /** Seconds a minute before or after, on leaving a main control; null where it is like any other. */
  mainControlOutSecondsPerMinute: number | null;
  /** The most that may be lost at one control, in one section, and since the last reset; null where there is no such limit. */
  maxLateMinutesAtControl: number | null;
  maxLateMinutesInSection: number | null;
  maxLateMinutesInTotal: number | null;
  maxEarlyMinutesInTotal: number | null;
  /** What being over a maximum means: out of the event (or leg), or a fixed penalty at that control. */
  overMaximum: { means: 'outOfTime' } | { means: 'fixedPenalty'; seconds: number };
  resetsAt: readonly LatenessReset[];
  /** A control with one of these roles may be entered early without penalty. */
  earlyAllowedAt: readonly ControlRole[];
  /** A late car may make up time on the road, down to this share of the target time (per mille, minutes cut); null: it may not. */
  makeUpFloorPerMille: number | null;
  /** A late car may leave service before its time is up to be back on schedule. Its lateness stays counted. */
  serviceTimeMayBeGivenUp: boolean;
  /** Whether minutes lost through the event count to the maximum as well. */
  heldMinutesCount: boolean;
  /** `fullTime`: late in means late out. `asPlanned`: the out-time stays, the halt is shortened. */
  serviceOut: 'fullTime' | 'asPlanned';
  /** Main time controls by name; null: those printed as MTC or MC. */
  mainControls: readonly ControlId[] | null;
  /** The zone may be entered this long before the due minute. */
  earlyEntrySeconds: number;
}

/** The settings most events have, where nothing else is said (common practice, no source). */
export const DEFAULT_PENALTY_RULES: PenaltyRules = {
  timing: 'target',
  lateSecondsPerMinute: 10,
  earlySecondsPerMinute: 60,
  mainControlOutSecondsPerMinute: null,
  maxLateMinutesAtControl: 15,
  maxLateMinutesInSection: null,
  maxLateMinutesInTotal: 30,
  maxEarlyMinutesInTotal: null,
  overMaximum: { means: 'outOfTime' },
  resetsAt: ['regroup', 'leg'],
  earlyAllowedAt: ['finish'],
  makeUpFloorPerMille: null,
  serviceTimeMayBeGivenUp: false,
  heldMinutesCount: false,
  serviceOut: 'fullTime',
  mainControls: null,
  earlyEntrySeconds: 60,
};
