import type { ItineraryProblem } from '../model';
import { severityOf } from '../parsed-itinerary';
import { controlCode, isUntimedCode } from './control-code';
import type { CutTable } from './read-itinerary-model';

/**
 * Rows of text copied from a PDF that have one distance where rows of their kind have two: between single spaces a
 * figure that is missing moves the next one into its place, and nothing else would tell.
 */
export function checkFigureCounts(cut: CutTable): ItineraryProblem[] {
  const indexOf = (meaning: string) => cut.headings.findIndex((heading) => heading.meaning === meaning);
  const [id, total] = [indexOf('id'), indexOf('totalKm')];
  return (['stageKm', 'roadKm'] as const).flatMap((key) => {
    const own = indexOf(key);
    if (own === -1 || total === -1) return [];
    const rows = cut.rows.filter((row) => {
      const code = controlCode(row.cells[id] ?? '')?.id ?? 'RZ';
      const isOfKind =
        code.startsWith('SS') === (key === 'stageKm') && !code.startsWith('RZ') && !isUntimedCode(code);
      return isOfKind && ((row.cells[own] ?? '') !== '' || (row.cells[total] ?? '') !== '');
    });
    const single = rows.filter((row) => (row.cells[own] ?? '') === '' || (row.cells[total] ?? '') === '');
    if (rows.length < 3 || single.length * 3 > rows.length) return [];
    return single.map((row) => ({
      row: row.sourceRow,
      column: own + 1,
      field: cut.headings[own]?.text ?? null,
      code: 'figure-missing' as const,
      message: `Row ${row.sourceRow} has one distance where others of its kind have two, so the figure may be another one’s. Check it, and write the one that is missing.`,
      severity: severityOf('figure-missing'),
    }));
  });
}
