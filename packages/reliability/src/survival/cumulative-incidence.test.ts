import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answered, frozen, refused, SHOCK_ABSORBERS, SHOCK_LIVES } from '../fixtures';
import { type CausedLife, cumulativeIncidence } from './cumulative-incidence';
import { kaplanMeier } from './kaplan-meier';
import { stepAt } from './step-at';

// Shock absorbers, two modes (O'Connor 1985; Meeker & Escobar 1998, table C.2).
const SHOCK_CAUSES: readonly CausedLife[] = [
  ...SHOCK_ABSORBERS.mode1.map((distance) => ({ distance, cause: 'mode 1' })),
  ...SHOCK_ABSORBERS.mode2.map((distance) => ({ distance, cause: 'mode 2' })),
  ...SHOCK_ABSORBERS.good.map((distance) => ({ distance, cause: null })),
];

const someLives = fc
  .array(
    fc.record({
      distance: fc.integer({ min: 0, max: 25 }),
      cause: fc.constantFrom('engine', 'off', 'brakes', null),
    }),
    { minLength: 1, maxLength: 30 },
  )
  .filter((lives) => lives.some(({ cause }) => cause !== null));

function onlyCause(lives: readonly CausedLife[], wanted: string) {
  return lives.map(({ distance, cause }) => ({ distance, failed: cause === wanted }));
}

describe('cumulativeIncidence', () => {
  it('leaves the survival of all modes together, which is the product of the modes (no two fail at one distance)', () => {
    const result = answered(cumulativeIncidence(frozen(SHOCK_CAUSES)));
    const all = answered(kaplanMeier(SHOCK_LIVES)).steps;
    const first = answered(kaplanMeier(onlyCause(SHOCK_CAUSES, 'mode 1'))).steps;
    const second = answered(kaplanMeier(onlyCause(SHOCK_CAUSES, 'mode 2'))).steps;
    expect(result.surviving).toHaveLength(11);
    for (const { distance, surviving } of result.surviving) {
      expect(surviving).toBeCloseTo(stepAt(all, distance)?.surviving ?? 1, 13);
      const product = (stepAt(first, distance)?.surviving ?? 1) * (stepAt(second, distance)?.surviving ?? 1);
      expect(surviving).toBeCloseTo(product, 13);
    }
  });

  it('gives each mode less than its curve taken alone would', () => {
    const [mode1] = answered(cumulativeIncidence(SHOCK_CAUSES)).causes;
    const alone = answered(kaplanMeier(onlyCause(SHOCK_CAUSES, 'mode 1'))).steps.at(-1);
    expect(mode1).toMatchObject({ cause: 'mode 1', failures: 7 });
    expect(mode1?.steps.at(-1)?.incidence).toBeLessThan(1 - (alone?.surviving ?? 0) - 0.05);
  });

  it('shares out everything: the causes and the survivors make 1 at every distance', () => {
    fc.assert(
      fc.property(someLives, (lives) => {
        const { surviving, causes } = answered(cumulativeIncidence(frozen(lives)));
        for (const [index, step] of surviving.entries()) {
          const ended = causes.reduce((sum, { steps }) => sum + (steps[index]?.incidence ?? 0), 0);
          expect(ended + step.surviving).toBeCloseTo(1, 12);
          for (const { steps } of causes) expect(steps[index]?.distance).toBe(step.distance);
        }
      }),
    );
  });

  it('is Kaplan and Meier’s curve, with Greenwood’s error, when there is one cause', () => {
    fc.assert(
      fc.property(someLives, (lives) => {
        const oneCause = lives.map(({ distance, cause }) => ({ distance, cause: cause && 'any' }));
        const { steps } = answered(kaplanMeier(onlyCause(oneCause, 'any')));
        const [any] = answered(cumulativeIncidence(oneCause)).causes;
        for (const [index, step] of steps.entries()) {
          expect(any?.steps[index]?.incidence).toBeCloseTo(1 - step.surviving, 12);
          if (step.standardError !== null) {
            expect(any?.steps[index]?.standardError).toBeCloseTo(step.standardError, 9);
          }
        }
      }),
    );
  });

  it('is the plain share, with the binomial error, when nothing is censored', () => {
    fc.assert(
      fc.property(someLives, (lives) => {
        const ended = lives.filter(({ cause }) => cause !== null);
        for (const { cause, steps } of answered(cumulativeIncidence(ended)).causes) {
          for (const step of steps) {
            const seen = ended.filter(
              (life) => life.cause === cause && life.distance <= step.distance,
            ).length;
            const share = seen / ended.length;
            expect(step.incidence).toBeCloseTo(share, 12);
            expect(step.standardError).toBeCloseTo(Math.sqrt((share * (1 - share)) / ended.length), 7);
          }
        }
      }),
    );
  });

  it('has the variance of the closed formula', () => {
    fc.assert(
      fc.property(someLives, (lives) => {
        for (const { cause, steps } of answered(cumulativeIncidence(lives)).causes) {
          for (const [index, step] of steps.entries()) {
            const closed = closedVariance(lives, cause, step.distance);
            if (closed !== null) expect(steps[index]?.standardError).toBeCloseTo(Math.sqrt(closed), 7);
          }
        }
      }),
    );
  });

  it('refuses when nothing has ended, and throws on nonsense', () => {
    expect(refused(cumulativeIncidence([])).reason).toBe('noLives');
    expect(refused(cumulativeIncidence([{ distance: 4, cause: null }])).says).toBe(
      'None of the 1 has ended yet, so no cause has a share.',
    );
    expect(() => cumulativeIncidence([{ distance: -4, cause: 'off' }])).toThrow(
      'cumulativeIncidence: a distance',
    );
  });
});

/**
 * The delta-method variance written out as three sums (Dinse & Larson 1986, Biometrika 73:379-386; Marubini & Valsecchi
 * 1995, section 10.3); `null` where a sum divides by zero.
 */
function closedVariance(lives: readonly CausedLife[], cause: string, until: number): number | null {
  const distances = [...new Set(lives.map(({ distance }) => distance))].sort((a, b) => a - b);
  const rows: { n: number; d: number; mine: number; before: number; incidence: number }[] = [];
  let [surviving, incidence] = [1, 0];
  for (const distance of distances.filter((each) => each <= until)) {
    const n = lives.filter((life) => life.distance >= distance).length;
    const here = lives.filter((life) => life.distance === distance && life.cause !== null);
    const mine = here.filter((life) => life.cause === cause).length;
    incidence += (surviving * mine) / n;
    rows.push({ n, d: here.length, mine, before: surviving, incidence });
    surviving *= 1 - here.length / n;
  }
  if (rows.some(({ n, d }) => n === d)) return null;
  return rows.reduce((sum, { n, d, mine, before, incidence: then }) => {
    const since = incidence - then;
    return (
      sum +
      (since ** 2 * d) / (n * (n - d)) +
      (before ** 2 * (n - mine) * mine) / n ** 3 -
      (2 * since * before * mine) / n ** 2
    );
  }, 0);
}
