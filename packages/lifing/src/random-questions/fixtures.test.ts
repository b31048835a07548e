import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeCard } from '../judge-card';
import { randomQuestion } from './fixtures';

describe('the random questions of the other tests', () => {
  // A property that is only ever asked of cards that are left alone proves nothing.
  const verdicts = fc
    .sample(randomQuestion, { numRuns: 600, seed: 7 })
    .map(({ question }) => judgeCard(question));

  it.each(['doNow', 'ifTime', 'leave'])('often lead to %s', (verdict) => {
    expect(verdicts.filter((each) => each.verdict === verdict).length).toBeGreaterThan(15);
  });

  it.each(['past', 'wontReach', 'withinTolerance', 'dateFalls', 'reaches', 'lasts', 'notHere'])(
    'often lead to the reason %s',
    (code) => {
      const having = verdicts.filter((each) => each.reasons.some((reason) => reason.code === code));
      expect(having.length).toBeGreaterThan(15);
    },
  );
});
