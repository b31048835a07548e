import { type Drive, fullStarterCards, type Surface, starterCards } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import { cardBody } from './card';

const DRIVES: Drive[] = ['front', 'rear', 'four'];
const SURFACES: Surface[] = ['gravel', 'tarmac', 'snow'];

describe('cardBody', () => {
  for (const drive of DRIVES) {
    for (const surface of SURFACES) {
      it(`takes every starter card for ${drive} on ${surface}, unchanged`, () => {
        for (const { id, ...card } of [
          ...starterCards(drive, surface),
          ...fullStarterCards(drive, surface),
        ]) {
          expect(cardBody.safeParse(card), id).toEqual({ success: true, data: card });
        }
      });
    }
  }

  const [first] = starterCards('front', 'gravel').filter((card) => card.kind === 'job');
  if (!first) throw new Error('The starter set has no job.');
  const { id: _, ...good } = first;

  it.each([
    ['no limit at all', { intervals: [], dateLimit: null }, 'intervals', 'would never fall due'],
    [
      'a limit of nothing',
      { intervals: [{ counter: 'stages', every: 0, tolerance: 0 }] },
      'intervals.0.every',
      'from 1 to',
    ],
    [
      'a job with looks',
      { looks: [{ id: 'a', words: 'a' }] },
      'looks',
      'A round has looks and a job has none',
    ],
    ['a time of one second', { seconds: 1 }, 'seconds', 'from 30 to 14400'],
    ['an unknown place', { place: 'moon' }, 'place', ''],
    [
      'limits the wrong way round',
      {
        readings: [
          {
            id: 'a',
            name: 'A',
            kind: 'level',
            unit: 'V',
            decimals: 1,
            positions: [],
            low: 9,
            high: 3,
            required: false,
          },
        ],
      },
      'readings.0.low',
      'Swap them',
    ],
  ])('refuses %s with its field and a sentence', (_what, change, path, words) => {
    const issues = cardBody.safeParse({ ...good, ...change }).error?.issues ?? [];
    expect(issues.map((issue) => issue.path.join('.'))).toContain(path);
    expect(issues.map((issue) => issue.message).join(' ')).toContain(words);
  });
});
