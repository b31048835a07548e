import type { CarCounts } from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import { countedLines, foundInWords } from './counts-in-words';

const COUNTS: CarCounts = {
  stages: 3,
  stageMetres: 42_100,
  incidents: { ford: 1 },
  snags: { boot: 1, frontLeft: 3 },
  needsWork: { engineBay: 2 },
};

it('says the most frequent first, and what it was', () => {
  expect(countedLines(COUNTS).map(({ what, which, times }) => [what, which, times])).toEqual([
    ['Snag', 'Front left', 3],
    ['Needed work', 'Engine bay', 2],
    ['Snag', 'Boot', 1],
    ['On the road', expect.any(String), 1],
  ]);
});

it('says it in one sentence, also when nothing was found', () => {
  expect(foundInWords({ ...COUNTS, incidents: {} })).toBe(
    'Snag, Front left: 3. Needed work, Engine bay: 2. Snag, Boot: 1.',
  );
  expect(foundInWords({ ...COUNTS, incidents: {}, snags: {}, needsWork: {} })).toBe('Nothing.');
});
