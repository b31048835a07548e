import type { LatenessReset, PenaltyRules } from '@halfshaft/itinerary';
import { secondsInWords } from '../control/lateness-in-words';
import { EARLY_AT } from './early-roles';

export const RESET_NAMES: Record<LatenessReset, string> = {
  regroup: 'regroups',
  leg: 'legs',
  mainControl: 'main controls',
  serviceOut: 'every service out',
};

/** What an event's penalties come to, a line each. */
export function rulesInWords(rules: PenaltyRules): string[] {
  const { lateSecondsPerMinute, earlySecondsPerMinute, mainControlOutSecondsPerMinute, serviceOut } = rules;
  const early = secondsInWords(earlySecondsPerMinute);
  return [
    `Late: ${secondsInWords(lateSecondsPerMinute)} a minute. Early: ${early} a minute.`,
    ...(mainControlOutSecondsPerMinute === null
      ? []
      : [
          `Leaving a main control: ${secondsInWords(mainControlOutSecondsPerMinute)} a minute late or early.`,
        ]),
    limitsInWords(rules),
    rules.earlyAllowedAt.length === 0
      ? 'Early is allowed nowhere.'
      : `Early is allowed: ${rules.earlyAllowedAt.map((role) => EARLY_AT[role].toLowerCase()).join(', ')}.`,
    rules.resetsAt.length === 0
      ? 'Lateness never resets.'
      : `Lateness resets at ${rules.resetsAt.map((reset) => RESET_NAMES[reset]).join(', ')}.`,
    serviceOut === 'fullTime'
      ? 'Late in means late out of service: the working time stays.'
      : 'The printed out-time of service stays: late in means less working time.',
    ...(rules.heldMinutesCount ? ['Minutes the event held the car count to the limits too.'] : []),
    ...(rules.serviceTimeMayBeGivenUp ? ['A late car may leave service before its time is up.'] : []),
  ];
}

function limitsInWords(rules: PenaltyRules): string {
  const limits = [
    [rules.maxLateMinutesAtControl, 'at one control'],
    [rules.maxLateMinutesInSection, 'in one section'],
    [rules.maxLateMinutesInTotal, 'in all'],
    [rules.maxEarlyMinutesInTotal, 'early in all'],
  ].flatMap(([minutes, where]) => (minutes === null ? [] : [`${minutes} min ${where}`]));
  if (limits.length === 0) return 'No limit to lateness.';
  const { overMaximum } = rules;
  const over =
    overMaximum.means === 'outOfTime' ? 'out of time' : `a penalty of ${secondsInWords(overMaximum.seconds)}`;
  return `At most ${limits.join(', ')}. Over it: ${over}.`;
}
