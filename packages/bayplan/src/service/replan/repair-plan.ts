import type { BayPlan, PlannedWork } from '../bay-plan';
import { checkBayPlan } from '../check-bay-plan';
import { compileService } from '../compile-service';
import { type OrderedWork, orderOf } from '../order/push-starts';
import type { Service, ServicePerson } from '../service-model';
import { carriedRules, judgePlan, shiftPlan } from './carry-plan';
import { type Change, OrderJudge, type Seating } from './order-judge';

/** A plan with more changes than that is better made anew. */
const MOST_CHANGES = 16;

/**
 * An older plan with as few changes as take its lateness away: again and again the one change that helps most, then every
 * change taken back that turned out not to be needed. A change gives one seat to somebody else, or leaves an optional task.
 * Among those that help alike it is the one that keeps more value. Nothing when the outcome would break a rule.
 */
export function repairPlan(fromNow: Service, plan: BayPlan): BayPlan | undefined {
  const shifted = shiftPlan(fromNow, plan);
  const rules = carriedRules(plan);
  const { work: planned } = orderOf(fromNow, shifted, rules);
  const judge = new OrderJudge(fromNow, planned, rules);
  let state = judge.seat(planned);
  for (let change = 0; change < MOST_CHANGES && state.late > 0; change += 1) {
    const best = bestOf(judge, state, listMoves(fromNow, state.work));
    if (!best) break;
    state = judge.change(state, best);
  }
  const work = judge.planOf(takeBack(planned, state, judge));
  const outcome = judgePlan(compileService(fromNow), work);
  return checkBayPlan(fromNow, outcome).length === 0 ? outcome : undefined;
}

/** Less late; with that as it is, less strained. Among those the least late, then the one that does most. */
function bestOf(judge: OrderJudge, state: Seating, moves: readonly Change[]): Change | undefined {
  let best: Change | undefined;
  let bestWorth = state.worth;
  for (const move of moves) {
    const worth = judge.worthOf(state, move);
    const helps = worth.late < state.late || (worth.late === state.late && worth.strain < state.worth.strain);
    if (!helps) continue;
    const order =
      worth.late - bestWorth.late || bestWorth.value - worth.value || worth.strain - bestWorth.strain;
    if (best && order >= 0) continue;
    best = move;
    bestWorth = worth;
  }
  return best;
}

function listMoves(fromNow: Service, all: Seating['work']): Change[] {
  return all.flatMap((one, place): Change[] => {
    if (!one || one.task.underWay) return [];
    const others = reseat(fromNow, one).map((seated) => ({ place, one: seated }));
    return canBeLeft(fromNow, one, all) ? [...others, { place, one: undefined }] : others;
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
function canBeLeft({ accesses }: Service, { task }: OrderedWork, all: Seating['work']): boolean {
  const isEnd = accesses.some(({ opening, closing }) => opening === task.id || closing === task.id);
  const isTied = all.some((one) =>
    one?.task.after?.some((link) => link.together && (link.task === task.id || one.task.id === task.id)),
  );
  return !isEnd && !isTied && task.mandatory !== true && task.pin?.done !== true;
}

/** Each change undone where the cars leave no later and no less is done for it. */
function takeBack(planned: readonly OrderedWork[], repaired: Seating, judge: OrderJudge): Seating {
  let state = repaired;
  for (const [place, one] of planned.entries()) {
    if (state.work[place]?.work.people === one.work.people) continue;
    const { late, value } = judge.worthOf(state, { place, one });
    if (late <= state.late && value >= state.worth.value) state = judge.change(state, { place, one });
  }
  return state;
}
