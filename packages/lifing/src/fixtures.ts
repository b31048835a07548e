import type { ControlRole, EpochSeconds, Itinerary, Point, ServiceWindow } from '@halfshaft/itinerary';
import type { LastDone, LifingCard, LimitPlace, VerdictReason } from './model';
import type { CardQuestion } from './questions';

/** For tests only: small events made by hand, with round times, and cards with nothing special about them. */

/** 08:00:00 on the first day of the clock, so that expected times can be read in the tests. */
export const EIGHT_OCLOCK = at(8, 0);

export function at(hours: number, minutes: number, seconds = 0): EpochSeconds {
  return hours * 3600 + minutes * 60 + seconds;
}

export type Piece =
  /** In-control after `road` metres, out-control `minutes` later. */
  | { service: number; remote?: boolean; road?: number }
  /** A time control after `road` metres, the start three minutes later. */
  | { stage: string; metres: number; road?: number }
  /** What follows belongs to the next leg, the next morning at eight. */
  | { overnight: true }
  | { finish: true; road?: number };

export interface SmallEvent {
  itinerary: Itinerary;
  services: ServiceWindow[];
}

const DAY = 86_400;

/**
 * Road at 60 km/h, stages at 80 km/h (45 s a km), the road timed from the stage start. Services are listed here by
 * hand rather than by the itinerary package, so that the tests know what they are given.
 */
export function eventOf(pieces: readonly Piece[], secondsBetweenCars = 60): SmallEvent {
  const points: Point[] = [];
  const services: ServiceWindow[] = [];
  let clock = EIGHT_OCLOCK;
  let leg = 1;
  let stageMetres = 0;

  const drive = (road: number) => {
    clock += Math.round((stageMetres * 45) / 1000) + Math.round((road * 60) / 1000);
    stageMetres = 0;
  };
  const control = (roles: ControlRole[], roadMetres: number, allowedSeconds: number | null) => {
    const id = `TC${points.length}`;
    points.push({
      kind: 'control',
      id,
      name: id,
      roles,
      roadMetres,
      allowedSeconds,
      leg,
      section: leg,
      firstCarAt: clock,
    });
  };

  for (const piece of pieces) {
    if ('overnight' in piece) {
      leg += 1;
      clock = (leg - 1) * DAY + EIGHT_OCLOCK;
      continue;
    }
    const road = piece.road ?? 0;
    drive(road);
    if ('service' in piece) {
      const seconds = piece.service * 60;
      const inIndex = points.length;
      control([piece.remote ? 'remoteServiceIn' : 'serviceIn'], road, null);
      clock += seconds;
      control([piece.remote ? 'remoteServiceOut' : 'serviceOut'], 0, seconds);
      services.push({
        id: String.fromCharCode(65 + services.length),
        kind: piece.remote ? 'remoteService' : 'service',
        inIndex,
        outIndex: inIndex + 1,
        inControl: `TC${inIndex}`,
        outControl: `TC${inIndex + 1}`,
        name: `TC${inIndex}`,
        leg,
        section: leg,
        allowedSeconds: seconds,
      });
    } else if ('stage' in piece) {
      control(['timeControl'], road, null);
      clock += 180;
      points.push({
        kind: 'stage',
        id: piece.stage,
        name: piece.stage,
        stageMetres: piece.metres,
        gapSeconds: 180,
        repeatOf: null,
        leg,
        section: leg,
        firstCarAt: clock,
      });
      stageMetres = piece.metres;
    } else {
      control(['finish'], road, null);
    }
  }
  const sections = [...new Set(points.map((point) => point.section))];
  const startBlocks = sections.map((section) => ({
    section,
    fromPosition: 1,
    intervalSeconds: secondsBetweenCars,
  }));
  return { itinerary: { timeZone: 'UTC', roadTimedFrom: 'stageStart', points, startBlocks }, services };
}

/** Three loops of 16 and 8 stage km with a service of 20 minutes before each: 54 km a loop, 74 minutes in to in. */
export function threeLoops(): SmallEvent {
  const loop = (number: number): Piece[] => [
    { service: 20, road: number === 1 ? 0 : 10_000 },
    { stage: `SS${2 * number - 1}`, metres: 16_000, road: 10_000 },
    { stage: `SS${2 * number}`, metres: 8_000, road: 10_000 },
  ];
  return eventOf([...loop(1), ...loop(2), ...loop(3), { finish: true, road: 10_000 }]);
}

export function cardWith(own: Partial<LifingCard> = {}): LifingCard {
  return {
    id: 'card',
    name: 'Card',
    intervals: [{ counter: 'services', every: 1, tolerance: 0 }],
    dateLimit: null,
    conditionFactors: {},
    combineConditions: 'largest',
    seconds: 120,
    people: 1,
    leastServiceSeconds: 0,
    remoteAllowed: true,
    ...own,
  };
}

export const DONE_BEFORE: LastDone = { pointIndex: null, carried: {} };

/** The first car at Service A of the three loops, with a card due every service, done before the event. */
export function questionWith(own: Partial<CardQuestion> = {}): CardQuestion {
  return {
    ...threeLoops(),
    runs: new Map(),
    plannedConditions: new Map(),
    serviceIndex: 0,
    position: 1,
    card: cardWith(),
    lastDone: DONE_BEFORE,
    ...own,
  };
}

export function reasonWith(own: Partial<VerdictReason> = {}): VerdictReason {
  const passedAt: LimitPlace = { stageId: 'SS9', pointIndex: 20, routeMetres: 84_299, at: at(14, 32) };
  return {
    code: 'wontReach',
    counter: 'stageMetres',
    limit: 60_000,
    wearNow: 41_000,
    wearAtNextChance: 72_000,
    nextChance: 'C',
    passedAt,
    ...own,
  };
}

/** No test may be able to change what it hands over. Maps are compared by the tests themselves. */
export function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(deepFreeze);
  }
  return value;
}
