const METRES_PER_MILE = 1609.344;
const DISTANCE =
  /^(\(? ?)([-−]?\d{1,7}(?:[.,]\d{1,9})?) ?(kms?|kilomet(?:re|er)s?|mi|miles?|mls|m|met(?:re|er)s)?\.?( ?\)?)$/i;

/**
 * A distance cell as the strict table writes it, in km: units read and left out, miles and metres converted (a mile
 * is 1,609.344 m), brackets kept. A cell that is no distance comes back as it is, to be reported.
 *
 * @example
 * writtenDistance('10,35 miles', null) // '16.657'
 */
export function writtenDistance(cell: string, unit: 'miles' | 'minutes' | null): string {
  const match = DISTANCE.exec(cell);
  if (!match) return cell;
  const [, open = '', figure = '', written = '', close = ''] = match;
  const isMetres = /^m(?:et.*)?$/i.test(written);
  const isMiles = written === '' ? unit === 'miles' : /^m[il]/i.test(written);
  const value = Number(figure.replace(',', '.').replace('−', '-'));
  const kilometres = isMiles
    ? (Math.round(value * METRES_PER_MILE) / 1000).toFixed(3)
    : isMetres
      ? (Math.round(value) / 1000).toFixed(3)
      : figure;
  return `${open.trim()}${kilometres}${close.trim()}`;
}
