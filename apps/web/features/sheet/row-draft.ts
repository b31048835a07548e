import { finding } from '@halfshaft/contract';
import type { PersonId, Reading } from '@halfshaft/worklog';
import * as z from '@/lib/zod';
import { readReadings, slotsOf } from '../bay/read-typed';
import type { SheetRow } from './sheet-rows';

/** What the paper says of one row, as far as it has been typed. */
export const rowDraft = z.object({
  /** Empty: the paper says nothing. */
  what: z.enum(['', 'done', 'left']),
  /** Null: the person of the column. Empty: nobody chosen where there is no column. */
  by: z.string().nullable(),
  /** Who gave the second signature in ink; empty: nobody. */
  signedBy: z.string(),
  /** By slot, as typed. */
  typed: z.record(z.string(), z.string()),
  findings: z.array(finding.extend({ raiseSnag: z.boolean() })),
  reason: z.string(),
});
export type RowDraft = z.infer<typeof rowDraft>;

/** By task. */
export const sheetDraft = z.record(z.string(), rowDraft);
export type SheetDraft = z.infer<typeof sheetDraft>;

export const EMPTY_ROW: RowDraft = {
  what: '',
  by: null,
  signedBy: '',
  typed: {},
  findings: [],
  reason: '',
};

export interface ReadRow {
  by: PersonId;
  readings: Reading[];
  /** What keeps the row from being recorded. */
  problems: string[];
  /** By slot: what is wrong with what was typed. */
  typedProblems: Record<string, string>;
  /** Required and not written on the paper: recorded all the same, and the log says so. */
  missing: string[];
}

/** A row as it can be recorded, and what stands in its way. */
export function readRow(row: SheetRow, draft: RowDraft, columnPerson: PersonId | null): ReadRow {
  const by = draft.by ?? columnPerson ?? '';
  const read = readReadings(slotsOf(row.card?.readings ?? []), draft.typed);
  const problems = [
    by === '' ? 'Say whose initials stand there.' : '',
    draft.what === 'left' && draft.reason.trim() === '' ? 'Say in a few words why it was left.' : '',
    draft.what === 'done' ? signatureProblem(row, draft, by) : '',
    draft.what === 'done' && Object.keys(read.problems).length > 0 ? 'Put the marked reading right.' : '',
  ].filter((sentence) => sentence !== '');
  const missing = read.missing.map(({ spec, position }) => [spec.name, position].filter(Boolean).join(' '));
  return { by, readings: read.readings, problems, typedProblems: read.problems, missing };
}

function signatureProblem({ task }: SheetRow, { signedBy }: RowDraft, by: PersonId): string {
  const hadAHand = signedBy === by || task.doneBy === signedBy || task.alsoDoneBy.includes(signedBy);
  return signedBy !== '' && hadAHand
    ? 'The second signature must be by somebody who did not do the work.'
    : '';
}
