import type { PartOutline } from '@halfshaft/contract';
import { drivenInWords } from './amount-driven';

/**
 * How often a part failed, over how far, and where last.
 *
 * @example
 * seenInWords(part) // 'Seen 3 times in 210 stage km; last at 640 stage km.'
 */
export function seenInWords({
  counter,
  watched,
  failures,
}: Pick<PartOutline, 'counter' | 'watched' | 'failures'>): string {
  const last = failures.at(-1)?.at ?? 0;
  const often = timesInWords(failures.length);
  return `Seen ${often} in ${drivenInWords(counter, watched)}; last at ${drivenInWords(counter, last)}.`;
}

/** "once" · "2 times". */
export function timesInWords(times: number): string {
  return times === 1 ? 'once' : `${times} times`;
}
