import type { BayPlan } from '../bay-plan';
import { compileService } from '../compile-service';
import { findServiceFault } from '../find-service-fault';
import { openPlanning } from '../search/open-planning';
import type { Service, ServiceTask } from '../service-model';
import { carryPlan, judgePlan } from './carry-plan';
import { keepPeople } from './keep-people';
import { type Change, listChanges } from './list-changes';
import type { Progress } from './progress';
import { repairPlan } from './repair-plan';
import { lengthsIn, type SayLength, sayChange, sayLeaving, saySlip } from './say-proposal';
import { serviceFromNow } from './service-from-now';

export interface ReplanOptions {
  /** A whole number: the same one gives the same proposal. */
  seed: number;
  /** How many schedules may be tried where there is something to search for; a few dozen go a long way. */
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
 * One proposal for the rest of a service, from what is done and under way. Nobody is moved without need: while
 * the old plan, its starts pushed, still leaves on time, it is kept, and only something left may be taken up besides. When it
 * doesn't, as few changes as take the lateness away are proposed (see {@link repairPlan}); only if none do, the rest is
 * planned anew, with people kept where they were as far as may be. The plan is only proposed: who decides is the manager.
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
  const candidates = listPlans(fromNow, plan, kept, options)
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

/** The old plan if it can be kept, and what may be better; a search of everything only if a few changes don't do. */
function listPlans(
  fromNow: Service,
  old: BayPlan,
  kept: BayPlan | undefined,
  options: ReplanOptions,
): BayPlan[] {
  if (kept?.objective.late === 0) return [kept, searchMore(fromNow, old, options) ?? kept];
  const repaired = repairPlan(fromNow, old);
  const known = [kept, repaired].filter((one) => one !== undefined);
  if (repaired?.objective.late === 0) return known;
  const { plan } = openPlanning(fromNow, options).step(options.schedules);
  if (!plan) return known;
  return [...known, judgePlan(compileService(fromNow), keepPeople(fromNow, old, plan))];
}

/** With all that was to be done done by the same people: only more may be taken up. */
function searchMore(fromNow: Service, old: BayPlan, options: ReplanOptions): BayPlan | undefined {
  const done = new Map(old.work.map((work) => [work.task, work]));
  if (fromNow.tasks.every(({ id, underWay, pin }) => underWay || done.has(id) || pin?.done === false)) return;
  const tasks = fromNow.tasks.map((task): ServiceTask => {
    const work = done.get(task.id);
    if (task.underWay || !work || task.pin?.done === false) return task;
    const people = work.people.map(({ person }) => person);
    return { ...task, pin: { ...task.pin, done: true, way: work.way, people } };
  });
  return openPlanning({ ...fromNow, tasks }, options).step(options.schedules).plan;
}

function sayBest(fromNow: Service, kept: BayPlan | undefined, best: Candidate, say: SayLength): string {
  const leaving = sayLeaving(best.plan, fromNow, say);
  if (best.changes.length === 0) return `Keep to the plan: ${leaving}.`;
  const otherwise = kept
    ? `Kept as it is, ${sayLeaving(kept, fromNow, say)}.`
    : 'Kept as it is, the plan no longer works out.';
  return [otherwise, ...best.changes.map(sayChange), `Then ${leaving}.`].join(' ');
}
