import type { LevelOption } from '../model';
import { type CountedShare, countedShare } from './counted-share';
import { type MinutesOver, minutesOver } from './minutes-over';
import type { SharedCount } from './share-trend';

/** How late one car came to one control. */
export interface TimedArrival {
  carNumber: string;
  controlId: string;
  /** Whole minutes after the due one; below 0 when it was early. */
  lateMinutes: number;
  /** Lost since the control before, and since the timetable was last set anew; null when nobody knows. */
  lostMinutes: number | null;
  totalMinutes: number | null;
}

export interface ControlFigures {
  arrivals: number;
  late: MinutesOver & { share: CountedShare | null };
  /** Of those that lost any minute on the way, and of how many nobody knows. */
  lost: MinutesOver & { notKnown: number };
  total: MinutesOver & { notKnown: number };
  /** Came more than the maximum too late. */
  beyond: { count: number; share: CountedShare | null };
}

export interface LatenessByControl {
  all: ControlFigures;
  /** In the order in which the controls come first. */
  controls: (ControlFigures & { controlId: string })[];
  /** Cars that came late to any control, of those seen at one. */
  cars: SharedCount;
}

/**
 * How late cars come to their controls, by control and all together.
 *
 * @param maximumMinutes the lateness that an event allows; more than it is `beyond`
 * @throws RangeError when the level is not between 0 and 1
 * @example
 * latenessByControl([{ carNumber: '7', controlId: 'TC1', lateMinutes: 3, lostMinutes: 2, totalMinutes: 3 }], 15)
 *   .controls[0]?.lost.worstMinutes // 2
 */
export function latenessByControl(
  arrivals: readonly TimedArrival[],
  maximumMinutes: number,
  options: LevelOption = {},
): LatenessByControl {
  const ids = [...new Set(arrivals.map(({ controlId }) => controlId))];
  const carsOf = (some: readonly TimedArrival[]) => new Set(some.map(({ carNumber }) => carNumber)).size;
  const figuresOf = (some: readonly TimedArrival[]) => controlFigures(some, maximumMinutes, options);
  return {
    all: figuresOf(arrivals),
    controls: ids.map((controlId) => ({
      controlId,
      ...figuresOf(arrivals.filter((arrival) => arrival.controlId === controlId)),
    })),
    cars: { had: carsOf(arrivals.filter(({ lateMinutes }) => lateMinutes > 0)), of: carsOf(arrivals) },
  };
}

function controlFigures(
  arrivals: readonly TimedArrival[],
  maximumMinutes: number,
  options: LevelOption,
): ControlFigures {
  const late = arrivals.flatMap(({ lateMinutes }) => (lateMinutes > 0 ? [lateMinutes] : []));
  const beyond = late.filter((minutes) => minutes > maximumMinutes).length;
  const shareOf = (count: number) => countedShare(count, arrivals.length, options);
  return {
    arrivals: arrivals.length,
    late: { ...minutesOver(late), share: shareOf(late.length) },
    lost: knownOver(arrivals.map(({ lostMinutes }) => lostMinutes)),
    total: knownOver(arrivals.map(({ totalMinutes }) => totalMinutes)),
    beyond: { count: beyond, share: shareOf(beyond) },
  };
}

function knownOver(minutes: readonly (number | null)[]): MinutesOver & { notKnown: number } {
  const known = minutes.filter((each) => each !== null);
  return { ...minutesOver(known.filter((each) => each > 0)), notKnown: minutes.length - known.length };
}
