import type { FieldOfEvent, RetirementFigures } from '@halfshaft/contract';
import { percentInWords, percentRange } from '@/lib/percent-in-words';
import { trendInWords } from '@/lib/trend-in-words';

type Figures = RetirementFigures['figures'];
type Rate = Figures['rates']['all'];
type Growth = Figures['growth']['all'];
type ShareAt = NonNullable<Figures['along']>['marks'][number]['causes'][number];

const THOUSAND = 1000;

/** "2.5", or a dash where nothing was driven. */
export function rateInWords({ perThousand }: Rate): string {
  return perThousand === null ? '–' : perThousand.rate.toFixed(1);
}

/** "0.8 to 5.4": where the true rate lies 19 times in 20. */
export function rangeInWords({ perThousand }: Rate): string {
  if (perThousand === null) return 'nothing driven';
  const { low, high } = perThousand.bounds;
  const [least, most] = [low.toFixed(1), high.toFixed(1)];
  return Number(least) === 0 ? `at most ${most}` : `${least} to ${most}`;
}

/**
 * What stopped no car, and how often it may do so all the same. Of no stops each cause has the same bounds.
 *
 * @example
 * noneInWords(rows) // 'No stop by off road, time: each at most 1.6.'
 */
export function noneInWords(rows: readonly { name: string; rate: Rate }[]): string {
  const [first] = rows;
  const names = rows.map(({ name }) => name.toLowerCase()).join(', ');
  const range = first?.rate.perThousand
    ? `: ${rows.length > 1 ? 'each ' : ''}${rangeInWords(first.rate)}`
    : '';
  return `No stop by ${names}${range}.`;
}

/**
 * Whether it changes from event to event.
 *
 * @example
 * growthInWords({ ok: false, reason: 'tooFewFailures', says: '' }) // 'too few to tell'
 */
export function growthInWords(growth: Growth): string {
  const rateNow = growth.ok ? growth.rateNow : null;
  return trendInWords(growth, rateNow === null ? '' : `: ${(rateNow * THOUSAND).toFixed(1)} lately`);
}

/** "12 % (4 to 29)", or "0" where none was stopped so. */
export function shareInWords({ share, bounds }: ShareAt): string {
  if (share === 0) return '0';
  return bounds === null ? percentInWords(share) : `${percentInWords(share)} (${percentRange(bounds)})`;
}

/** "gearbox 3, half shaft 1, not said 2". */
export function partsInWords(parts: RetirementFigures['parts']): string {
  return parts.map(({ part, count }) => `${part === '' ? 'not said' : part} ${count}`).join(', ');
}

/**
 * What became of the cars, a sentence for each thing that was.
 *
 * @example
 * carsInWords({ starters: 2, finished: 1, out: 1, … }) // ['2 cars started: 1 finished, 1 out.']
 */
export function carsInWords(cars: FieldOfEvent['cars']): string[] {
  const { starters, finished, out, outForDay, notKnown, notStarted, cameBack, withdrawn } = cars;
  const ends: [number, string][] = [
    [finished, 'finished'],
    [out, 'out'],
    [outForDay, 'out for the day and not back'],
    [notKnown, 'not known yet'],
  ];
  const told = ends.filter(([count]) => count > 0).map(([count, words]) => `${count} ${words}`);
  const more: [number, string][] = [
    [cameBack, 'came back after being out for the day'],
    [withdrawn, 'withdrew by choice, which counts as no failure'],
    [notStarted, 'did not start'],
  ];
  return [
    told.length === 0 ? 'No car started.' : `${carsOf(starters)} started: ${told.join(', ')}.`,
    ...more.filter(([count]) => count > 0).map(([count, words]) => `${carsOf(count)} ${words}.`),
  ];
}

function carsOf(count: number): string {
  return count === 1 ? '1 car' : `${count} cars`;
}
