import type { EventReplica, OpenBulletin } from '@halfshaft/contract';
import { formatClock, formatDay } from '@halfshaft/itinerary';

const MILLIS_IN_SECOND = 1000;

/**
 * What the notice says: how much of it concerns the team.
 *
 * @example
 * changesInWords(bulletin) // 'It changes 4 things for you.'
 */
export function changesInWords({ changes, cars }: Pick<OpenBulletin, 'changes' | 'cars'>): string {
  const ofCars = cars.map((car) => car.changes.length + car.jobs.length);
  const count = ofCars.reduce((sum, each) => sum + each, changes.length);
  if (count === 0) return 'It changes nothing in your itinerary.';
  return count === 1 ? 'It changes 1 thing for you.' : `It changes ${count} things for you.`;
}

/**
 * When it was issued, by the event's clock on the wall.
 *
 * @param issuedAt milliseconds
 * @example
 * issuedInWords(1781331180000, 'Europe/Vienna') // 'issued Sat 13 Jun 2026, 08:13'
 */
export function issuedInWords(issuedAt: number, timeZone: string): string {
  return `issued ${whenInWords(issuedAt, timeZone)}`;
}

/** When a draft was saved: "Saved Sat 13 Jun 2026, 08:13". */
export function savedInWords(savedAt: number, timeZone: string): string {
  return `Saved ${whenInWords(savedAt, timeZone)}`;
}

function whenInWords(millis: number, timeZone: string): string {
  const at = Math.floor(millis / MILLIS_IN_SECOND);
  return `${formatDay(at, timeZone)}, ${formatClock(at, timeZone)}`;
}

/**
 * Who of the team may accept a bulletin, for those who may not.
 *
 * @example
 * whoAccepts(people) // 'A manager accepts it for the team: Ida Fell or Ned Beck.'
 */
export function whoAccepts(people: EventReplica['people']): string {
  const names = people.flatMap(({ name, membership }) => {
    const manages = membership?.role === 'admin' || membership?.role === 'manager';
    return manages && membership.eventId === null && membership.revokedAt === null ? [name] : [];
  });
  const last = names.pop();
  if (last === undefined) return 'A manager accepts it for the team.';
  const named = names.length === 0 ? last : `${names.join(', ')} or ${last}`;
  return `A manager accepts it for the team: ${named}.`;
}
