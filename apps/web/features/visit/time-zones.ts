/** The zones the browser knows, with the chosen one among them whatever the browser lists. */
export function listTimeZones(chosen: string): string[] {
  const known = Intl.supportedValuesOf('timeZone');
  return [...new Set(['UTC', ...known, chosen])].filter(Boolean).sort();
}
