import type { ControlId, ControlPoint, Itinerary } from '../model';
import { servicesOf } from '../services-of';
import { targetDueAt } from '../target-due-at';
import { isTimedPoint } from '../timed-before';
import { lostBetween } from './lost-between';
import type { ControlPass } from './model';

/** How late one car came to one control that is no way out of service. */
export interface ControlArrival {
  carNumber: string;
  controlId: ControlId;
  /** After the due time that the list has, whole minutes; below 0 when it was early. */
  lateMinutes: number;
  /** Of these, lost since the control before; null when nobody can say. */
  lostMinutes: number | null;
  /** Lost by then since the timetable was last set anew, at services too; null when any part of it is not known. */
  totalMinutes: number | null;
}

/**
 * How late cars came to their controls, as far as the list has a time there, in driving order. Ways out of service are left
 * to `serviceLeaves`, but what was lost in a service counts in what was lost in all.
 *
 * An organiser's list may reckon a due time from the timetable or from when the car passed the control before. So what a
 * car lost on its way is taken from the clocks, which say the same under both: target timing counts from the actual time
 * before (Motorsport UK National Competition Rules 2026, chapter 13), so a car that left a service late is due later by as
 * much, and only what its way took beyond the target time is new. A stage starts at its gap after its control; where the
 * road is timed from a stage's finish the list has no clock for it, so only who was in time before is told.
 *
 * What is lost adds up until the leg or a regroup sets order and timetable anew (common practice, no source); there what
 * the list calls late is all new. Being early elsewhere wins nothing back. Of a car that one control is missing, what it
 * lost in all is not known until then.
 *
 * @example
 * controlArrivals(readTimeList('Car,Control,Due,Time\n7,TC0,8:00,8:00\n7,TC1,8:25,8:27', itinerary).passes, itinerary)
 * // [{ carNumber: '7', controlId: 'TC0', lateMinutes: 0, … }, { …, controlId: 'TC1', lostMinutes: 2, totalMinutes: 2 }]
 */
export function controlArrivals(passes: readonly ControlPass[], itinerary: Itinerary): ControlArrival[] {
  const waysOut = new Set(servicesOf(itinerary).map(({ outControl }) => outControl));
  const byCar = new Map<string, Map<ControlId, ControlPass>>();
  for (const pass of passes) {
    const ofCar = byCar.get(pass.carNumber) ?? new Map<ControlId, ControlPass>();
    byCar.set(pass.carNumber, ofCar.set(pass.controlId, pass));
  }
  const legs = timedLegs(itinerary);
  const ways = [...byCar.values()].map((ofCar) => alongWay(ofCar, legs));
  return legs
    .filter(({ control }) => !waysOut.has(control.id))
    .flatMap(({ control }) => ways.flatMap((way) => way.get(control.id) ?? []));
}

/** The way to one control. */
interface TimedLeg {
  control: ControlPoint;
  /** The timetable starts here: nothing is brought along. */
  isAnew: boolean;
  before: ControlId | null;
  allowedSeconds: number | null;
}

function timedLegs(itinerary: Itinerary): TimedLeg[] {
  const legs: TimedLeg[] = [];
  for (const [index, control] of itinerary.points.entries()) {
    if (control.kind !== 'control' || !isTimedPoint(control)) continue;
    const before = legs.at(-1)?.control ?? null;
    const isAnew = before === null || before.leg !== control.leg || control.roles.includes('regroupOut');
    const allowedSeconds = isAnew ? null : targetDueAt(itinerary, index, new Map([[before.id, { at: 0 }]]));
    legs.push({ control, isAnew, before: before?.id ?? null, allowedSeconds });
  }
  return legs;
}

/** One car from control to control. */
function alongWay(
  passes: ReadonlyMap<ControlId, ControlPass>,
  legs: readonly TimedLeg[],
): Map<ControlId, ControlArrival> {
  const way = new Map<ControlId, ControlArrival>();
  let total: number | null = 0;
  for (const { control, isAnew, before, allowedSeconds } of legs) {
    const here = passes.get(control.id);
    if (isAnew) total = 0;
    if (!here) {
      total = null;
      continue;
    }
    const lost: number | null = isAnew
      ? Math.max(0, here.lateMinutes)
      : lostBetween(passes.get(before ?? ''), here, allowedSeconds);
    total = total === null || lost === null ? null : total + lost;
    const { carNumber, controlId, lateMinutes } = here;
    way.set(controlId, { carNumber, controlId, lateMinutes, lostMinutes: lost, totalMinutes: total });
  }
  return way;
}
