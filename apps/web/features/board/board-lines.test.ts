import { emptyState, type Task, type TaskState, taskOf } from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import { type BoardQuestion, boardOf } from './board-lines';
import { lastSafeStart } from './last-safe-start';

/** Wheels on at 900, out at 1200. */
const CLOSES = { wheelsOnAt: 900, outAt: 1200 };

const taskIn = (id: string, state: TaskState, more: Partial<Task> = {}): Task => ({
  ...taskOf(emptyState, { entryId: 'car', serviceId: 'A', source: { kind: 'card', cardId: id } }, null),
  state,
  ...more,
});
const cardIn = (
  name: string,
  minutes: number,
  task: Task,
  verdict: 'doNow' | 'ifTime' | 'leave' = 'doNow',
  starterId: string | null = null,
): BoardQuestion['cards'][number] => ({
  card: { name, kind: 'job', place: 'body', starterId, seconds: minutes * 60 },
  judged: { verdict },
  task,
});
const titlesAt = (now: number, cards: BoardQuestion['cards'], snags: BoardQuestion['snags'] = []) =>
  boardOf({ cards, snags, closes: CLOSES, now }).lines.map(
    ({ title, isLate, waitsForSignature }) =>
      `${title}${isLate ? ', late' : ''}${waitsForSignature ? ', to sign' : ''}`,
  );

it('must begin a job so that it ends before the wheels go on, and a closing job before the car leaves', () => {
  expect(lastSafeStart({ starterId: null, seconds: 300 }, CLOSES)).toBe(600);
  expect(lastSafeStart({ starterId: 'starter:air-filter', seconds: 300 }, CLOSES)).toBe(600);
  expect(lastSafeStart({ starterId: 'starter:wheel-nuts', seconds: 300 }, CLOSES)).toBe(900);
});

it('shows what is due or taken in the order in which it must begin, and counts the rest', () => {
  const cards = [
    cardIn('Short', 2, taskIn('short', 'open')),
    cardIn('Long', 10, taskIn('long', 'claimed')),
    cardIn('Closed', 5, taskIn('closed', 'done', { doneBy: 'mia' })),
    cardIn('Maybe', 5, taskIn('maybe', 'open'), 'ifTime'),
    cardIn('Maybe begun', 5, taskIn('begun', 'underWay'), 'ifTime'),
    cardIn('Not now', 5, taskIn('not', 'open'), 'leave'),
    cardIn('Carried over', 5, taskIn('over', 'carriedOver')),
  ];
  expect(titlesAt(0, cards)).toEqual(['Long', 'Maybe begun', 'Short']);
  expect(boardOf({ cards, snags: [], closes: CLOSES, now: 0 })).toMatchObject({
    doneCount: 1,
    ifTimeCount: 1,
  });
});

it('is late when nobody has begun it in time, or nobody has finished it in time', () => {
  const open = cardIn('Open', 5, taskIn('open', 'open'));
  const taken = cardIn('Taken', 5, taskIn('taken', 'claimed'));
  expect(titlesAt(600, [open, taken])).toEqual(['Open', 'Taken']);
  expect(titlesAt(601, [open, taken])).toEqual(['Open, late', 'Taken']);
  expect(titlesAt(901, [open, taken])).toEqual(['Open, late', 'Taken, late']);
});

it('puts what waits for a signature before what is in time, and behind what is late', () => {
  const waiting = taskIn('nuts', 'done', { doneBy: 'mia', needsSignature: true });
  const cards = [
    cardIn('In time', 1, taskIn('time', 'open')),
    cardIn('Nuts', 3, waiting, 'doNow', 'starter:wheel-nuts'),
    cardIn('Too long', 14, taskIn('long', 'open')),
  ];
  expect(titlesAt(500, cards)).toEqual(['Too long, late', 'Nuts, to sign', 'In time']);
  const signed = { ...waiting, signedBy: 'kai' };
  expect(titlesAt(500, [cardIn('Nuts', 3, signed)])).toEqual([]);
});

it('has snags first among what is in time, since nobody knows how long they take', () => {
  const snag = { snag: { words: 'oil on the hub' }, task: taskIn('snag', 'open') };
  const card = cardIn('Card', 1, taskIn('card', 'open'));
  expect(titlesAt(0, [card], [snag])).toEqual(['Snag: oil on the hub', 'Card']);
  expect(titlesAt(901, [], [snag])).toEqual(['Snag: oil on the hub, late']);
});
