import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holdBack } from './hold-back';
import { learnDuration, type TimedJob, weighJobs } from './learn-duration';
import { updateNormal } from './update-normal';

const CARD = { low: 480, likely: 600, high: 900 };

function jobsOf(...minutes: readonly number[]): TimedJob[] {
  return minutes.map((minute, number) => ({ seconds: 60 * minute, who: `person ${number}` }));
}

const anyJobs = fc.array(
  fc.record({ seconds: fc.integer({ min: 60, max: 7200 }), who: fc.constantFrom('Ada', 'Ben', 'Cyd') }),
  { minLength: 1, maxLength: 25 },
);

describe('updateNormal', () => {
  it('is the textbook update', () => {
    // Guess 10 ± 2 worth 4, seen 13 and 15: worth 6, mean (40 + 28) / 6, sum of squares 4 × 4 + 2 + (4 × 2 / 6) × 16.
    const { mean, variance, worth } = updateNormal({ mean: 10, variance: 4, worth: 4 }, [
      { value: 13, weight: 1 },
      { value: 15, weight: 1 },
    ]);
    expect(worth).toBe(6);
    expect(mean).toBeCloseTo(34 / 3, 12);
    expect(variance).toBeCloseTo((16 + 2 + 64 / 3) / 6, 12);
  });

  it('comes to the same all at once and one by one', () => {
    const seen = fc.array(
      fc.record({
        value: fc.double({ min: -9, max: 9, noNaN: true }),
        weight: fc.double({ min: 0.1, max: 2, noNaN: true }),
      }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(seen, (all) => {
        const guess = { mean: 1, variance: 2, worth: 3 };
        const once = updateNormal(guess, all);
        const stepwise = all.reduce((now, one) => updateNormal(now, [one]), guess);
        expect(stepwise.mean).toBeCloseTo(once.mean, 9);
        expect(stepwise.variance).toBeCloseTo(once.variance, 9);
      }),
    );
  });
});

describe('holdBack', () => {
  it('brings in what is far off and leaves the rest', () => {
    const expected = { expected: 0, weight: 3, spread: 1 };
    expect(holdBack([0.5, -1, 40], expected)).toEqual([0.5, -1, 2.5 * 1.4826]);
    // Two alone say nothing of their spread.
    expect(holdBack([0.5, 40], expected)).toEqual([0.5, 2.5]);
  });
});

describe('learnDuration', () => {
  it('is the card while nothing was timed, and says so', () => {
    expect(learnDuration(CARD, [])).toEqual({
      duration: CARD,
      jobs: 0,
      people: 0,
      overrun: 0,
      words: "Not timed yet; the time is the card's.",
    });
  });

  it('moves towards the jobs the more there are, between the card and them', () => {
    const few = learnDuration(CARD, jobsOf(15, 14.5)).duration.likely;
    const more = learnDuration(CARD, jobsOf(15, 14.5, 15.5, 15, 14, 15)).duration.likely;
    const many = learnDuration(CARD, jobsOf(...Array.from({ length: 300 }, () => 15))).duration.likely;
    expect(few).toBeGreaterThan(600);
    expect(more).toBeGreaterThan(few);
    expect(many).toBeGreaterThan(more);
    expect(Math.abs(many - 900)).toBeLessThan(30);
  });

  it('says by how much a job usually overruns, is quicker, or that it is as the card says', () => {
    const twelve = (people: number) =>
      Array.from({ length: 12 }, (_, job) => ({
        seconds: 900 + 30 * (job % 3),
        who: `person ${job % people}`,
      }));
    // The card's middle is about 10.4 min, the jobs' 15.5. By twelve people the jobs outweigh the card by 12 to 5, which moves
    // the times up by a third; by three they count as 6.3 jobs, which moves them up by a quarter.
    expect(learnDuration(CARD, twelve(12)).words).toBe('Usually overruns by 3 min (12 jobs by 12 people).');
    expect(learnDuration(CARD, twelve(3)).words).toBe('Usually overruns by 2 min (12 jobs by 3 people).');
    expect(learnDuration(CARD, jobsOf(10)).words).toBe(
      'Usually takes what the card says (1 job by 1 person).',
    );
    // By 8 to 5 from 10.4 min down to 6: about 0.71 of the card's time.
    expect(learnDuration(CARD, jobsOf(6, 6, 6, 6, 6, 6, 6, 6)).words).toBe(
      'Usually is done 3 min sooner (8 jobs by 8 people).',
    );
  });

  it('takes an absurd entry for a bad one, however absurd', () => {
    const good = jobsOf(10, 11, 9.5, 10.5, 10, 11);
    const without = learnDuration(CARD, good).duration;
    const absurd = learnDuration(CARD, [...good, { seconds: 100_000, who: 'person 7' }]).duration;
    const moreAbsurd = learnDuration(CARD, [...good, { seconds: 100_000_000, who: 'person 7' }]).duration;
    expect(moreAbsurd).toEqual(absurd);
    expect(absurd.likely / without.likely).toBeLessThan(1.06);
    const alone = learnDuration(CARD, [{ seconds: 1, who: 'Ada' }]).duration;
    expect(alone.likely / CARD.likely).toBeGreaterThan(0.9);
  });

  it('does not let one person set the time for all', () => {
    const all = (who: (job: number) => string) =>
      Array.from({ length: 10 }, (_, job) => ({ seconds: 900, who: who(job) }));
    const byOne = learnDuration(
      CARD,
      all(() => 'Ada'),
    ).duration.likely;
    const byTen = learnDuration(
      CARD,
      all((job) => `person ${job}`),
    ).duration.likely;
    expect(byOne).toBeLessThan(byTen);
    // 10 jobs of one person count as 10 / (1 + 9 × 0.3) = 2.70 jobs.
    const together = weighJobs(all(() => 'Ada')).reduce((sum, weight) => sum + weight, 0);
    expect(together).toBeCloseTo(10 / 3.7, 12);
  });

  it('learns a spread where the card has none, and keeps a low of nothing', () => {
    const sure = learnDuration({ low: 600, likely: 600, high: 600 }, jobsOf(8, 12, 10, 14)).duration;
    expect(sure.high).toBeGreaterThan(sure.low);
    expect(learnDuration({ low: 0, likely: 600, high: 900 }, jobsOf(12)).duration.low).toBe(0);
  });

  it('always gives three points in order, whatever the order of the jobs', () => {
    fc.assert(
      fc.property(anyJobs, (jobs) => {
        const { duration } = learnDuration(CARD, jobs);
        expect(duration.low).toBeGreaterThan(0);
        expect(duration.likely).toBeGreaterThanOrEqual(duration.low);
        expect(duration.high).toBeGreaterThanOrEqual(duration.likely);
        expect(learnDuration(CARD, jobs.toReversed()).duration.likely).toBeCloseTo(duration.likely, 6);
      }),
    );
  });

  it('refuses times that can not be', () => {
    expect(() => learnDuration(CARD, [{ seconds: 0, who: 'Ada' }])).toThrow("a job of 0 s can't be");
    expect(() => learnDuration({ low: 0, likely: 0, high: 5 }, [])).toThrow('must be above 0');
  });
});
