import type { ReadingReason, ReadingSpec, Series } from '@halfshaft/lifing';
import { valueInWords } from '../work/reading-in-words';
import { readInWords } from './read-in-words';

type ServiceName = (id: string) => string;

/**
 * How a place has changed since it was last read, in plain words. Values of an old part are not compared with those of a
 * new one.
 *
 * @example
 * trendInWords(pads, series, serviceName) // '0.9 mm less than at Service A'
 */
export function trendInWords(
  spec: ReadingSpec,
  { readings, part }: Series,
  serviceName: ServiceName,
): string {
  const last = readings.at(-1);
  if (last === undefined) return 'not read yet';
  if (last.part < part) return 'new part, not read yet';
  const before = readings.filter((each) => each.part === last.part).at(-2);
  if (before === undefined) return last.part > 0 ? 'first reading of the new part' : 'first reading';
  if (spec.kind === 'passFail')
    return `${readInWords(spec, before.value)} at ${serviceName(before.serviceId)}`;
  const change = last.value - before.value;
  if (change === 0) return `as at ${serviceName(before.serviceId)}`;
  const amount = valueInWords(spec, Math.abs(change));
  return `${amount} ${change < 0 ? 'less' : 'more'} than at ${serviceName(before.serviceId)}`;
}

/**
 * What is to be expected of a place, in plain words; empty when there is nothing to say.
 *
 * @example
 * expectationInWords(pads, reason, serviceName) // "2.3 mm at Service C: won't last"
 */
export function expectationInWords(
  spec: ReadingSpec,
  { code, expected, nextChance }: ReadingReason,
  serviceName: ServiceName,
): string {
  if (code === 'outOfOrder') return spec.kind === 'wear' ? 'past its limit: do now' : 'out of order: do now';
  if (code === 'notKnown') return 'not known yet how fast it wears';
  if (expected === null) return '';
  const next = nextChance === null ? 'the finish' : serviceName(nextChance);
  const said = code === 'wearsOut' ? "won't last: do now" : 'lasts';
  return `${valueInWords(spec, expected)} at ${next}: ${said}`;
}
