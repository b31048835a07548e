import type { BayPlan } from '../bay-plan';
import { openPlanning } from '../search/open-planning';
import type { Service } from '../service-model';
import { withTask } from './reason';
import { whyInfeasible } from './why-infeasible';

export interface WhyLeft {
  /**
   * `impossible`: no plan has it. `later`: the cars would be later by `by`. `lessValue`: what is done would be worth less by
   * `by`. `noBetter`: a plan with it is worth no more.
   */
  kind: 'impossible' | 'later' | 'lessValue' | 'noBetter';
  by: number;
  /** What would be left instead. */
  instead: readonly string[];
  sentence: string;
  /** False when a better plan with the task may exist that wasn't found within the schedules. */
  certain: boolean;
}

/**
 * Why an optional task was left out of a plan: by making the best plan with it and comparing. Nothing when the schedules
 * weren't enough to tell, or when the plan with it is better (then the plan wasn't the best).
 *
 * @throws RangeError when the task is not of this service
 */
export function whyLeft(
  service: Service,
  plan: BayPlan,
  task: string,
  { seed, maxSchedules }: { seed: number; maxSchedules: number },
): WhyLeft | undefined {
  if (!service.tasks.some(({ id }) => id === task)) {
    throw new RangeError(`whyLeft: ${task} is not a task of this service.`);
  }
  const withIt = withTask(task, (one) => ({ ...one, pin: { ...one.pin, done: true } }))(service);
  const { plan: other, proven } = openPlanning(withIt, { seed }).step(maxSchedules);
  if (!other) return proven ? impossible(withIt, task, maxSchedules) : undefined;
  return compare(plan, other, task, proven);
}

function impossible(withIt: Service, task: string, maxSchedules: number): WhyLeft {
  const why = whyInfeasible(withIt, { maxSchedules });
  const reasons = (why?.reasons ?? []).filter(({ id, kind }) => id !== task || kind !== 'pin');
  const because = reasons.map(({ sentence }) => ` ${sentence}`).join('');
  return {
    kind: 'impossible',
    by: 0,
    instead: [],
    sentence: `${task} can't be done.${because}`,
    certain: true,
  };
}

function compare(plan: BayPlan, other: BayPlan, task: string, certain: boolean): WhyLeft | undefined {
  const instead = other.left.filter((id) => !plan.left.includes(id));
  const later = other.objective.late - plan.objective.late;
  const less = plan.objective.value - other.objective.value;
  if (later < 0 || (later === 0 && less < 0)) return undefined;
  const say = (kind: WhyLeft['kind'], by: number, sentence: string) => ({
    kind,
    by,
    instead,
    sentence,
    certain,
  });
  if (later > 0) return say('later', later, `With ${task} the cars would be ${later} later.`);
  const left = instead.length > 0 ? `, since ${instead.join(', ')} would be left` : '';
  if (less > 0)
    return say('lessValue', less, `With ${task} the work done would be worth ${less} less${left}.`);
  return say('noBetter', 0, `With ${task} the work done would be worth no more.`);
}
