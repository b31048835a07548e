import {
  type ControlLateness,
  type ControlPoint,
  checkInWindow,
  type EpochSeconds,
  formatClock,
  type LatenessReset,
  type MinutesToLose,
  type PenaltyRules,
} from '@halfshaft/itinerary';

const SECONDS_IN_MINUTE = 60;
const RESETS: Record<LatenessReset, string> = {
  regroup: 'regroup',
  leg: 'new leg',
  mainControl: 'main control',
  serviceOut: 'service out',
};
const MAXIMUMS: Record<ControlLateness['over'][number], string> = {
  atControl: 'lateness at one control',
  inSection: 'lateness in one section',
  inTotal: 'lateness in all',
  early: 'earliness in all',
};

/** "11:39:00–11:39:59 for 11:39": when to hand over the card, and from when the zone may be entered. */
export function windowInWords(dueAt: EpochSeconds, rules: PenaltyRules, timeZone: string): string {
  const { mayEnterFrom, onTimeFrom, onTimeUntil } = checkInWindow(dueAt, rules);
  const clock = (at: EpochSeconds) =>
    `${formatClock(at, timeZone)}:${String(at % SECONDS_IN_MINUTE).padStart(2, '0')}`;
  return `Hand in the card ${clock(onTimeFrom)}–${clock(onTimeUntil)}. Enter the zone from ${clock(mayEnterFrom)}.`;
}

/** What arriving at (or leaving by) a control before the due minute means. */
export function earlyInWords({ roles }: Pick<ControlPoint, 'roles'>, rules: PenaltyRules): string {
  const deed = leavesService(roles) ? 'Leaving' : 'Arriving';
  if (roles.some((role) => rules.earlyAllowedAt.includes(role))) return `${deed} early is allowed here.`;
  if (leavesService(roles) && rules.serviceTimeMayBeGivenUp)
    return 'A late car may leave early, down to its planned time.';
  const penalty = secondsInWords(rules.earlySecondsPerMinute);
  return rules.earlySecondsPerMinute === 0
    ? `${deed} early costs nothing here.`
    : `${deed} early is penalised here: ${penalty} a minute.`;
}

/** How a control was passed: on time, late (ours and the event's) or early, the penalty, and any maximum passed. */
export function latenessInWords(at: ControlLateness, rules: PenaltyRules): string[] {
  return [howInWords(at), penaltyInWords(at), ...overInWords(at, rules)];
}

/** "4 late", "4 late, 3 of it the event’s", "2 early", "on time": against when the car was due. */
export function latenessInShort(at: Omit<ControlLateness, 'over'>): string {
  const { ourMinutes, heldMinutes, earlyMinutes, allowedEarlyMinutes } = at;
  const late = ourMinutes + heldMinutes;
  const early = earlyMinutes + allowedEarlyMinutes;
  if (late === 0) return early === 0 ? 'on time' : `${early} early`;
  if (heldMinutes === 0) return `${late} late`;
  return ourMinutes === 0 ? `${late} late, the event’s` : `${late} late, ${heldMinutes} of it the event’s`;
}

function howInWords({ ourMinutes, heldMinutes, earlyMinutes, allowedEarlyMinutes }: ControlLateness): string {
  const late = ourMinutes + heldMinutes;
  if (late > 0) return `${late} min late: ${sharesInWords(ourMinutes, heldMinutes)}.`;
  if (earlyMinutes > 0) return `${earlyMinutes + allowedEarlyMinutes} min early, which is penalised here.`;
  return allowedEarlyMinutes > 0 ? `${allowedEarlyMinutes} min early, which is allowed here.` : 'On time.';
}

function sharesInWords(ours: number, held: number): string {
  if (held === 0) return 'all of it ours';
  return ours === 0 ? 'all of it the event’s' : `${ours} ours, ${held} the event’s`;
}

function penaltyInWords({ penaltySeconds }: ControlLateness): string {
  if (penaltySeconds === 0) return 'No penalty by the event’s rules.';
  return `Penalty by the event’s rules: ${secondsInWords(penaltySeconds)}.`;
}

function overInWords({ over }: ControlLateness, rules: PenaltyRules): string[] {
  const [first] = over;
  if (first === undefined) return [];
  const means = rules.overMaximum.means === 'outOfTime' ? 'out of time' : 'a fixed penalty';
  return [`More ${MAXIMUMS[first]} than the event allows: ${means} by its rules.`];
}

/** "Minutes still to lose: 12, resets at TC6B (regroup)." Empty before anything is ahead. */
export function toLoseInWords(stretch: MinutesToLose | undefined): string {
  if (!stretch) return '';
  const { minutes, atOneControl, resetsAt } = stretch;
  if (minutes === null) return 'The event sets no limit to lateness here.';
  const least = atOneControl !== null && atOneControl < minutes ? `, ${atOneControl} at one control` : '';
  const reset = resetsAt
    ? `, resets at ${resetsAt.id} (${RESETS[resetsAt.kind]})`
    : ', does not reset any more';
  return `Minutes still to lose: ${minutes}${least}${reset}.`;
}

/** "50 s", "2 min", "1 min 30 s". */
export function secondsInWords(seconds: number): string {
  const minutes = Math.floor(seconds / SECONDS_IN_MINUTE);
  const rest = seconds % SECONDS_IN_MINUTE;
  const parts = [...(minutes > 0 ? [`${minutes} min`] : []), ...(rest > 0 ? [`${rest} s`] : [])];
  return parts.length > 0 ? parts.join(' ') : '0 s';
}

function leavesService(roles: ControlPoint['roles']): boolean {
  return roles.includes('serviceOut') || roles.includes('remoteServiceOut');
}
