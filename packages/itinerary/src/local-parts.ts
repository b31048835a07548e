import type { EpochSeconds } from './model';

/** One formatter a zone: making one costs a phone a hundred times what using it does. */
const formatters = new Map<string, Intl.DateTimeFormat>();

/**
 * An instant in a zone as the words and figures screens show: `Sat`, `13`, `Jun`, `2026`, `08`, `13`. By the runtime's own
 * formatter, not by Temporal as in `wall-clock`: every page shows times, only some read them, and until browsers have
 * Temporal it is a download of 19 kB. Throws when the zone is unknown.
 */
export function localParts(instant: EpochSeconds, timeZone: string) {
  const parts = new Map(
    formatterOf(timeZone)
      .formatToParts(instant * 1000)
      .map(partOf),
  );
  const of = (type: Intl.DateTimeFormatPartTypes) => parts.get(type) ?? '';
  return {
    ...{ weekday: of('weekday'), day: of('day'), month: of('month'), year: of('year') },
    ...{ hour: of('hour'), minute: of('minute') },
  };
}

const partOf = ({ type, value }: Intl.DateTimeFormatPart) => [type, value] as const;

function formatterOf(timeZone: string): Intl.DateTimeFormat {
  const known = formatters.get(timeZone);
  if (known) return known;
  const made = new Intl.DateTimeFormat('en-US', {
    ...{ timeZone, hourCycle: 'h23', hour: '2-digit', minute: '2-digit' },
    ...{ weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' },
  });
  formatters.set(timeZone, made);
  return made;
}
