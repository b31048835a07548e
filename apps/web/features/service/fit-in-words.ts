import { type JobCard, neededPersonSeconds, usableMinutes } from '@halfshaft/lifing';

const SECONDS_IN_MINUTE = 60;

export interface FitQuestion {
  /** What must be done here, done or not. */
  cards: readonly Pick<JobCard, 'name' | 'seconds' | 'people'>[];
  allowedSeconds: number;
  people: number;
}

/**
 * Whether the work that must be done fits the service: what it needs, what there is, and a plain statement. Work is
 * rounded up and time is cut, so that no minute is promised that is not there.
 *
 * @example
 * fitInWords({ cards: [{ name: 'Nuts', seconds: 720, people: 2 }], allowedSeconds: 1200, people: 2 })
 * // ['Do-now work needs 24 person-minutes. 2 people have 32, about 19 at the usual pace.', 'It fits only if …']
 */
export function fitInWords({ cards, allowedSeconds, people }: FitQuestion): string[] {
  const needed = Math.ceil(neededPersonSeconds(cards) / SECONDS_IN_MINUTE);
  const usable = usableMinutes({ allowedSeconds, people });
  const most = Math.floor(usable.personSeconds / SECONDS_IN_MINUTE);
  const likely = Math.floor(usable.likelyPersonSeconds / SECONDS_IN_MINUTE);
  const have = people === 1 ? '1 person has' : `${people} people have`;
  return [
    `Do-now work needs ${needed} person-minutes. ${have} ${most}, about ${likely} at the usual pace.`,
    statement(needed, most, likely),
    ...cards.flatMap((card) => tooLong(card, usable.clockSeconds) ?? tooFew(card, people) ?? []),
  ];
}

function statement(needed: number, most: number, likely: number): string {
  if (needed === 0) return 'Nothing must be done here.';
  if (needed <= likely) return `It fits, with ${likely - needed} to spare.`;
  if (needed <= most)
    return `It fits only if nobody waits: at the usual pace ${needed - likely} are missing. Do the top of the list first.`;
  return `It does not fit: ${needed - most} are missing. Find more hands, or decide now what is left.`;
}

function tooLong({ name, seconds }: FitQuestion['cards'][number], clockSeconds: number): string | null {
  if (seconds <= clockSeconds) return null;
  const [needs, there] = [
    Math.ceil(seconds / SECONDS_IN_MINUTE),
    Math.floor(clockSeconds / SECONDS_IN_MINUTE),
  ];
  return `${name} alone takes ${needs} min; the car stands still for ${there}.`;
}

function tooFew(card: FitQuestion['cards'][number], people: number): string | null {
  return card.people > people ? `${card.name} takes ${card.people} people.` : null;
}
