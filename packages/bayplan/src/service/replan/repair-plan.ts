import type { BayPlan, PlannedWork } from '../bay-plan';
import { checkBayPlan } from '../check-bay-plan';
import { compileService } from '../compile-service';
import { lagBetween, listDone } from '../order/plan-order';
import { type OrderedWork, type OrderRules, orderOf, pushStarts } from '../order/push-starts';
import type { Service, ServicePerson } from '../service-model';
import { carriedRules, judgePlan, shiftPlan } from './carry-plan';

/** A plan that takes more changes than that is better made anew. */
const MOST_CHANGES = 16;

interface State {
  work: readonly OrderedWork[];
  starts: Float64Array;
  late: number;
  /** How far towards and past the out-times the tasks end, the last ones above all. */
  strain: number;
  value: number;
}

/**
 * An older plan with as few changes as take its lateness away: again and again the one change that helps most, then every
 * change taken back that turned out not to be needed. A change gives one seat to somebody else, or leaves an optional task.
 * Among those that help alike it is the one that keeps more value. Nothing when the outcome would break a rule.
 */
export function repairPlan(fromNow: Service, plan: BayPlan): BayPlan | undefined {
  const shifted = shiftPlan(fromNow, plan);
  const rules = carriedRules(plan);
  const order = orderOf(fromNow, shifted, rules);
  const ties = tiesOf(fromNow, shifted, rules);
  const judge = (work: readonly OrderedWork[]) => judgeOrder(fromNow, work, ties);
  const first = judge(order.work);
  let state = first;
  for (let change = 0; change < MOST_CHANGES && state.late > 0; change += 1) {
    const better = bestOf(listMoves(fromNow, state.work).map(judge), state);
    if (better === state) break;
    state = better;
  }
  const repaired = takeBack(first, state, judge);
  const work = repaired.work.map(({ work: one }, place): PlannedWork => {
    const start = repaired.starts[place] ?? one.start;
    return { ...one, start, finish: start + one.finish - one.start };
  });
  const outcome = judgePlan(compileService(fromNow), work);
  return checkBayPlan(fromNow, outcome).length === 0 ? outcome : undefined;
}

/** Less late; with that as it is, less strained. Among those the least late, then the one that does most. */
function bestOf(tried: readonly State[], state: State): State {
  const better = tried.filter(
    ({ late, strain }) => late < state.late || (late === state.late && strain < state.strain),
  );
  const [best = state] = better.toSorted(
    (one, other) => one.late - other.late || other.value - one.value || one.strain - other.strain,
  );
  return best;
}

/** Task by task how much later than it another starts at least, whoever does them; nothing where they have nothing to do with each other. */
type Ties = ReadonlyMap<string, ReadonlyMap<string, number>>;

function tiesOf(fromNow: Service, shifted: BayPlan, { follows }: OrderRules): Ties {
  const done = listDone(fromNow, shifted);
  return new Map(
    done.map((one) => {
      const nobody = { ...one, work: { ...one.work, people: [] } };
      const lags = done.flatMap((other): [string, number][] => {
        if (other.work.start < one.work.start || !follows(nobody.work, other.work)) return [];
        const lag = lagBetween(fromNow, nobody, other);
        return lag === undefined ? [] : [[other.task.id, lag]];
      });
      return [one.task.id, new Map(lags)];
    }),
  );
}

/** The same order with these people; two tasks of one person are done one after the other. */
function judgeOrder(fromNow: Service, all: readonly OrderedWork[], ties: Ties): State {
  const after = all.map(({ task }) => ties.get(task.id));
  const work = all.map((one, place): OrderedWork => {
    const before: number[] = [];
    const lags: number[] = [];
    for (let earlier = 0; earlier < place; earlier += 1) {
      const lag = after[earlier]?.get(one.task.id);
      if (lag === undefined && !sharePeople(all[earlier], one)) continue;
      before.push(earlier);
      lags.push(lag ?? 0);
    }
    return { ...one, before, lags };
  });
  const starts = new Float64Array(work.length);
  pushStarts(
    { work },
    Float64Array.from(work, (one) => one.work.finish - one.work.start),
    starts,
  );
  const over = new Map(fromNow.cars.map(({ id }) => [id, 0]));
  let strain = 0;
  for (const [place, { task, work: one }] of work.entries()) {
    const car = fromNow.cars.find(({ id }) => id === task.car);
    if (!car) continue;
    const finish = (starts[place] ?? 0) + one.finish - one.start;
    over.set(car.id, Math.max(over.get(car.id) ?? 0, finish - car.outTime));
    strain += Math.max(0, (finish - car.inTime) / Math.max(1, car.outTime - car.inTime)) ** STEEP;
  }
  const late = [...over.values()].reduce((sum, one) => sum + one, 0);
  return { work, starts, late, strain, value: work.reduce((sum, { way }) => sum + (way?.value ?? 0), 0) };
}

/** So steep that what ends last counts most: where several ends are late alike, each that comes forward is a step. */
const STEEP = 8;

function sharePeople(one: OrderedWork | undefined, other: OrderedWork): boolean {
  for (const { person } of one?.work.people ?? []) {
    for (const seat of other.work.people) if (seat.person === person) return true;
  }
  return false;
}

function listMoves(fromNow: Service, all: readonly OrderedWork[]): OrderedWork[][] {
  return all.flatMap((one, place) => {
    if (one.task.underWay) return [];
    const others = reseat(fromNow, one).map((seated) => all.with(place, seated));
    return canBeLeft(fromNow, one, all) ? [...others, all.toSpliced(place, 1)] : others;
  });
}

function reseat({ people }: Service, one: OrderedWork): OrderedWork[] {
  const { work, task } = one;
  return work.people.flatMap((seat, place) => {
    if (task.pin?.people?.includes(seat.person)) return [];
    const able = people.filter(
      ({ id, skills }) =>
        !work.people.some(({ person }) => person === id) &&
        (seat.skill === undefined || skills.includes(seat.skill)),
    );
    return able.map(({ id }): OrderedWork => {
      const seats = work.people.with(place, { ...seat, person: id });
      return { ...one, work: { ...work, people: seats }, hours: hoursOf(people, seats) };
    });
  });
}

function hoursOf(people: readonly ServicePerson[], seats: PlannedWork['people']): OrderedWork['hours'] {
  return seats.map(({ person }) => people.find(({ id }) => id === person)?.hours ?? []);
}

/** Nothing that must be done, that something else goes together with, or that opens or closes something. */
function canBeLeft({ accesses }: Service, { task }: OrderedWork, all: readonly OrderedWork[]): boolean {
  const isEnd = accesses.some(({ opening, closing }) => opening === task.id || closing === task.id);
  const isTied = all.some((one) =>
    [...(one.task.after ?? []).map((link) => ({ ...link, from: one.task.id }))].some(
      (link) => link.together && (link.task === task.id || link.from === task.id),
    ),
  );
  return !isEnd && !isTied && task.mandatory !== true && task.pin?.done !== true;
}

/** Each change undone where the cars leave no later and no less is done for it. */
function takeBack(first: State, repaired: State, judge: (work: readonly OrderedWork[]) => State): State {
  let state = repaired;
  for (const one of first.work) {
    const now = state.work.find(({ task }) => task.id === one.task.id);
    if (now?.work.people === one.work.people) continue;
    const known = new Map(state.work.map((work) => [work.task.id, work]));
    known.set(one.task.id, one);
    const tried = judge(first.work.flatMap(({ task }) => known.get(task.id) ?? []));
    if (tried.late <= state.late && tried.value >= state.value) state = tried;
  }
  return state;
}
