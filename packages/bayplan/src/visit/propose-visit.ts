import type { BayPlan } from '../service/bay-plan';
import { lastSafeStarts } from '../service/explain/last-safe-starts';
import { whyLeft } from '../service/explain/why-left';
import { openPlanning } from '../service/search/open-planning';
import type { Service } from '../service/service-model';
import { leftInWords } from './left-in-words';
import { noPlanInWords } from './no-plan-in-words';
import { seedOf } from './seed-of';
import { DOWN, serviceOfVisit, UP } from './service-of-visit';
import type { VisitProposal, VisitRow } from './visit-proposal';
import type { VisitQuestion } from './visit-question';

const SCHEDULES = 400;
/** Between two pauses; each is a few milliseconds' work. */
const STEP = 10;
/** For each piece of work that is left. */
const SCHEDULES_TO_EXPLAIN = 60;

/**
 * A plan for one service of one car, or why there is none. It pauses every few schedules, so that whoever runs it can see to
 * other things and stop it. The same question has the same answer wherever it is asked: the seed is made of the question and
 * the search ends after so many schedules, not after some time.
 *
 * @throws RangeError when the question makes no sense (see {@link findServiceFault})
 */
export function* proposeVisit(question: VisitQuestion): Generator<void, VisitProposal> {
  const tooFew = tooFewPeople(question);
  if (tooFew.length > 0) return { kind: 'noPlan', sentences: tooFew };
  const service = serviceOfVisit(question);
  const seed = seedOf(JSON.stringify(service));
  const search = openPlanning(service, { seed });
  let result = search.step(STEP);
  while (result.schedules < SCHEDULES && !result.proven) {
    yield;
    result = search.step(STEP);
  }
  yield;
  const { plan } = result;
  if (!plan) return { kind: 'noPlan', sentences: yield* noPlanInWords(service, question) };
  const left = [];
  for (const { card } of question.work) {
    if (!plan.left.includes(card.id)) continue;
    const why = whyLeft(service, plan, card.id, { seed, maxSchedules: SCHEDULES_TO_EXPLAIN });
    left.push({ id: card.id, sentence: leftInWords(why, question) });
    yield;
  }
  const spareSeconds = question.workSeconds - plan.objective.finish;
  return { kind: 'plan', rows: rowsOf(service, plan), spareSeconds, left };
}

/** Two people's work with one person there needs no search. */
function tooFewPeople({ people, work }: VisitQuestion): string[] {
  const there = people.length === 1 ? 'only 1 is there' : `only ${people.length} are there`;
  return work
    .filter(({ card, mustDo }) => mustDo && card.people > people.length)
    .map(({ card }) => `${card.name} needs ${card.people} people, and ${there}.`);
}

const STEPS: Readonly<Record<string, 'up' | 'down'>> = { [UP]: 'up', [DOWN]: 'down' };

function rowsOf(service: Service, plan: BayPlan): VisitRow[] {
  const latest = lastSafeStarts(service, plan);
  const peopleAt = new Map(plan.work.map(({ task, people }) => [task, people.map(({ person }) => person)]));
  const down = peopleAt.get(DOWN) ?? [];
  return plan.work
    .map(({ task, start, finish }) => {
      const people = peopleAt.get(task) ?? [];
      const follows = service.tasks.find(({ id }) => id === task)?.after?.some((link) => link.task === DOWN);
      const isHandedOver = follows === true && !people.some((person) => down.includes(person));
      const startBy = latest.get(task) ?? start;
      return {
        id: task,
        step: STEPS[task] ?? null,
        start,
        finish,
        people,
        startBy,
        takesOverFrom: isHandedOver ? down : [],
      };
    })
    .toSorted((one, other) => one.start - other.start);
}
