import { requireWholeNumber } from '../whole-number';
import { fitLine, predictAt } from './fit-line';
import type { WearReading } from './model';
import { studentT95 } from './student-t';

/** From so many readings of one place on one part on, a line says more than the worst loop. */
const ENOUGH_FOR_A_LINE = 6;
const USUAL_MARGIN = 1200;

export interface WearRateQuestion {
  /** Of one kind of reading, in any order, of as many groups, parts and positions as are known. */
  readings: readonly WearReading[];
  group: string;
  position: string | null;
  part: string;
  /** Which way it wears: a pad gets thinner, play gets more. */
  direction: 'down' | 'up';
  /** What the card expects, in the reading's smallest unit on 100 stage km; null when nothing is expected. */
  cardRate: number | null;
  /** On top of the worst so far, per mille; 1200 unless told otherwise (common practice, no source). */
  marginPerMille?: number;
  /** How far from the last reading on, in stage metres with conditions. */
  aheadMetres: number;
}

export interface WearRate {
  /** What it rests on; `none`: nothing to go by. */
  method: 'none' | 'card' | 'worstLoop' | 'line';
  /** The most it is expected to lose over `aheadMetres`, whole, cut upwards; null with method `none`. */
  lossAhead: number | null;
  /** Readings of this place on this part. */
  readings: number;
}

/**
 * The most a part is expected to lose from its last reading over the metres ahead.
 *
 * Up to five readings of the place: the worst loop so far of the same group (any part, any place in it), or the rate
 * the card gives, whichever is more, times the margin. A loop is what lies between two readings of one place on one
 * part; one that gained counts as none lost. From six readings on: the straight line through them, and the far side
 * of its prediction interval (95 of 100 new readings lose less). Readings of another group are never used.
 *
 * Null when nothing is known of the place on this part.
 *
 * @throws RangeError when an amount is negative or not whole
 * @example
 * wearRate({ readings, group: 'front|gravel|medium', position: 'FL', part: 'set 3', direction: 'down',
 *   cardRate: 60, aheadMetres: 24_000 }) // { method: 'worstLoop', lossAhead: 19, readings: 3 }
 */
export function wearRate(question: WearRateQuestion): WearRate | null {
  requireAmounts(question);
  const own = ownReadings(question);
  const last = own.at(-1);
  if (last === undefined) return null;
  const byLine = own.length >= ENOUGH_FOR_A_LINE ? lossByLine(own, last, question) : null;
  if (byLine !== null) return { method: 'line', lossAhead: byLine, readings: own.length };
  return { ...lossByWorst(question), readings: own.length };
}

/** Readings of the place on the part that is on, by distance. */
export function ownReadings({ readings, group, position, part }: WearRateQuestion): WearReading[] {
  return readings
    .filter((each) => each.group === group && each.part === part && each.position === position)
    .sort((first, second) => first.wornMetres - second.wornMetres);
}

function lossByLine(
  own: readonly WearReading[],
  last: WearReading,
  { direction, aheadMetres }: WearRateQuestion,
): number | null {
  const wornDown = (value: number) => (direction === 'down' ? -value : value);
  const line = fitLine(own.map(({ wornMetres, value }) => ({ x: wornMetres, y: wornDown(value) })));
  if (line === null) return null;
  const { expected, within } = predictAt(line, last.wornMetres + aheadMetres, studentT95(line.points - 2));
  return Math.max(0, wholeUpwards(expected + within - wornDown(last.value)));
}

/** Cut upwards, but not by a unit for what only the arithmetic left behind the point. */
function wholeUpwards(value: number): number {
  return Math.ceil(value - 1e-6);
}

function lossByWorst(question: WearRateQuestion): Omit<WearRate, 'readings'> {
  const { cardRate, aheadMetres, marginPerMille = USUAL_MARGIN } = question;
  const worst = worstLoop(question);
  const card = cardRate === null ? null : { loss: cardRate, metres: 100_000 };
  const rate = faster(worst, card);
  if (rate === null) return { method: 'none', lossAhead: null };
  const lossAhead = Math.ceil((rate.loss * aheadMetres * marginPerMille) / (rate.metres * 1000));
  return { method: rate === card ? 'card' : 'worstLoop', lossAhead };
}

interface Loss {
  loss: number;
  metres: number;
}

function worstLoop({ readings, group, direction }: WearRateQuestion): Loss | null {
  const sorted = readings
    .filter((each) => each.group === group)
    .sort((first, second) => first.wornMetres - second.wornMetres);
  const loops = sorted.flatMap((reading, index): Loss[] => {
    const next = sorted
      .slice(index + 1)
      .find((each) => each.part === reading.part && each.position === reading.position);
    if (next === undefined || next.wornMetres === reading.wornMetres) return [];
    const change = direction === 'down' ? reading.value - next.value : next.value - reading.value;
    return [{ loss: Math.max(0, change), metres: next.wornMetres - reading.wornMetres }];
  });
  return loops.reduce<Loss | null>((worst, loop) => faster(worst, loop), null);
}

/** The one that loses more a metre, compared without dividing; the first when they are alike. */
function faster(first: Loss | null, second: Loss | null): Loss | null {
  if (first === null || second === null) return first ?? second;
  return second.loss * first.metres > first.loss * second.metres ? second : first;
}

function requireAmounts({ readings, cardRate, marginPerMille = 0, aheadMetres }: WearRateQuestion): void {
  requireWholeNumber('wearRate', 'aheadMetres', aheadMetres);
  requireWholeNumber('wearRate', 'marginPerMille', marginPerMille);
  requireWholeNumber('wearRate', 'cardRate', cardRate ?? 0);
  for (const { wornMetres, value } of readings) {
    requireWholeNumber('wearRate', 'wornMetres', wornMetres);
    requireWholeNumber('wearRate', 'a value', value, Number.MIN_SAFE_INTEGER);
  }
}
