import type { PersonId } from '@halfshaft/worklog';
import { useEffect } from 'react';
import * as z from '@/lib/zod';
import { useDraft } from '../bay/use-draft';
import type { Visit } from '../service/visit';
import { rowsByFirst, type SheetOfService, type SheetRow } from './sheet-rows';

/** Whose column had which tasks when the sheet was printed on this device. */
const printedSheet = z.array(z.object({ personId: z.string(), taskIds: z.array(z.string()) }));
type PrintedSheet = z.infer<typeof printedSheet>;

/** What the paper in somebody's hand says, where it was printed here; else null. */
export function usePrintedSheet({ entry, service }: Visit) {
  return useDraft(`sheetPrinted.${entry.entryId}.${service.id}`, printedSheet.nullable(), null);
}

/** Keeps the columns whenever they are printed, also by the browser's own menu. */
export function useKeepPrinted(visit: Visit, sheet: SheetOfService | null): void {
  const [, setPrinted] = usePrintedSheet(visit);
  useEffect(() => {
    const keep = () => sheet && setPrinted(columnsOf(sheet));
    window.addEventListener('beforeprint', keep);
    return () => window.removeEventListener('beforeprint', keep);
  }, [sheet, setPrinted]);
}

function columnsOf({ shares }: SheetOfService): PrintedSheet {
  return rowsByFirst(shares).map(({ personId, rows }) => ({
    personId,
    taskIds: rows.map(({ task }) => task.id),
  }));
}

export interface RecordGroups {
  columns: { personId: PersonId; rows: SheetRow[] }[];
  /** Nobody's column. */
  rest: SheetRow[];
}

/** All rows of cards once, in the order of the paper: of the one printed on this device, else of the sheet as it is now. */
export function recordGroups(sheet: SheetOfService, printed: PrintedSheet | null): RecordGroups {
  const now = rowsByFirst(sheet.shares);
  const others = [...sheet.left.map(({ row }) => row), ...sheet.canWait];
  if (printed === null) return { columns: now, rest: others };
  const all = new Map([...now.flatMap(({ rows }) => rows), ...others].map((row) => [row.task.id, row]));
  const columns = printed.map(({ personId, taskIds }) => ({
    personId,
    rows: taskIds.flatMap((id) => all.get(id) ?? []),
  }));
  for (const { task } of columns.flatMap(({ rows }) => rows)) all.delete(task.id);
  return { columns, rest: [...all.values()] };
}
