import { readWallClock } from '../read-values';
import { requireOptions } from '../require-options';
import { QUICK_ROAD_METRES_PER_HOUR, type QuickDay, type QuickForm } from './quick-form';

/** Throws a sentence on figures that are none. */
export function requireQuickForm(form: QuickForm): void {
  demand('startIntervalSeconds', form.startIntervalSeconds, 1);
  demand('gapSeconds', form.gapSeconds, 0);
  demand('roadSpeedMetresPerHour', form.roadSpeedMetresPerHour ?? QUICK_ROAD_METRES_PER_HOUR, 1000);
  demand('the number of days', form.days.length, 1);
  for (const day of form.days) requireDay(form, day);
}

function requireDay({ timeZone }: QuickForm, day: QuickDay): void {
  requireOptions('itineraryFromDays', { timeZone, startDate: day.date });
  if (!readWallClock(day.firstCarAt)) {
    throw new RangeError(`itineraryFromDays: “${day.firstCarAt}” is no time of day written HH:MM`);
  }
  demand('serviceMinutes', day.serviceMinutes ?? 0, 0);
  demand('the number of loops in a day', day.loops.length, 1);
  for (const loop of day.loops) {
    demand('the number of stages in a loop', loop.stages.length, 1);
    demand('roadMetres', loop.roadMetres, 0);
    demand('serviceMinutes', loop.serviceMinutes, 0);
    for (const stage of loop.stages) demand('the metres of a stage', stage.metres, 1);
  }
}

function demand(name: string, value: number, least: number): void {
  if (Number.isSafeInteger(value) && value >= least) return;
  throw new RangeError(`itineraryFromDays: ${name} is a whole number from ${least}, not ${value}`);
}
