import type { PersonId } from '@halfshaft/worklog';
import { newId } from '../work/new-id';
import type { LoadedWork } from '../work/work-page';
import { rowActions } from './record-row-actions';
import { readRow, type SheetDraft } from './row-draft';
import type { SheetRow } from './sheet-rows';

/** A row, and whose column it stands in; null: nobody's. */
export interface PlacedRow {
  row: SheetRow;
  personId: PersonId | null;
}

/**
 * Hands every filled row that is whole to the outbox, in the order of the paper. What cannot be recorded stays in the
 * draft; a refusal is told by the outbox like any other.
 */
export function recordRows(work: Pick<LoadedWork, 'act'>, placed: readonly PlacedRow[], draft: SheetDraft) {
  const left: SheetDraft = { ...draft };
  let recorded = 0;
  for (const { row, personId } of placed) {
    const typed = draft[row.task.id];
    if (!typed || typed.what === '') continue;
    const read = readRow(row, typed, personId);
    if (read.problems.length > 0) continue;
    const [first, ...rest] = rowActions(row, typed, read, newId);
    if (!first || !work.act(first.body.kind, first.body.args, first.by).ok) continue;
    for (const { body, by } of rest) work.act(body.kind, body.args, by);
    delete left[row.task.id];
    recorded += 1;
  }
  return { left, recorded };
}
