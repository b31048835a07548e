import { describe, expect, it } from 'vitest';
import { eventOf, type Piece } from './fixtures';
import { fullStarterCards } from './full-starter/full-starter-cards';
import type { Drive, JobCard, Surface } from './job-card';
import { neededAtService } from './needed-at-service';
import { preparedAtHome } from './prepared-at-home';
import { starterCards } from './starter-cards';
import { usableMinutes } from './usable-minutes';

const loop = (number: number): Piece[] => [
  { stage: `SS${2 * number - 1}`, metres: 16_000, road: 10_000 },
  { stage: `SS${2 * number}`, metres: 8_000, road: 10_000 },
  { service: 20, road: 10_000 },
];
/** Three loops of 24 stage km, each with a service of 20 minutes after it. */
const EVENT = eventOf([...loop(1), ...loop(2), ...loop(3), { finish: true, road: 10_000 }]);
const { personSeconds: USABLE } = usableMinutes({ allowedSeconds: 1200, people: 2 });

const SETS: Record<string, (drive: Drive, surface: Surface) => JobCard[]> = {
  small: starterCards,
  full: fullStarterCards,
};
const ROWS = Object.keys(SETS).flatMap((set) =>
  (['front', 'rear', 'four'] as const).flatMap((drive) =>
    (['gravel', 'tarmac', 'snow'] as const).map((surface): [string, Drive, Surface] => [set, drive, surface]),
  ),
);

function neededAt(cards: JobCard[], serviceIndex: number, lastDone = preparedAtHome(cards)) {
  const knowledge = { ...EVENT, runs: new Map(), plannedConditions: new Map(), position: 1 };
  return neededAtService({ ...knowledge, serviceIndex, cards, lastDone });
}

describe('a car prepared at home', () => {
  it.each(ROWS)(
    '%s set, %s drive on %s: two people do every service in 20 minutes',
    (set, drive, surface) => {
      const cards = SETS[set]?.(drive, surface) ?? [];
      for (const serviceIndex of [0, 1, 2]) {
        const { doNowPersonSeconds, ifTimePersonSeconds, doNowIds } = neededAt(cards, serviceIndex);
        expect(doNowPersonSeconds + ifTimePersonSeconds).toBeLessThanOrEqual(USABLE);
        // It would also fit if hardly anything were due.
        expect(doNowIds.length).toBeGreaterThanOrEqual(9);
      }
    },
  );

  it('spares the first service what is looked at every day and at every event', () => {
    const cards = fullStarterCards('four', 'gravel');
    const atHome = neededAt(cards, 0, new Map()).doNowPersonSeconds - neededAt(cards, 0).doNowPersonSeconds;
    expect(atHome).toBeGreaterThan(USABLE);
  });
});
