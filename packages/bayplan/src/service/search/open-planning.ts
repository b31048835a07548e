import { Chance } from '../../search/chance';
import { type BayPlan, compareObjectives, type Objective } from '../bay-plan';
import { compileService } from '../compile-service';
import { proveBest, type ServiceIncumbent } from '../exact/prove-best';
import { toBayPlan } from '../judge-work';
import type { Service } from '../service-model';
import { breedPlans } from './breed-plans';

/** So many schedules are bred before the exact search begins. */
const BRED_FIRST = 100;

export interface PlanningOptions {
  /** A whole number. The same service, seed and number of schedules give the same plan. */
  seed: number;
}

export interface PlanningResult {
  /** The best plan found, if any. */
  plan: BayPlan | undefined;
  /**
   * Level by level, as far as known, what no plan can better; from the second on for plans whose levels before are at their
   * best.
   */
  bound: Partial<Objective>;
  /** Whether nothing is better than the plan; without a plan, whether there is none. */
  proven: boolean;
  schedules: number;
}

export interface Planning {
  /** Makes so many further schedules, or the few more that the last plan takes, and tells the best of all. */
  step: (maxSchedules: number) => PlanningResult;
}

/**
 * A search for the best {@link BayPlan}, to be driven in steps: the caller owns the time and stops when it likes. Plans are
 * bred (see `breedPlans`); after a hundred schedules an exact search takes turns with the breeding and in the end
 * proves the plan the best (see `proveBest`), or that there is none (see `whyInfeasible` for the reasons).
 *
 * @throws RangeError when {@link findServiceFault} finds a fault, or the seed or a step is not a whole number
 * @example
 * const { plan, proven } = openPlanning(service, { seed: 1 }).step(500);
 */
export function openPlanning(service: Service, { seed }: PlanningOptions): Planning {
  if (!Number.isSafeInteger(seed)) {
    throw new RangeError(`openPlanning: the seed must be a whole number, not ${seed}.`);
  }
  const compiled = compileService(service);
  const incumbent: ServiceIncumbent = { best: undefined, bound: {} };
  const breeding = breedPlans(compiled, new Chance(seed));
  const proving = proveBest(compiled, incumbent, new Chance(seed + 1));
  let schedules = 0;
  let turns = 0;
  let proven = false;
  const breed = () => {
    const { cost, made } = breeding.next().value;
    schedules += cost;
    if (!made) return;
    const { best } = incumbent;
    if (!best || compareObjectives(made.objective, best.objective) < 0) incumbent.best = made;
  };
  const prove = () => {
    const { value } = proving.next();
    if (value === 'closed') proven = true;
    else schedules += 1;
  };
  const step = (maxSchedules: number): PlanningResult => {
    if (!Number.isSafeInteger(maxSchedules) || maxSchedules < 1) {
      throw new RangeError(`step: the schedules must be a whole number from 1, not ${maxSchedules}.`);
    }
    const until = schedules + maxSchedules;
    while (schedules < until && !proven) {
      if (schedules < BRED_FIRST || turns % BREED_EVERY === 0) breed();
      else prove();
      turns += 1;
    }
    const plan = incumbent.best && toBayPlan(compiled, incumbent.best);
    return { plan, bound: { ...incumbent.bound }, proven, schedules };
  };
  return { step };
}

const BREED_EVERY = 2;
