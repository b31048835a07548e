import { starterCards } from '@halfshaft/lifing';
import { emptyState, type Task, taskOf } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { rowActions } from './record-row-actions';
import { EMPTY_ROW, type RowDraft, readRow } from './row-draft';
import type { SheetRow } from './sheet-rows';

const card = starterCards('front', 'gravel').find((each) => each.needsSignature);
if (!card) throw new Error('The starter cards have none that asks for a signature.');

function rowOf(task: Partial<Task> = {}): SheetRow {
  const source = { kind: 'card' as const, cardId: card?.id ?? '' };
  const open = taskOf(emptyState, { entryId: 'e', serviceId: 'B', source }, null);
  const plain = {
    number: '7',
    title: 'Wheel nuts',
    reason: '',
    lastRead: new Map(),
    seconds: 60,
    people: 1,
    mustDo: true,
    fallsDue: true,
    planned: null,
  };
  return { ...plain, card: card ?? null, task: { ...open, ...task } };
}
const draftOf = (some: Partial<RowDraft>): RowDraft => ({ ...EMPTY_ROW, what: 'done', ...some });
const actionsOf = (row: SheetRow, draft: RowDraft) =>
  rowActions(row, draft, readRow(row, draft, 'mia'), () => 'snag-1').map(
    ({ body, by }) => `${body.kind} ${by}`,
  );

describe('a filled row', () => {
  it('is recorded for the person of its column, and signed in ink by another', () => {
    const draft = draftOf({ signedBy: 'kai' });
    expect(actionsOf(rowOf(), draft)).toEqual(['closeTask mia', 'signTask kai']);
    const [, sign] = rowActions(rowOf(), draft, readRow(rowOf(), draft, 'mia'), () => 'snag-1');
    expect(sign?.body.args).toMatchObject({ onPaper: true });
  });

  it('is recorded for whoever initialled it', () => {
    expect(actionsOf(rowOf(), draftOf({ by: 'jo' }))).toEqual(['closeTask jo']);
  });

  it('that nobody filled in becomes nothing', () => {
    expect(actionsOf(rowOf(), draftOf({ what: '' }))).toEqual([]);
  });

  it('raises a snag for a finding that is to stay on the list', () => {
    const finding = { lookId: null, position: 'FL', grade: 'needsWork' as const, words: 'stud stripped' };
    const draft = draftOf({
      findings: [
        { ...finding, raiseSnag: true },
        { ...finding, raiseSnag: false },
      ],
    });
    expect(actionsOf(rowOf(), draft)).toEqual(['closeTask mia', 'raiseSnag mia']);
  });

  it('says what stands in the way', () => {
    const problems = (row: SheetRow, draft: RowDraft, person: string | null = 'mia') =>
      readRow(row, draft, person).problems;
    expect(problems(rowOf(), draftOf({ signedBy: 'mia' }))).toEqual([
      'The second signature must be by somebody who did not do the work.',
    ]);
    expect(problems(rowOf({ state: 'done', doneBy: 'kai' }), draftOf({ signedBy: 'kai' }))).toHaveLength(1);
    expect(problems(rowOf(), draftOf({ what: 'left' }))).toEqual(['Say in a few words why it was left.']);
    expect(problems(rowOf(), draftOf({}), null)).toEqual(['Say whose initials stand there.']);
    expect(problems(rowOf(), draftOf({ signedBy: 'kai' }))).toEqual([]);
  });
});
