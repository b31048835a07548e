import { QUICK_ROAD_METRES_PER_HOUR, QUICK_STAGE_METRES_PER_HOUR, type QuickForm } from './quick-form';

/**
 * What the times of a quick form rest on, to stand beside them wherever they are shown.
 *
 * @example
 * quickFormInWords({}) // 'The times are an estimate: 50 km/h on the road and 80 km/h on stages, …'
 */
export function quickFormInWords(form: Pick<QuickForm, 'roadSpeedMetresPerHour'>): string {
  const road = (form.roadSpeedMetresPerHour ?? QUICK_ROAD_METRES_PER_HOUR) / 1000;
  const stage = QUICK_STAGE_METRES_PER_HOUR / 1000;
  return `The times are an estimate: ${road} km/h on the road and ${stage} km/h on stages, the road of each loop shared evenly. Paste the itinerary when it is published.`;
}
