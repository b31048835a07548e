import { DEFAULT_PENALTY_RULES, type PenaltyRules } from './penalty-rules';

export interface PenaltyPreset {
  id: string;
  /** As a screen calls it. */
  title: string;
  /** Where the settings are published. */
  source: string;
  rules: PenaltyRules;
}

/** Settings to begin with; an event's own documents have the last word. */
export const PENALTY_PRESETS: readonly PenaltyPreset[] = [
  {
    id: 'common',
    title: 'Target timing, lateness reset at regroups and legs',
    source: 'common practice, no source',
    rules: DEFAULT_PENALTY_RULES,
  },
  {
    id: 'british',
    title: 'Scheduled timing, lateness free within 30 minutes, reset at main time controls',
    source: 'Motorsport UK National Competition Rules 2026, chapter 13',
    rules: {
      ...DEFAULT_PENALTY_RULES,
      timing: 'scheduled',
      lateSecondsPerMinute: 0,
      mainControlOutSecondsPerMinute: 10,
      maxLateMinutesAtControl: null,
      resetsAt: ['mainControl'],
      earlyAllowedAt: [],
      makeUpFloorPerMille: 750,
    },
  },
  {
    id: 'winterSprint',
    title:
      '15 minutes at a control, 30 in all, 10 early, reset at main controls, service time may be given up',
    source: 'North American winter rally-sprint competitor bulletin 2017',
    rules: {
      ...DEFAULT_PENALTY_RULES,
      maxEarlyMinutesInTotal: 10,
      resetsAt: ['mainControl'],
      earlyAllowedAt: [],
      serviceTimeMayBeGivenUp: true,
    },
  },
  {
    id: 'serviceOut',
    title: 'Lateness reset at each service out',
    source: 'published answers of a hill rally on lateness; the penalties are common practice',
    rules: { ...DEFAULT_PENALTY_RULES, resetsAt: ['serviceOut'] },
  },
];
