import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileService } from '../compile-service';
import { anyService } from '../fixtures';
import { bestByProgram } from '../program/fixtures';
import type { Service } from '../service-model';
import { boundFinish } from './bound-finish';

/** Two people, and work by car: duration, value and whether it must be done. */
function twoPeople(...cars: [duration: number, value: number, mandatory: boolean][][]): Service {
  return {
    cars: cars.map((_, car) => ({ id: `car${car}`, inTime: 5 * car, outTime: 90 })),
    people: ['Ada', 'Ben'].map((id) => ({ id, skills: [], hours: [{ from: 0, until: 99 }] })),
    places: [],
    tools: [],
    accesses: [],
    tasks: cars.flatMap((work, car) =>
      work.map(([low, value, mandatory], place) => ({
        id: `task${car}.${place}`,
        car: `car${car}`,
        mandatory,
        ways: [{ id: 'way', value, crew: [{ count: 1 }], duration: { low, likely: low, high: low } }],
      })),
    ),
  };
}

const finishOf = (service: Service, value: number) => boundFinish(compileService(service), value);

describe('boundFinish', () => {
  it('shares what must be done among all', () => {
    expect(
      finishOf(
        twoPeople([
          [6, 0, true],
          [5, 0, true],
          [9, 7, false],
        ]),
        0,
      ),
    ).toBe(6);
  });

  it('adds the least work that is worth as much, with a share of the last (Dantzig 1957)', () => {
    const service = twoPeople([
      [6, 0, true],
      [4, 8, false],
      [8, 4, false],
    ]);
    expect(finishOf(service, 8)).toBe(5);
    expect(finishOf(service, 10)).toBe(7);
    expect(finishOf(service, 12)).toBe(9);
  });

  it('has the last of two cars wait for the work at both', () => {
    // 10 of 20 moments each for two people: the cars alone end at 10 and 5 + 10, the last not before 20.
    expect(finishOf(twoPeople([[20, 0, true]], [[20, 0, true]]), 0)).toBe(10 + 20);
  });

  it('is never above the best plan, as an integer program has it', async () => {
    let compared = 0;
    await fc.assert(
      fc.asyncProperty(anyService({ most: 6 }), async (service) => {
        const best = await bestByProgram(service);
        if (!best) return;
        compared += 1;
        expect(finishOf(service, best.value)).toBeLessThanOrEqual(best.finish);
      }),
      { numRuns: 80 },
    );
    expect(compared).toBeGreaterThan(10);
  });
});
