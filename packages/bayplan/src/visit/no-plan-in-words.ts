import type { Reason } from '../service/explain/reason';
import { whyInfeasible } from '../service/explain/why-infeasible';
import type { Service } from '../service/service-model';
import type { VisitQuestion } from './visit-question';

const SCHEDULES = 200;
const UNKNOWN = 'What must be done does not fit in, even an hour past the out-time.';

/** Why there is no plan, as far as a mechanic can change it. */
export function noPlanInWords(service: Service, { people, work }: VisitQuestion): string[] {
  const why = whyInfeasible(service, { maxSchedules: SCHEDULES });
  const nameOf = (id: string) => work.find(({ card }) => card.id === id)?.card.name ?? id;
  const sentences = (why?.reasons ?? []).flatMap((reason) => inWords(reason, nameOf, people.length));
  return sentences.length > 0 ? [UNKNOWN, ...new Set(sentences)] : [UNKNOWN];
}

function inWords({ kind, id }: Reason, nameOf: (id: string) => string, people: number): string[] {
  if (kind === 'mustBeDone') return [`${nameOf(id)} must be done.`];
  if (kind === 'tool') return [`There is one ${id}.`];
  if (kind === 'people')
    return [people === 1 ? 'Only 1 person is there.' : `Only ${people} people are there.`];
  return [];
}
