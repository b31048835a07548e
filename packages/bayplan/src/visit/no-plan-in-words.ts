import type { Reason } from '../service/explain/reason';
import { explainInfeasible } from '../service/explain/why-infeasible';
import { plannedDuration } from '../service/planned-duration';
import type { Service } from '../service/service-model';
import { MOST_LATE_SECONDS } from './service-of-visit';
import type { VisitQuestion } from './visit-question';

const SECONDS_IN_MINUTE = 60;
/** For each question; what isn't settled then is told as a reason that may not be needed. */
const SCHEDULES = 40;
const UNKNOWN = 'What must be done does not fit in, even an hour past the out-time.';

/** Why there is no plan, as far as a mechanic can change it. */
export function* noPlanInWords(service: Service, question: VisitQuestion): Generator<void, string[]> {
  const { people, work } = question;
  const tooLong = tooLongAlone(service, question);
  if (tooLong.length > 0) return tooLong;
  const tooMuch = tooMuchWork(service, question);
  if (tooMuch !== undefined) return [UNKNOWN, tooMuch];
  const why = yield* explainInfeasible(service, { maxSchedules: SCHEDULES });
  const nameOf = (id: string) => work.find(({ card }) => card.id === id)?.card.name ?? id;
  const sentences = (why?.reasons ?? []).flatMap((reason) => inWords(reason, nameOf, people.length));
  return sentences.length > 0 ? [UNKNOWN, ...new Set(sentences)] : [UNKNOWN];
}

/** More than all people together have time for. */
function tooMuchWork({ tasks }: Service, { people, workSeconds }: VisitQuestion): string | undefined {
  const needed = tasks.reduce((sum, { mandatory, ways: [way] }) => {
    const hands = way?.crew.reduce((all, { count }) => all + count, 0) ?? 0;
    return mandatory && way ? sum + hands * plannedDuration(way.duration) : sum;
  }, 0);
  const there = people.length * (workSeconds + MOST_LATE_SECONDS);
  if (needed <= there) return undefined;
  const who = people.length === 1 ? '1 person has' : `${people.length} people have`;
  return `It takes ${minutes(needed)} person-minutes, and ${who} ${Math.floor(there / SECONDS_IN_MINUTE)} by then.`;
}

const minutes = (seconds: number) => Math.ceil(seconds / SECONDS_IN_MINUTE);

/** What takes longer by itself than the car may stay at the very most. */
function tooLongAlone({ tasks }: Service, { work, workSeconds }: VisitQuestion): string[] {
  return work.flatMap(({ card, mustDo }) => {
    const [way] = tasks.find(({ id }) => id === card.id)?.ways ?? [];
    const seconds = way ? plannedDuration(way.duration) : 0;
    if (!mustDo || seconds <= workSeconds + MOST_LATE_SECONDS) return [];
    return [`${card.name} alone takes ${minutes(seconds)} min.`];
  });
}

function inWords({ kind, id }: Reason, nameOf: (id: string) => string, people: number): string[] {
  if (kind === 'mustBeDone') return [`${nameOf(id)} must be done.`];
  if (kind === 'tool') return [`There is one ${id}.`];
  if (kind === 'people')
    return [people === 1 ? 'Only 1 person is there.' : `Only ${people} people are there.`];
  return [];
}
