import type { ControlPoint, Itinerary, ServiceId, ServiceWindow } from './model';

/**
 * Every visit to service or remote service, in driving order over the whole event, lettered A, B, C … Z, AA, AB …;
 * remote services take their letter in the same row. An in-control without its out-control (which `checkItinerary`
 * reports) makes no visit and takes no letter.
 *
 * @example
 * servicesOf(itinerary)[0] // { id: 'A', kind: 'service', inControl: 'TC1B', outControl: 'TC1C', allowedSeconds: 900, … }
 */
export function servicesOf(itinerary: Itinerary): ServiceWindow[] {
  const visits = [
    ...visitsOf(itinerary, 'service', 'serviceIn', 'serviceOut'),
    ...visitsOf(itinerary, 'remoteService', 'remoteServiceIn', 'remoteServiceOut'),
  ];
  visits.sort((one, other) => one.inIndex - other.inIndex);
  return visits.map((visit, order) => ({ id: serviceLetter(order), ...visit }));
}

function visitsOf(
  itinerary: Itinerary,
  kind: ServiceWindow['kind'],
  inRole: 'serviceIn' | 'remoteServiceIn',
  outRole: 'serviceOut' | 'remoteServiceOut',
): Omit<ServiceWindow, 'id'>[] {
  const visits: Omit<ServiceWindow, 'id'>[] = [];
  let open: { control: ControlPoint; index: number } | null = null;
  itinerary.points.forEach((point, index) => {
    if (point.kind !== 'control') return;
    if (open && point.roles.includes(outRole)) {
      visits.push({
        kind,
        inIndex: open.index,
        outIndex: index,
        inControl: open.control.id,
        outControl: point.id,
        name: open.control.name,
        leg: open.control.leg,
        section: open.control.section,
        allowedSeconds: point.firstCarAt - open.control.firstCarAt,
      });
      open = null;
    }
    if (point.roles.includes(inRole)) open = { control: point, index };
  });
  return visits;
}

function serviceLetter(order: number): ServiceId {
  const last = String.fromCharCode(65 + (order % 26));
  return order < 26 ? last : serviceLetter(Math.floor(order / 26) - 1) + last;
}
