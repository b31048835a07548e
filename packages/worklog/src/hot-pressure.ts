/** Pressure of the standard atmosphere, in millibar (ISO 2533: 1013.25 hPa). */
const AIR_MILLIBAR = 1013.25;
const KELVIN = 273.15;
const COLDEST = -60;
const HOTTEST = 200;

export interface Warming {
  /** Above the air's, as a gauge shows it. */
  coldMillibar: number;
  coldCelsius: number;
  hotCelsius: number;
}

/**
 * What a gauge should show once the tyre is warm, in whole millibar: the gas law at constant volume (Gay-Lussac), with
 * absolute pressures and temperatures. A hint only: a real tyre stretches, and moist air rises more than dry.
 * Null for a temperature no tyre has.
 *
 * @example
 * hotMillibarOf({ coldMillibar: 2000, coldCelsius: 20, hotCelsius: 60 }) // 2411
 */
export function hotMillibarOf({ coldMillibar, coldCelsius, hotCelsius }: Warming): number | null {
  if (![coldCelsius, hotCelsius].every((celsius) => celsius >= COLDEST && celsius <= HOTTEST)) return null;
  const absolute = coldMillibar + AIR_MILLIBAR;
  return Math.round((absolute * (hotCelsius + KELVIN)) / (coldCelsius + KELVIN) - AIR_MILLIBAR);
}
