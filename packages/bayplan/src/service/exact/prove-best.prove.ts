import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkBayPlan } from '../check-bay-plan';
import { compileService } from '../compile-service';
import { anyService } from '../fixtures';
import { toBayPlan } from '../judge-work';
import { bestByProgram } from '../program/fixtures';
import { proveBest, type ServiceIncumbent } from './prove-best';

const CASES = 480;

it(`agrees with an integer program on every level of ${CASES} random services`, {
  timeout: 1_200_000,
}, async () => {
  const services = fc.sample(fc.noBias(anyService()), { numRuns: CASES, seed: 20 });
  const seen = { feasible: 0, late: 0, handOver: 0, left: 0, twoCars: 0, access: 0, shared: 0 };
  for (const service of services) {
    const compiled = compileService(service);
    const incumbent: ServiceIncumbent = { best: undefined, bound: {} };
    for (const _ of proveBest(compiled, incumbent));
    const wanted = await bestByProgram(service);
    expect(incumbent.best?.objective, JSON.stringify(service)).toEqual(wanted);
    if (!incumbent.best) continue;
    const plan = toBayPlan(compiled, incumbent.best);
    expect(checkBayPlan(service, plan)).toEqual([]);
    expect(incumbent.bound).toEqual(wanted);
    seen.feasible += 1;
    if (plan.objective.late > 0) seen.late += 1;
    if (plan.objective.handOvers > 0) seen.handOver += 1;
    if (plan.left.length > 0) seen.left += 1;
    if (new Set(service.tasks.map(({ car }) => car)).size > 1) seen.twoCars += 1;
    if (plan.work.some(({ task }) => task === 'up')) seen.access += 1;
    if (plan.work.some(({ people }) => people.length > 1)) seen.shared += 1;
  }
  // Agreement means little unless plans exist and every part of the model is at work in many of them.
  expect(seen.feasible).toBeGreaterThan(200);
  for (const count of Object.values(seen)) expect(count, JSON.stringify(seen)).toBeGreaterThan(12);
});
