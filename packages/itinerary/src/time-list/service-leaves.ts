import type { ControlId, Itinerary, ServiceId } from '../model';
import { servicesOf } from '../services-of';
import { lostBetween } from './lost-between';
import type { ControlPass } from './model';

/** How one car left one service. */
export interface ServiceLeave {
  carNumber: string;
  serviceId: ServiceId;
  /** At the way out; below 0 when it left early. */
  lateMinutes: number;
  /** Of these, by how much its stay was too long; null when the list does not have the clock at both ends. */
  overMinutes: number | null;
}

/**
 * How cars left their services, as far as the list has a time at the way out, in the order of the services.
 *
 * A car can leave late for two reasons: it came late, or its service took too long. Who stayed longer than the itinerary
 * allows overran by that much, but by no more than it left late: a car let in early stands longer and overruns nothing.
 */
export function serviceLeaves(passes: readonly ControlPass[], itinerary: Itinerary): ServiceLeave[] {
  const at = new Map<ControlId, ControlPass[]>();
  for (const pass of passes) at.set(pass.controlId, [...(at.get(pass.controlId) ?? []), pass]);
  return servicesOf(itinerary).flatMap(({ id, inControl, outControl, allowedSeconds }) => {
    const ins = new Map((at.get(inControl) ?? []).map((pass) => [pass.carNumber, pass]));
    return (at.get(outControl) ?? []).map((out) => ({
      carNumber: out.carNumber,
      serviceId: id,
      lateMinutes: out.lateMinutes,
      overMinutes: lostBetween(ins.get(out.carNumber), out, allowedSeconds),
    }));
  });
}
