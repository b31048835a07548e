import type { BayPlan } from '../bay-plan';
import { compileService } from '../compile-service';
import { findServiceFault } from '../find-service-fault';
import { openPlanning } from '../search/open-planning';
import type { Service, ServiceTask } from '../service-model';
import { carryPlan, judgePlan } from './carry-plan';
import { keepPeople } from './keep-people';
import { type Change, listChanges } from './list-changes';
import type { Progress } from './progress';
import { lengthsIn, type SayLength, sayChange, sayLeaving, saySlip } from './say-proposal';
import { serviceFromNow } from './service-from-now';

export interface ReplanOptions {
  /** A whole number: the same one gives the same proposal. */
  seed: number;
  /** How many schedules may be tried, of each of two searches. */
  schedules: number;
  /** How many of the service's units are a minute, for the words. */
  unitsPerMinute: number;
}

export type Proposal =
  | {
      /** `keep`: nobody changes anything, though things may start later. */
      kind: 'keep' | 'change';
      /** The service as it is now, of which this is a plan. */
      service: Service;
      plan: BayPlan;
      changes: readonly Change[];
      sentence: string;
    }
  /** Nothing found that keeps every rule; {@link whyInfeasible} may tell why of this service. */
  | { kind: 'noPlan'; service: Service; sentence: string }
  /** What is logged contradicts itself. */
  | { kind: 'unclear'; sentence: string };

/**
 * One proposal for the rest of a service, from what is done and under way. Nobody is moved without need: the old plan is
 * kept, its starts pushed, unless another leaves less late or gets more done; then of those found that are best at that, the
 * one with the fewest changes. An earlier finish alone is no need. The plan is only proposed: who decides is the manager.
 *
 * @param plan one that {@link checkBayPlan} found nothing wrong with
 * @throws RangeError when the service or the options make no sense (see {@link openPlanning})
 */
export function replan(
  service: Service,
  plan: BayPlan,
  now: number,
  progress: readonly Progress[],
  options: ReplanOptions,
): Proposal {
  const fromNow = serviceFromNow(service, now, progress);
  const fault = findServiceFault(fromNow);
  if (fault) return { kind: 'unclear', sentence: `The log can't be right: ${fault.sentence}` };
  const kept = carryPlan(fromNow, plan);
  const candidates = [kept, searchSameSeats(fromNow, plan, options), searchAnew(fromNow, plan, options)]
    .filter((one) => one !== undefined)
    .map((one) => ({ plan: one, changes: listChanges(fromNow, plan, one) }))
    .toSorted(compareCandidates);
  const say = lengthsIn(options.unitsPerMinute);
  const slip = saySlip(fromNow, plan, now, say);
  const [best] = candidates;
  if (!best) return { kind: 'noPlan', service: fromNow, sentence: `${slip} ${NO_PLAN}` };
  const kind = best.changes.length === 0 ? 'keep' : 'change';
  const sentence = `${slip} ${sayBest(fromNow, kept, best, say)}`;
  return { kind, service: fromNow, ...best, sentence };
}

const NO_PLAN =
  'No plan was found that still does all that must be done in time. Decide what to give up, and ask again.';

interface Candidate {
  plan: BayPlan;
  changes: readonly Change[];
}

function compareCandidates(one: Candidate, other: Candidate): number {
  const [first, second] = [one.plan.objective, other.plan.objective];
  return (
    first.late - second.late ||
    second.value - first.value ||
    one.changes.length - other.changes.length ||
    first.finish - second.finish ||
    first.handOvers - second.handOvers
  );
}

/** With everybody on what they were to do: only the order, and what is left or taken up, may change. */
function searchSameSeats(fromNow: Service, old: BayPlan, options: ReplanOptions): BayPlan | undefined {
  const tasks = fromNow.tasks.map((task): ServiceTask => {
    const work = old.work.find((one) => one.task === task.id);
    if (task.underWay || !work || task.pin?.done === false) return task;
    const people = work.people.map(({ person }) => person);
    return { ...task, pin: { ...task.pin, way: work.way, people } };
  });
  return openPlanning({ ...fromNow, tasks }, options).step(options.schedules).plan;
}

function searchAnew(fromNow: Service, old: BayPlan, options: ReplanOptions): BayPlan | undefined {
  const { plan } = openPlanning(fromNow, options).step(options.schedules);
  return plan && judgePlan(compileService(fromNow), keepPeople(fromNow, old, plan));
}

function sayBest(fromNow: Service, kept: BayPlan | undefined, best: Candidate, say: SayLength): string {
  const leaving = sayLeaving(best.plan, fromNow, say);
  if (best.changes.length === 0) return `Keep to the plan: ${leaving}.`;
  const otherwise = kept
    ? `Kept as it is, ${sayLeaving(kept, fromNow, say)}.`
    : 'Kept as it is, the plan no longer works out.';
  return [otherwise, ...best.changes.map(sayChange), `Then ${leaving}.`].join(' ');
}
