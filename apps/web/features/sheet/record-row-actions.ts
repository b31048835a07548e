import type { ActionBody, Finding, PersonId } from '@halfshaft/worklog';
import { findingInWords, snagOfFinding } from '../work/task-in-words';
import type { ReadRow, RowDraft } from './row-draft';
import type { SheetRow } from './sheet-rows';

/** One action of a row, and whom it is recorded for. */
export interface RowAction {
  body: ActionBody;
  by: PersonId;
}

/**
 * What a filled row becomes in the log, in this order: the work with what was found and measured, the second signature
 * in ink, a snag for each finding that is to stay on the list.
 */
export function rowActions(row: SheetRow, draft: RowDraft, read: ReadRow, newId: () => string): RowAction[] {
  const { ref } = row.task;
  const { by, readings } = read;
  if (draft.what === '') return [];
  if (draft.what === 'left') {
    return [{ by, body: { kind: 'carryOverTask', args: { task: ref, reason: draft.reason.trim() } } }];
  }
  const findings = draft.findings.map(({ raiseSnag: _, ...finding }) => finding);
  const signature: RowAction[] =
    draft.signedBy === ''
      ? []
      : [{ by: draft.signedBy, body: { kind: 'signTask', args: { task: ref, onPaper: true } } }];
  const snags = draft.findings.filter((finding) => finding.raiseSnag);
  return [
    { by, body: { kind: 'closeTask', args: { task: ref, findings, readings } } },
    ...signature,
    ...snags.map((finding) => ({ by, body: snagOf(row, finding, newId()) })),
  ];
}

function snagOf({ title, card, task }: SheetRow, finding: Finding, snagId: string): ActionBody {
  const words = snagOfFinding(findingInWords(finding, card?.looks ?? []), title);
  const { entryId, serviceId } = task.ref;
  const place = card?.place ?? 'wholeCar';
  return { kind: 'raiseSnag', args: { snagId, entryId, serviceId, place, words, urgent: false } };
}
