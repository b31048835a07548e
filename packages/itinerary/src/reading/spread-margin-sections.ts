import { rolesOf } from '../control-roles';
import type { CutTable } from './read-itinerary-model';
import { legOf } from './row-words';

/**
 * A section number in the right margin is printed once, half way down its section, and belongs to its first row: the
 * row a regroup is left in, or the first of the leg. Where most rows print a number each says its own.
 */
export function spreadMarginSections(cut: CutTable): void {
  const indexOf = (meaning: string) => cut.headings.findIndex((heading) => heading.meaning === meaning);
  const [section, location, id] = [indexOf('section'), indexOf('location'), indexOf('id')];
  const printed = cut.rows.filter((row) => (row.cells[section] ?? '') !== '').length;
  if (section === -1 || printed * 2 > cut.rows.length) return;
  const opens = (row: CutTable['rows'][number]) =>
    rolesOf(row.cells[location] ?? '').roles.includes('regroupOut');
  cut.rows.forEach((row, index) => {
    const number = row.cells[section] ?? '';
    if (number === '') return;
    for (let at = index; at >= 0; at -= 1) {
      const candidate = cut.rows[at];
      const before = cut.rows[at - 1];
      if (!candidate || (at < index && (candidate.cells[section] ?? '') !== '')) return;
      if (!opens(candidate) && before && legOf(before.cells[id] ?? '') === null) continue;
      row.cells[section] = '';
      candidate.cells[section] = number;
      return;
    }
  });
}
