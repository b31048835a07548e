import type { ControlPoint, Itinerary } from '../model';
import type { LatenessReset, PenaltyRules } from './penalty-rules';

/** Whether a control is a main time control of the event. */
export function isMainControl(control: ControlPoint, rules: Pick<PenaltyRules, 'mainControls'>): boolean {
  return rules.mainControls === null ? /^MT?C/.test(control.id) : rules.mainControls.includes(control.id);
}

/** Whether the car sets out from a control: it leaves a halt, or the event or leg starts. */
export function isWayOut(control: ControlPoint): boolean {
  return control.roles.some((role) => role.endsWith('Out') || role === 'start');
}

/**
 * The reset that takes place at a point, and whether lateness lost at this very control counts before it or after: what
 * is lost on leaving a halt belongs to what follows, what is lost on arriving at a main control to what is over. Null
 * where nothing is reset.
 */
export function resetAt(
  itinerary: Itinerary,
  index: number,
  rules: Pick<PenaltyRules, 'resetsAt' | 'mainControls'>,
): { kind: LatenessReset; when: 'beforeIt' | 'afterIt' } | null {
  const point = itinerary.points[index];
  if (!point || index === 0) return null;
  const has = (kind: LatenessReset) => rules.resetsAt.includes(kind);
  if (has('leg') && point.leg !== itinerary.points[index - 1]?.leg) return { kind: 'leg', when: 'beforeIt' };
  if (point.kind === 'stage') return null;
  if (has('regroup') && point.roles.includes('regroupOut')) return { kind: 'regroup', when: 'beforeIt' };
  const leavesService = point.roles.includes('serviceOut') || point.roles.includes('remoteServiceOut');
  if (has('serviceOut') && leavesService) return { kind: 'serviceOut', when: 'beforeIt' };
  if (has('mainControl') && isMainControl(point, rules)) {
    return { kind: 'mainControl', when: isWayOut(point) ? 'beforeIt' : 'afterIt' };
  }
  return null;
}
