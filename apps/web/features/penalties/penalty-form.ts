import {
  type ControlRole,
  type LatenessReset,
  PENALTY_PRESETS,
  type PenaltyPreset,
  type PenaltyRules,
} from '@halfshaft/itinerary';
import type { PlacedProblem } from '../events/contract-resolver';
import { readNumber, readScaled } from '../events/read-number';

const PER_MILLE_IN_PERCENT = 10;

/** The penalties as typed. Limits left empty do not exist. */
export interface PenaltyForm {
  timing: PenaltyRules['timing'];
  lateSecondsPerMinute: string;
  earlySecondsPerMinute: string;
  mainControlOutSecondsPerMinute: string;
  maxLateMinutesAtControl: string;
  maxLateMinutesInSection: string;
  maxLateMinutesInTotal: string;
  maxEarlyMinutesInTotal: string;
  overMeans: PenaltyRules['overMaximum']['means'];
  overSeconds: string;
  resetsAt: LatenessReset[];
  earlyAllowedAt: ControlRole[];
  makeUpPercent: string;
  serviceOut: PenaltyRules['serviceOut'];
  further: ('serviceTimeMayBeGivenUp' | 'heldMinutesCount')[];
  mainControls: string;
  earlyEntrySeconds: string;
}

/** The order of the boxes, so that the same rules always give the same form. */
export const RESETS: readonly LatenessReset[] = ['regroup', 'leg', 'mainControl', 'serviceOut'];
export const FURTHER = ['serviceTimeMayBeGivenUp', 'heldMinutesCount'] as const;

export function rulesToForm(rules: PenaltyRules): PenaltyForm {
  const { overMaximum, makeUpFloorPerMille } = rules;
  return {
    timing: rules.timing,
    lateSecondsPerMinute: textOf(rules.lateSecondsPerMinute),
    earlySecondsPerMinute: textOf(rules.earlySecondsPerMinute),
    mainControlOutSecondsPerMinute: textOf(rules.mainControlOutSecondsPerMinute),
    maxLateMinutesAtControl: textOf(rules.maxLateMinutesAtControl),
    maxLateMinutesInSection: textOf(rules.maxLateMinutesInSection),
    maxLateMinutesInTotal: textOf(rules.maxLateMinutesInTotal),
    maxEarlyMinutesInTotal: textOf(rules.maxEarlyMinutesInTotal),
    overMeans: overMaximum.means,
    overSeconds: overMaximum.means === 'fixedPenalty' ? textOf(overMaximum.seconds) : '',
    resetsAt: RESETS.filter((reset) => rules.resetsAt.includes(reset)),
    earlyAllowedAt: [...rules.earlyAllowedAt].sort(),
    makeUpPercent: makeUpFloorPerMille === null ? '' : String(makeUpFloorPerMille / PER_MILLE_IN_PERCENT),
    serviceOut: rules.serviceOut,
    further: FURTHER.filter((name) => rules[name]),
    mainControls: rules.mainControls?.join(', ') ?? '',
    earlyEntrySeconds: textOf(rules.earlyEntrySeconds),
  };
}

/** What is sent. Text that is no number becomes NaN, which the contract refuses at its field. */
export function formToRules(form: PenaltyForm): PenaltyRules {
  return {
    timing: form.timing,
    lateSecondsPerMinute: readNumber(form.lateSecondsPerMinute),
    earlySecondsPerMinute: readNumber(form.earlySecondsPerMinute),
    mainControlOutSecondsPerMinute: numberOrNone(form.mainControlOutSecondsPerMinute),
    maxLateMinutesAtControl: numberOrNone(form.maxLateMinutesAtControl),
    maxLateMinutesInSection: numberOrNone(form.maxLateMinutesInSection),
    maxLateMinutesInTotal: numberOrNone(form.maxLateMinutesInTotal),
    maxEarlyMinutesInTotal: numberOrNone(form.maxEarlyMinutesInTotal),
    overMaximum:
      form.overMeans === 'outOfTime'
        ? { means: 'outOfTime' }
        : { means: 'fixedPenalty', seconds: readNumber(form.overSeconds) },
    resetsAt: RESETS.filter((reset) => form.resetsAt.includes(reset)),
    earlyAllowedAt: form.earlyAllowedAt,
    makeUpFloorPerMille:
      form.makeUpPercent.trim() === '' ? null : readScaled(form.makeUpPercent, PER_MILLE_IN_PERCENT),
    serviceTimeMayBeGivenUp: form.further.includes('serviceTimeMayBeGivenUp'),
    heldMinutesCount: form.further.includes('heldMinutesCount'),
    serviceOut: form.serviceOut,
    mainControls: namesIn(form.mainControls),
    earlyEntrySeconds: readNumber(form.earlyEntrySeconds),
  };
}

/** Where the form calls a field otherwise, or asks for it in another unit. */
export function placePenaltyProblem({ path: sent, message }: PlacedProblem): PlacedProblem {
  // The server names the whole of what it was sent.
  const path = sent.replace(/^rules\./, '');
  if (path.startsWith('overMaximum')) return { path: 'overSeconds', message };
  if (path.startsWith('mainControls')) return { path: 'mainControls', message };
  if (path.startsWith('earlyAllowedAt')) return { path: 'earlyAllowedAt', message };
  if (path !== 'makeUpFloorPerMille') return { path, message };
  return { path: 'makeUpPercent', message: 'Type a share of the target time from 0 to 100 percent.' };
}

/** The settings these rules are, if they are exactly those of one. */
export function presetOf(rules: PenaltyRules): PenaltyPreset | null {
  const wanted = JSON.stringify(rulesToForm(rules));
  return PENALTY_PRESETS.find((preset) => JSON.stringify(rulesToForm(preset.rules)) === wanted) ?? null;
}

function textOf(value: number | null): string {
  return value === null ? '' : String(value);
}

function numberOrNone(text: string): number | null {
  return text.trim() === '' ? null : readNumber(text);
}

function namesIn(text: string): string[] | null {
  const names = text.split(/[,;\s]+/).filter((name) => name !== '');
  return names.length === 0 ? null : names;
}
