import type { WhyLeft } from '../service/explain/why-left';
import type { VisitQuestion } from './visit-question';

const SECONDS_IN_MINUTE = 60;
const MOST_NAMED = 2;
const NO_TIME = 'No time for it beside the rest.';

/** One sentence a mechanic understands; what the search could not settle is only said as far as it is known. */
export function leftInWords(why: WhyLeft | undefined, { work }: VisitQuestion): string {
  if (!why) return NO_TIME;
  const nameOf = (id: string) => work.find(({ card }) => card.id === id)?.card.name;
  const instead = why.instead.flatMap((id) => nameOf(id) ?? []);
  if (why.kind === 'later') {
    const minutes = Math.ceil(why.by / SECONDS_IN_MINUTE);
    return `With it the car would leave ${minutes} min later.`;
  }
  if (why.kind === 'impossible') return 'Too few people are there for it, or it does not fit in at all.';
  if (instead.length === 0 || instead.length > MOST_NAMED) return NO_TIME;
  return `Only in place of ${instead.join(' and ')}.`;
}
