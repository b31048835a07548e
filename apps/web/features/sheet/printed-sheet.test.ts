import { starterCards } from '@halfshaft/lifing';
import { emptyState, taskOf } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { recordGroups } from './printed-sheet';
import type { SheetOfService, SheetRow } from './sheet-rows';

const rows = starterCards('front', 'gravel').map((card, place): SheetRow => {
  const source = { kind: 'card' as const, cardId: card.id };
  const task = taskOf(emptyState, { entryId: 'e', serviceId: 'B', source }, null);
  const plain = { reason: '', lastRead: new Map(), seconds: 60, people: 1, mustDo: true, fallsDue: true };
  return { ...plain, number: String(place + 1), title: card.name, task, card, planned: null };
});
const [one, two, three, four] = rows;
if (!one || !two || !three || !four) throw new Error('The starter set has too few cards.');
const sheet: SheetOfService = {
  shares: [{ personId: 'mia', work: [one, two], steps: [], seconds: 120 }],
  left: [{ row: three, because: 'No time for it beside the rest.' }],
  snags: [],
  canWait: [four],
};

describe('recordGroups', () => {
  it('takes the rows of the sheet as it is now where none was printed here', () => {
    expect(recordGroups(sheet, null)).toEqual({
      columns: [{ personId: 'mia', rows: [one, two] }],
      rest: [three, four],
    });
  });

  it('keeps the columns that were printed, whatever the plan is now, and loses no row', () => {
    const printed = [
      { personId: 'kai', taskIds: [three.task.id, one.task.id, 'gone since'] },
      { personId: 'mia', taskIds: [] },
    ];
    expect(recordGroups(sheet, printed)).toEqual({
      columns: [
        { personId: 'kai', rows: [three, one] },
        { personId: 'mia', rows: [] },
      ],
      rest: [two, four],
    });
  });
});
