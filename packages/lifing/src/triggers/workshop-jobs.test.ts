import { describe, expect, it } from 'vitest';
import { done, repair } from './fixtures';
import { workshopJobs } from './workshop-jobs';

describe('workshopJobs', () => {
  it('lists what was never made good, in the order it was made', () => {
    const facts = [repair('late', 15), repair('good', 3, 6), done('late', 16), repair('early', 5)];
    const words = 'wire round the hanger';
    expect(workshopJobs(facts)).toEqual([
      { cardId: 'early', words, pointIndex: 5 },
      { cardId: 'late', words, pointIndex: 15 },
    ]);
  });

  it('has nothing after an event without temporary repairs', () => {
    expect(workshopJobs([done('look', 3)])).toEqual([]);
  });
});
