import type { PartRecord } from '../car-history';

/** Numbers that look like chance and are the same every time; mulberry32, public domain. */
export function chanceFrom(seed: number) {
  let state = seed;
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (from: number, to: number) => from + Math.floor(next() * (to - from + 1));
  return { next, whole, oneIn: (count: number) => whole(1, count) === 1 };
}
export type Chance = ReturnType<typeof chanceFrom>;

/** A point of the season where the car was. `order` puts all that happens in a row; things between take the fractions. */
export interface Moment {
  order: number;
  eventIndex: number;
  point: number;
  service: boolean;
  total: number;
  totalBefore: number;
}

/** Where the driving stops for every part. */
export interface Break {
  order: number;
  total: number;
  ending: 'withdrawn' | 'restarted' | 'notFinished';
}

export interface Route {
  moments: Moment[];
  breaks: Break[];
  events: { eventId: string; finished: boolean; amounts: number[]; records: PartRecord[] }[];
  total: number;
}

/** Three to six events of up to nine stages, a service after every second stage; the car may stop and may go on again. */
export function driveRoute(chance: Chance, ranBefore: number): Route {
  const route: Route = { moments: [], breaks: [], events: [], total: ranBefore };
  const events = chance.whole(3, 6);
  for (let eventIndex = 0; eventIndex < events; eventIndex += 1) driveEvent(chance, route, eventIndex);
  return route;
}

function driveEvent(chance: Chance, route: Route, eventIndex: number): void {
  const stages = chance.whole(3, 9);
  const outAfter = chance.oneIn(3) ? chance.whole(1, stages) : null;
  const backAfter = outAfter !== null && chance.oneIn(2) ? evenFrom(outAfter) + 2 * chance.whole(0, 1) : null;
  const drive: Drive = { route, eventIndex, began: route.total, amounts: [], records: [], out: false };
  arrive(drive, 0, true);
  for (let stage = 1; stage <= stages; stage += 1) {
    arrive(drive, chance.whole(3_000, 25_000), false);
    if (stage === outAfter)
      stop(drive, backAfter !== null && backAfter <= stages ? 'restarted' : 'withdrawn');
    if (stage % 2 === 1) continue;
    if (stage === backAfter) goOn(drive);
    arrive(drive, 0, true);
  }
  finish(drive, !drive.out && !chance.oneIn(5));
}

function evenFrom(stage: number): number {
  return stage + (stage % 2);
}

/** One event while it is driven. */
interface Drive {
  route: Route;
  eventIndex: number;
  /** What the car had run when it began. */
  began: number;
  amounts: number[];
  records: PartRecord[];
  out: boolean;
}

function arrive({ route, eventIndex, began, amounts, out }: Drive, metres: number, service: boolean): void {
  const totalBefore = route.total;
  if (!out) route.total += metres;
  amounts.push(route.total - began);
  const place = { order: route.moments.length, eventIndex, point: amounts.length - 1, service };
  if (!out) route.moments.push({ ...place, total: route.total, totalBefore });
}

function stop(drive: Drive, ending: Break['ending']): void {
  const { route, records, amounts } = drive;
  const off = { cause: 'off the road', cardId: null, position: null, where: 'here' } as const;
  records.push({ kind: 'out', ...off, point: amounts.length - 1 });
  route.breaks.push({ order: route.moments.length - 0.5, total: route.total, ending });
  drive.out = true;
}

/** At the service it is about to reach. */
function goOn(drive: Drive): void {
  drive.records.push({ kind: 'restarted', point: drive.amounts.length });
  drive.out = false;
}

function finish({ route, eventIndex, amounts, records }: Drive, finished: boolean): void {
  const order = route.moments.length - 0.25;
  if (!finished) route.breaks.push({ order, total: route.total, ending: 'notFinished' });
  route.events.push({ eventId: `event ${eventIndex + 1}`, finished, amounts, records });
}
