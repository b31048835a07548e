import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quickAnswers, randomEvent } from './fixtures';

describe('the random events of the other tests', () => {
  // Two answers that agree on cards nothing calls for prove nothing.
  const questions = fc.sample(randomEvent, { numRuns: 600, seed: 11 });
  const answers = questions.flatMap(quickAnswers);

  it.each(['doNow', 'ifTime', 'leave'])('often lead to %s', (verdict) => {
    expect(answers.filter((each) => each.verdict === verdict).length).toBeGreaterThan(50);
  });

  it.each(['incident', 'jobDone', 'nextConditions', 'newlyFitted', 'temporaryRepair'])(
    'often have a card called for by %s, often one that is late, and one that cannot be done',
    (kind) => {
      const called = answers.filter((each) => each.calledBy.includes(kind));
      expect(called.length).toBeGreaterThan(25);
      const only = called.filter((each) => each.calledBy.length === 1);
      expect(only.filter((each) => each.overdue).length).toBeGreaterThan(5);
      expect(only.filter((each) => !each.doableHere).length).toBeGreaterThan(5);
    },
  );

  it('count engine seconds, and some have some', () => {
    const seconds = answers
      .flatMap((each) => each.limits)
      .filter((limit) => limit.startsWith('engineSeconds'));
    expect(seconds.length).toBeGreaterThan(100);
    expect(new Set(seconds.map((limit) => limit.split(' ')[3])).size).toBeGreaterThan(50);
  });
});
