import type { ControlRole, Itinerary } from '@halfshaft/itinerary';
import type { Choice } from '@/components/choice-group';

/** What is early at each kind of control, in the order a form lists them. */
export const EARLY_AT: Record<ControlRole, string> = {
  finish: 'Arriving at the finish',
  serviceIn: 'Arriving at service',
  serviceOut: 'Leaving service',
  remoteServiceIn: 'Arriving at remote service',
  remoteServiceOut: 'Leaving remote service',
  regroupIn: 'Arriving at regroup',
  regroupOut: 'Leaving regroup',
  parcFermeIn: 'Arriving at parc fermé',
  parcFermeOut: 'Leaving parc fermé',
  technicalIn: 'Arriving at the technical zone',
  technicalOut: 'Leaving the technical zone',
  tyreZoneIn: 'Arriving at the tyre zone',
  tyreZoneOut: 'Leaving the tyre zone',
  refuel: 'Arriving at refuel',
  start: 'Starting',
  timeControl: 'Arriving at other time controls',
};
const ROLES = Object.keys(EARLY_AT) as ControlRole[];

/**
 * The kinds of control an itinerary has, each with its controls' names. One that the rules already name stays in the
 * list when an amendment took its last control away: it must be seen to be taken back.
 */
export function earlyChoices(itinerary: Itinerary, chosen: readonly ControlRole[]): Choice[] {
  return ROLES.flatMap((role) => {
    const names = controlsWith(itinerary, role);
    if (names.length === 0 && !chosen.includes(role)) return [];
    const hint = names.length === 0 ? 'no such control in this itinerary' : names.join(', ');
    return [{ value: role, label: EARLY_AT[role], hint }];
  });
}

/** Nobody is early where no clock is kept: at a refuel without a target time. */
function controlsWith({ points }: Itinerary, role: ControlRole): string[] {
  return points.flatMap((point) => {
    if (point.kind !== 'control' || !point.roles.includes(role)) return [];
    return role === 'refuel' && point.roles.length === 1 && point.allowedSeconds === null ? [] : [point.id];
  });
}
