/**
 * Puts figures with a decimal comma together again that were cut at it in comma separated text. Only where it is
 * certain: as many pairs of whole figures as there are cells too many. Otherwise the cells come back as they are.
 *
 * @example
 * mendSplitDecimals(['SS1', 'Moorwald', '8', '10', '', '09:23'], 5) // ['SS1', 'Moorwald', '8,10', '', '09:23']
 */
export function mendSplitDecimals(cells: string[], width: number): string[] {
  if (cells.length <= width) return cells;
  const mended: string[] = [];
  for (let at = 0; at < cells.length; at += 1) {
    const [cell = '', next = ''] = [cells[at], cells[at + 1]];
    const isPair = /^\(?\d{1,4}$/.test(cell) && /^\d{2,3}(?: ?km)?\)?$/i.test(next);
    mended.push(isPair ? `${cell},${next}` : cell);
    if (isPair) at += 1;
  }
  return mended.length === width ? mended : cells;
}
