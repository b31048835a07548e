export interface ZoneOption {
  value: string;
  label: string;
}

/**
 * The time zones to choose from: those in `first` at the top in their order, then all others by name. A zone the
 * browser does not list, such as one saved on another device, is kept.
 *
 * @example
 * zoneOptions(['Europe/Rome', 'Europe/Vienna'], ['Europe/Vienna'])[0] // { value: 'Europe/Vienna', label: 'Europe/Vienna' }
 */
export function zoneOptions(known: readonly string[], first: readonly string[]): ZoneOption[] {
  const ordered = new Set([...first.filter((zone) => zone !== ''), ...known.toSorted()]);
  return [...ordered].map((zone) => ({ value: zone, label: zone.replaceAll('_', ' ') }));
}

/** The zone this browser is in. */
export function browserZone(): string {
  return new Intl.DateTimeFormat('en').resolvedOptions().timeZone;
}

/** All zones this browser knows by their usual names; UTC is not among them everywhere. */
export function browserZones(): string[] {
  return [...Intl.supportedValuesOf('timeZone'), 'UTC'];
}

/** The day it is at `millis` in a zone, `YYYY-MM-DD`. */
export function dayIn(zone: string, millis: number): string {
  const parts = new Intl.DateTimeFormat('en-CA', {
    timeZone: zone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).formatToParts(millis);
  const part = (type: string) => parts.find((one) => one.type === type)?.value ?? '';
  return `${part('year')}-${part('month')}-${part('day')}`;
}
