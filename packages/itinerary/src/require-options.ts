import type { ItineraryTableOptions } from './assemble-draft';
import { isCalendarDate, isTimeZone } from './wall-clock';

/** Throws a sentence naming `caller` unless zone and date are ones. */
export function requireOptions(
  caller: string,
  options: Pick<ItineraryTableOptions, 'timeZone' | 'startDate'>,
): void {
  if (!isTimeZone(options.timeZone)) throw new RangeError(`${caller}: “${options.timeZone}” is no time zone`);
  if (!isCalendarDate(options.startDate)) {
    throw new RangeError(`${caller}: “${options.startDate}” is no date written YYYY-MM-DD`);
  }
}
