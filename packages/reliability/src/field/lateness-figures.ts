import type { LevelOption } from '../model';
import { type CountedShare, countedShare } from './counted-share';
import { type MinutesOver, minutesOver } from './minutes-over';
import type { SharedCount } from './share-trend';

/** How one car left one service. */
export interface TimedLeave {
  carNumber: string;
  serviceId: string;
  /** Whole minutes after the due one; below 0 when it was early. */
  lateMinutes: number;
  /** By how much the service itself took too long; null when nobody knows. */
  overMinutes: number | null;
}

export interface LatenessFigures {
  leaves: number;
  late: MinutesOver & { share: CountedShare | null };
  /** Services that took too long themselves, the others having brought their lateness along. */
  overran: MinutesOver & { notKnown: number };
  /** Left more than the maximum too late. */
  beyond: { count: number; share: CountedShare | null };
}

export interface LatenessByService {
  all: LatenessFigures;
  /** In the order in which the services come first. */
  services: (LatenessFigures & { serviceId: string })[];
  /** Cars that left any service late, of those seen leaving one. */
  cars: SharedCount;
}

/**
 * How late cars leave their services, by service and all together.
 *
 * @param maximumMinutes the lateness that an event allows; more than it is `beyond`
 * @throws RangeError when the level is not between 0 and 1
 * @example
 * latenessByService([{ carNumber: '7', serviceId: 'A', lateMinutes: 3, overMinutes: 2 }], 15).all.late.worstMinutes // 3
 */
export function latenessByService(
  leaves: readonly TimedLeave[],
  maximumMinutes: number,
  options: LevelOption = {},
): LatenessByService {
  const ids = [...new Set(leaves.map(({ serviceId }) => serviceId))];
  const carsOf = (some: readonly TimedLeave[]) => new Set(some.map(({ carNumber }) => carNumber)).size;
  const figuresOf = (some: readonly TimedLeave[]) => latenessFigures(some, maximumMinutes, options);
  return {
    all: figuresOf(leaves),
    services: ids.map((serviceId) => ({
      serviceId,
      ...figuresOf(leaves.filter((leave) => leave.serviceId === serviceId)),
    })),
    cars: { had: carsOf(leaves.filter(isLate)), of: carsOf(leaves) },
  };
}

function latenessFigures(
  leaves: readonly TimedLeave[],
  maximumMinutes: number,
  options: LevelOption,
): LatenessFigures {
  const late = leaves.filter(isLate).map(({ lateMinutes }) => lateMinutes);
  const over = leaves.flatMap(({ overMinutes }) =>
    overMinutes === null || overMinutes <= 0 ? [] : [overMinutes],
  );
  const beyond = late.filter((minutes) => minutes > maximumMinutes).length;
  const shareOf = (count: number) => countedShare(count, leaves.length, options);
  return {
    leaves: leaves.length,
    late: { ...minutesOver(late), share: shareOf(late.length) },
    overran: {
      ...minutesOver(over),
      notKnown: leaves.filter(({ overMinutes }) => overMinutes === null).length,
    },
    beyond: { count: beyond, share: shareOf(beyond) },
  };
}

const isLate = ({ lateMinutes }: TimedLeave) => lateMinutes > 0;
