/** What each code of a control or stage is called here; German, French and Italian itineraries have their own. */
const CODES: readonly (readonly [string, string])[] = [
  ['TC|ZK|CH|CO', 'TC'],
  ['ATC', 'ATC'],
  ['MTC', 'MTC'],
  ['MC', 'MC'],
  ['SSS', 'SSS'],
  ['SS|WP|SP|ES|PS|STAGE', 'SS'],
  ['RZ|ZR|REFUEL', 'RZ'],
  ['PC|CP|FF|SF|STOP', 'PC'],
];
const PATTERNS = CODES.map(
  ([words, code]) =>
    [new RegExp(`^(?:${words}) ?[.:#-]? ?(\\d{1,3})([A-Z]{0,2})(?![\\p{L}\\d])`, 'iu'), code] as const,
);

export interface ControlCode {
  /** As the model names it: `TC5B`, `SS5`, `RZ1`; `PC3` for what is passed without being timed. */
  id: string;
  /** What stands behind it. */
  rest: string;
}

/**
 * The code a text begins with, written in any of the usual ways (`TC 5B`, `TC5B`, `SS.5`, `ZR1/RZ1`, `ZK 5B`); null when
 * it begins with none. A letter counts to the code only where it touches the number: `TC1 A Coruña` is TC1.
 *
 * @example
 * controlCode('ZR1/RZ1 Lindach') // { id: 'RZ1', rest: 'Lindach' }
 */
export function controlCode(text: string): ControlCode | null {
  for (const [pattern, code] of PATTERNS) {
    const match = pattern.exec(text);
    if (!match) continue;
    const id = `${code}${Number(match[1])}${(match[2] ?? '').toUpperCase()}`;
    const rest = text.slice(match[0].length).trim();
    const twin = /^\/ ?/.test(rest) ? controlCode(rest.replace(/^\/ ?/, '')) : null;
    return { id, rest: twin?.id === id ? twin.rest : rest };
  }
  return null;
}

/** Whether a code names a place that is passed without being timed: passage controls, flying finishes, stop lines. */
export function isUntimedCode(id: string): boolean {
  return id.startsWith('PC');
}
