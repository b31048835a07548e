import type { BayPlan, PlannedWork } from '../bay-plan';
import { checkBayPlan } from '../check-bay-plan';
import { type CompiledService, compileService } from '../compile-service';
import { type Decided, judgeWork, toBayPlan } from '../judge-work';
import { type OrderRules, orderOf, pushStarts, type WorkOrder } from '../order/push-starts';
import type { Service } from '../service-model';

/**
 * A plan made earlier, carried into the service as it is now: the same ways, people and order, with what is begun first and
 * everything after it pushed. Nothing when that would break a rule.
 *
 * Work moves up where its order allows. Where that leads into a break, which the plan had waited for, it keeps its times.
 */
export function carryPlan(fromNow: Service, plan: BayPlan): BayPlan | undefined {
  const { work } = orderOf(fromNow, shiftPlan(fromNow, plan), carriedRules(plan));
  const waiting = work.map((one) => ({ ...one, earliest: Math.max(one.earliest, one.work.start) }));
  return pushed(fromNow, { work }) ?? pushed(fromNow, { work: waiting });
}

function pushed(fromNow: Service, order: WorkOrder): BayPlan | undefined {
  const starts = new Float64Array(order.work.length);
  pushStarts(
    order,
    Float64Array.from(order.work, ({ work }) => work.finish - work.start),
    starts,
  );
  const work = order.work.map(({ work: one }, place): PlannedWork => {
    const start = starts[place] ?? one.start;
    return { ...one, start, finish: start + one.finish - one.start };
  });
  const carried = judgePlan(compileService(fromNow), work);
  return checkBayPlan(fromNow, carried).length === 0 ? carried : undefined;
}

/**
 * The rules for the order of a shifted plan: what overlapped in the plan itself may overlap still, unless somebody has come
 * to be on both.
 */
export function carriedRules(plan: BayPlan): OrderRules {
  const planned = new Map(plan.work.map((one) => [one.task, one]));
  return {
    plannedStart: ({ task, start }) => planned.get(task)?.start ?? start,
    follows: (one, other) => {
      const [first, second] = [planned.get(one.task), planned.get(other.task)];
      const overlaps = first && second && first.start < second.finish && second.start < first.finish;
      if (!overlaps) return one.finish <= other.start;
      return one.people.some(({ person }) => other.people.some((seat) => seat.person === person));
    },
  };
}

/** What is begun as it was, and the rest as late as it takes to come after all that, in its own order. */
export function shiftPlan({ tasks }: Service, plan: BayPlan): BayPlan {
  const begun = tasks.flatMap(({ id, underWay }): PlannedWork[] => {
    if (!underWay) return [];
    const { since, until, way, people } = underWay;
    return [{ task: id, way, start: since, finish: until, people: people.map((person) => ({ person })) }];
  });
  const rest = plan.work.filter(({ task }) => !begun.some((one) => one.task === task));
  const end = Math.max(...begun.map(({ finish }) => finish));
  const by = Math.max(0, end - Math.min(...rest.map(({ start }) => start)));
  const later = rest.map((one) => ({ ...one, start: one.start + by, finish: one.finish + by }));
  return { ...plan, work: [...begun, ...later] };
}

/** A plan of such work, with what it is worth; what isn't in it is left. */
export function judgePlan(compiled: CompiledService, work: readonly PlannedWork[]): BayPlan {
  const numbers = new Map(compiled.service.people.map(({ id }, number) => [id, number]));
  const decided = compiled.tasks.map(({ id, ways, underWay }): Decided => {
    const one = work.find(({ task }) => task === id);
    const way = ways.findIndex((known) => known.id === one?.way);
    if (!one || way < 0) return undefined;
    const numbersOf = (seats: PlannedWork['people']) => seats.map(({ person }) => numbers.get(person) ?? -1);
    const crews = ways[way]?.crew ?? [];
    const people = underWay
      ? numbersOf(one.people).map((person) => [person])
      : crews.map((crew) => numbersOf(one.people.filter(({ skill }) => skill === crew.skill)));
    return { way, start: one.start, people };
  });
  return toBayPlan(compiled, judgeWork(compiled, decided));
}
