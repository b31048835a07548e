import type { Itinerary } from '../model';
import { QuickBuilder } from './quick-builder';
import type { QuickForm } from './quick-form';
import { requireQuickForm } from './require-quick-form';

/**
 * An itinerary from what is known of an event before its own is out: by day its loops, and by loop the stages, the road
 * and the service after it. Each day is a leg of one section, and the order starts anew in it; between two days the car
 * is in parc fermé. The road of a loop is shared evenly between its stages; times follow from the road speed and 80 km/h
 * on stages (common practice, no source), in whole minutes, rounded up. They are an estimate, and `quickFormInWords`
 * says so; the printed itinerary replaces them. Whether a day begins after the one before has ended is asked by
 * `checkItinerary`.
 *
 * Throws when a figure is none: a stage without length, a road below 0, a day without a loop, a loop without a stage.
 *
 * @example
 * itineraryFromDays({ timeZone: 'Europe/Vienna', startIntervalSeconds: 60, gapSeconds: 180, days: [{ date: '2026-06-12',
 *   firstCarAt: '09:00', loops: [{ stages: [{ metres: 8100 }], roadMetres: 30_000, serviceMinutes: 30 }] }] }).points.length // 5
 */
export function itineraryFromDays(form: QuickForm): Itinerary {
  requireQuickForm(form);
  const { timeZone, days, startIntervalSeconds: intervalSeconds } = form;
  const builder = new QuickBuilder(form);
  for (const [index, day] of days.entries()) builder.addDay(day, index === days.length - 1);
  return {
    timeZone,
    roadTimedFrom: 'stageStart',
    points: builder.points,
    startBlocks: days.map((_, index) => ({ section: index + 1, fromPosition: 1, intervalSeconds })),
  };
}
