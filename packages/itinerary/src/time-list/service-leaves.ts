import type { ControlId, Itinerary, ServiceId } from '../model';
import { servicesOf } from '../services-of';
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

const MINUTE = 60;
const MINUTES_IN_DAY = 1440;

/**
 * How cars left their services, as far as the list has a time at the way out, in the order of the services.
 *
 * A car can leave late for two reasons: it came late, or its service took too long. Who stayed longer than the itinerary
 * allows overran by that much, but by no more than it left late: a car let in early stands longer and overruns nothing.
 * Where the stay runs past midnight it is taken for less than a day.
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
      overMinutes: overrun(ins.get(out.carNumber), out, allowedSeconds),
    }));
  });
}

function overrun(into: ControlPass | undefined, out: ControlPass, allowedSeconds: number): number | null {
  if (out.lateMinutes <= 0) return 0;
  // Without the clocks only a car that came in time is told: all of what it left late was lost in its service.
  if (!into) return null;
  if (into.atMinute === null || out.atMinute === null) return into.lateMinutes <= 0 ? out.lateMinutes : null;
  const stayed = (out.atMinute - into.atMinute + MINUTES_IN_DAY) % MINUTES_IN_DAY;
  return Math.min(out.lateMinutes, Math.max(0, stayed - Math.floor(allowedSeconds / MINUTE)));
}
