import { starterCards } from '@halfshaft/lifing';
import { emptyState, taskOf } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import type { JudgedCard } from '../service/judge-visit';
import { partnersAt, rowsByFirst, sheetRows, type VisitPlan } from './sheet-rows';

const CARDS = starterCards('front', 'gravel');
const names = { clock: String, serviceName: (id: string) => `Service ${id}` };

function judged(verdictOf: (index: number) => 'doNow' | 'ifTime' | 'leave'): JudgedCard[] {
  return CARDS.map((card, index) => {
    const source = { kind: 'card' as const, cardId: card.id };
    const task = taskOf(emptyState, { entryId: 'e', serviceId: 'B', source }, null);
    const verdict = {
      cardId: card.id,
      verdict: verdictOf(index),
      doableHere: true,
      overdue: false,
      reasons: [],
    };
    return { card, judged: verdict, lastDone: null, lastRead: new Map(), task };
  });
}

const ask = (cards: JudgedCard[], people: string[], plan: VisitPlan | null = null) =>
  sheetRows({ cards, cardIds: CARDS.map((card) => card.id), snags: [], snagIds: [], people, plan, names });

describe('sheetRows', () => {
  it('gives every row that is due to somebody, and the rest to nobody', () => {
    const sheet = ask(
      judged((index) => (index % 3 === 0 ? 'leave' : 'doNow')),
      ['mia', 'kai'],
    );
    const shared = new Set(sheet.shares.flatMap(({ work }) => work.map((row) => row.number)));
    expect(shared.size + sheet.canWait.length).toBe(CARDS.length);
    expect(sheet.shares.map(({ personId }) => personId)).toEqual(['mia', 'kai']);
  });

  it('keeps the number of a row when verdicts change after printing', () => {
    const numberOf = (sheet: ReturnType<typeof ask>, id: string | undefined) =>
      [...sheet.shares.flatMap(({ work }) => work), ...sheet.canWait].find((row) => row.card?.id === id)
        ?.number;
    const before = ask(
      judged(() => 'doNow'),
      ['mia', 'kai'],
    );
    const after = ask(judged((index) => (index < 4 ? 'leave' : 'ifTime')).reverse(), ['kai']);
    for (const card of CARDS) expect(numberOf(after, card.id)).toBe(numberOf(before, card.id));
  });

  it('gives each person the work of the plan in its order, what the plan leaves to nobody, and says why', () => {
    const [first, second, third] = CARDS;
    if (!first || !second || !third) throw new Error('The starter set has too few cards.');
    const row = { step: null, finish: 300, startBy: 200, takesOverFrom: [] };
    const rows = [
      { ...row, id: second.id, start: 0, people: ['kai'] },
      { ...row, id: 'car down', step: 'down' as const, start: 100, people: ['mia', 'kai'] },
      { ...row, id: first.id, start: 200, people: ['kai', 'mia'] },
    ];
    const left = [{ id: third.id, sentence: 'No time for it beside the rest.' }];
    const sheet = ask(
      judged((index) => (index < 3 ? 'doNow' : 'leave')),
      ['mia', 'kai'],
      { kind: 'plan', rows, left, spareSeconds: 60 },
    );
    expect(sheet.shares.map(({ work }) => work.map(({ card }) => card?.id))).toEqual([
      [first.id],
      [second.id, first.id],
    ]);
    expect(sheet.shares.map(({ steps }) => steps.map(({ words }) => words))).toEqual([
      ['Wheels on, car down'],
      ['Wheels on, car down'],
    ]);
    expect(sheet.left.map(({ row, because }) => [row.card?.id, because])).toEqual([
      [third.id, 'No time for it beside the rest.'],
    ]);
  });

  it('shows work for two in both columns and records it once, with the first', () => {
    const sheet = ask(
      judged(() => 'doNow'),
      ['mia', 'kai'],
    );
    const rows = rowsByFirst(sheet.shares).flatMap((group) => group.rows);
    expect(new Set(rows).size).toBe(rows.length);
    expect(rows).toHaveLength(CARDS.length);
    for (const row of rows.filter(({ people }) => people === 2)) {
      expect(partnersAt(row, 'mia', sheet.shares)).toEqual(['kai']);
    }
  });
});
