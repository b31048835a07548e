import type { Service } from '../service-model';
import { findOutPossible } from './find-out-possible';
import { listTaskReasons } from './list-task-reasons';
import { listTeamReasons } from './list-team-reasons';
import type { Reason } from './reason';

export interface Infeasible {
  /**
   * Reasons that together rule out every plan: without all the other reasons there still is none, and without any one of
   * these as well there is one. In the order of the service.
   */
  reasons: readonly Reason[];
  /** False when some question took too long to settle: then a reason may be there that isn't needed. */
  certain: boolean;
}

export interface WhyOptions {
  /** At most so many schedules for each question whether there is a plan. */
  maxSchedules: number;
}

/**
 * Why a service has no plan, as a set of reasons of which none can be spared; nothing when it has one, or when that
 * isn't known within the schedules. Each reason in turn is dropped, and taken back if that makes a plan possible
 * (deletion filter, Chinneck & Dravnieks 1991). There may be other such sets.
 *
 * @throws RangeError with the sentence of {@link findServiceFault}
 * @example
 * whyInfeasible(service, { maxSchedules: 2000 })?.reasons.map(({ sentence }) => sentence)
 * // ['There is only 1 of torque wrench.', 'car 1 must be finished by 20.', 'nuts must be done.', 'hubs must be done.']
 */
export function whyInfeasible(service: Service, options: WhyOptions): Infeasible | undefined {
  const explaining = explainInfeasible(service, options);
  for (;;) {
    const step = explaining.next();
    if (step.done) return step.value;
  }
}

/** The same, with a pause after each question, so that whoever runs it can see to other things and stop it. */
export function* explainInfeasible(
  service: Service,
  { maxSchedules }: WhyOptions,
): Generator<void, Infeasible | undefined> {
  if (findOutPossible(service, maxSchedules) !== 'no') return undefined;
  const all = listReasons(service);
  let certain = true;
  const needed = new Set(all);
  for (const reason of all) {
    const rest = all.filter((one) => one === reason || !needed.has(one));
    const possible = findOutPossible(dropReasons(service, rest), maxSchedules);
    if (possible === 'unknown') certain = false;
    if (possible === 'no') needed.delete(reason);
    yield;
  }
  return { reasons: [...needed], certain };
}

/** What a team can least change comes last, so that it is rather that which is named. */
export function listReasons(service: Service): Reason[] {
  return [
    ...listTaskReasons(service).filter(isDetail),
    ...listTeamReasons(service),
    ...listTaskReasons(service).filter(isDuty),
  ];
}

const isDuty = ({ kind }: Reason) => kind === 'mustBeDone';
const isDetail = (reason: Reason) => !isDuty(reason);

/** In the order of {@link listReasons}: the people come after the skills. */
export function dropReasons(service: Service, reasons: readonly Reason[]): Service {
  return reasons.reduce((left, { drop }) => drop(left), service);
}
