import type { CarHistory, PartQuestion, PartRecord, WatchedEvent } from '../car-history';
import { type Chance, chanceFrom, driveRoute, type Moment, type Route } from '../scripted-route/fixtures';

/**
 * A season written from its end: first the route driven, then for every place the lives its parts have and the metre
 * each fails at, and only from those the records a crew would have written. What must come out is worked out by laying
 * lives and breaks in the driving on the same line and cutting, and never by reading the records.
 */
export interface ScriptedCar {
  history: CarHistory;
  /** Of every card, one line an exposure, as `inLine` writes it, place by place. */
  lines: ReadonlyMap<string, string[]>;
  /** Of every card, where failures were seen, in order. */
  seenAt: ReadonlyMap<string, number[]>;
  /** Every failure with the metre it really came at, in the car's own count. */
  truths: { cardId: string; position: string | null; metre: number; seenAt: number }[];
}

export const SEASON_PARTS: readonly PartQuestion[] = [
  part('pads', ['FL', 'FR', 'RL', 'RR'], 'whenLooked', false),
  part('belt', [], 'atOnce', false),
  part('filter', [], 'whenLooked', true),
];

function part(
  cardId: string,
  positions: string[],
  shows: PartQuestion['shows'],
  doneRenews: boolean,
): PartQuestion {
  return { cardId, positions, counter: 'stageMetres', shows, doneRenews };
}

export function scriptSeason(seed: number, carId: string): ScriptedCar {
  const chance = chanceFrom(seed);
  const ranBefore = chance.whole(0, 900_000);
  const route = driveRoute(chance, ranBefore);
  const car: ScriptedCar & { history: { carried: CarHistory['carried'][number][] } } = {
    history: { carId, ranBefore: { stageMetres: ranBefore }, carried: [], events: [] },
    lines: new Map(),
    seenAt: new Map(),
    truths: [],
  };
  const lines = new Map<string, string[]>();
  for (const question of SEASON_PARTS) {
    const places = question.positions.length > 0 ? question.positions : [null];
    const scripts = places.map((position) => scriptPlace(chance, route, question, position, ranBefore, car));
    writeRecords(
      route,
      question,
      scripts.flatMap(({ notes }) => notes),
    );
    lines.set(
      question.cardId,
      scripts.flatMap(({ lives }) => lives.flatMap((life) => cut(life, route, question))),
    );
  }
  const events = route.events.map(
    ({ eventId, finished, amounts, records }): WatchedEvent => ({
      eventId,
      finished,
      counted: { stageMetres: amounts },
      records,
    }),
  );
  const seenAt = new Map(
    SEASON_PARTS.map(({ cardId }) => {
      const own = car.truths.filter((truth) => truth.cardId === cardId);
      return [cardId, own.map((truth) => truth.seenAt).sort((one, other) => one - other)];
    }),
  );
  return { ...car, history: { ...car.history, events }, lines, seenAt };
}

interface ScriptedLife {
  position: string | null;
  part: number;
  design: number;
  origin: string;
  entryAge: number | null;
  from: number;
  fromOrder: number;
  to: number;
  toOrder: number;
  ending: 'failed' | 'replaced' | 'modified' | 'running';
  /** Of a failure. */
  goodTo: number;
}

/** What is written down of one place at one moment. */
interface Note {
  moment: Moment;
  position: string | null;
  kind: 'needsWork' | 'temporaryRepair' | 'broke' | 'fitted' | 'madeGood' | 'modified' | 'changed';
}

function scriptPlace(
  chance: Chance,
  route: Route,
  question: PartQuestion,
  position: string | null,
  ranBefore: number,
  car: { truths: ScriptedCar['truths']; history: { carried: CarHistory['carried'][number][] } },
): { lives: ScriptedLife[]; notes: Note[] } {
  const { cardId } = question;
  const entryAge = [null, 0, chance.whole(1, 90_000)][chance.whole(0, 2)] ?? null;
  if (entryAge !== null) car.history.carried.push({ cardId, position, age: { stageMetres: entryAge } });
  const origin = entryAge === null ? 'unknown' : 'carried';
  const lives: ScriptedLife[] = [];
  const notes: Note[] = [];
  let next: Beginning | null = { part: 1, design: 0, origin, entryAge, from: ranBefore, fromOrder: -1 };
  while (next !== null) {
    const { life, metre, found } = liveOn(chance, route, question, position, next);
    lives.push(life);
    if (metre !== null) car.truths.push({ cardId, position, metre, seenAt: life.to });
    next = found === null ? null : after(chance, route, question, life, found, notes);
  }
  return { lives, notes };
}

type Beginning = Pick<ScriptedLife, 'part' | 'design' | 'origin' | 'entryAge' | 'from' | 'fromOrder'>;

/** What the lives of new parts are drawn from: Weibull's, in metres. */
export const DRAWN = { shape: 2, scale: 90_000 };

function drawLife({ next }: Chance): number {
  return Math.ceil(DRAWN.scale * (-Math.log(1 - next())) ** (1 / DRAWN.shape)) || 1;
}

/** Runs one part until it fails, is taken off in time, or the season is over. */
function liveOn(
  chance: Chance,
  route: Route,
  question: PartQuestion,
  position: string | null,
  begin: Beginning,
): { life: ScriptedLife; metre: number | null; found: Moment | null } {
  const metre = begin.from + drawLife(chance);
  const after = route.moments.filter(({ order }) => order > begin.fromOrder);
  const looks = after.filter(({ service }) => service && !(question.doneRenews && chance.oneIn(2)));
  const found = (question.shows === 'atOnce' ? after : looks).find(({ total }) => total >= metre) ?? null;
  // A card that means new parts is closed at the first look, whatever is found.
  const inTime = question.doneRenews ? looks[0] : chance.oneIn(3) ? looks[chance.whole(0, 6)] : undefined;
  const life = { position, ...begin, to: route.total, toOrder: route.moments.length, goodTo: 0 };
  if (inTime && (!found || inTime.order < found.order)) {
    const ending = !question.doneRenews && chance.oneIn(3) ? ('modified' as const) : ('replaced' as const);
    return { life: { ...life, to: inTime.total, toOrder: inTime.order, ending }, metre: null, found: inTime };
  }
  if (!found) return { life: { ...life, ending: 'running' }, metre: null, found: null };
  const seen = question.doneRenews ? [] : looks.filter(({ order }) => order < found.order);
  const lastGood = question.shows === 'atOnce' ? found.totalBefore : (seen.at(-1)?.total ?? 0);
  const goodTo = Math.max(begin.from, lastGood);
  return { life: { ...life, to: found.total, toOrder: found.order, ending: 'failed', goodTo }, metre, found };
}

/** What is done about it, and the part that runs from there. */
function after(
  chance: Chance,
  route: Route,
  question: PartQuestion,
  life: ScriptedLife,
  found: Moment,
  notes: Note[],
): Beginning | null {
  const { position, part, design, ending } = life;
  const write = (moment: Moment, kind: Note['kind']) => notes.push({ moment, position, kind });
  const fresh = (moment: Moment): Beginning => ({
    ...{ part: part + 1, design: design + (ending === 'modified' ? 1 : 0), origin: 'new', entryAge: 0 },
    ...{ from: moment.total, fromOrder: moment.order },
  });
  if (question.doneRenews) {
    if (ending === 'failed') write(found, 'needsWork');
    write(found, 'changed');
    return fresh(found);
  }
  if (ending !== 'failed') {
    write(found, ending === 'modified' ? 'modified' : 'fitted');
    return fresh(found);
  }
  const atOnce = question.shows === 'atOnce';
  if (!atOnce && chance.oneIn(2)) {
    write(found, 'needsWork');
    write(found, 'fitted');
    return fresh(found);
  }
  write(found, atOnce ? 'broke' : 'temporaryRepair');
  const later = route.moments.filter(({ order, service }) => service && order > found.order)[
    chance.whole(0, 2)
  ];
  if (!later) return null;
  const repaired = chance.oneIn(2);
  write(later, repaired ? 'madeGood' : 'fitted');
  if (!repaired) return fresh(later);
  const entryAge = life.entryAge === null ? null : life.entryAge + life.to - life.from;
  return { part, design, origin: 'repaired', entryAge, from: later.total, fromOrder: later.order };
}

/** Writes the records of one card down, at every moment in the order a crew would. */
function writeRecords(
  route: Route,
  { cardId, doneRenews, shows }: PartQuestion,
  notes: readonly Note[],
): void {
  for (const moment of route.moments) {
    const records: PartRecord[] = [];
    const { point } = moment;
    const here = notes.filter((note) => note.moment === moment);
    const found = here.flatMap(({ kind, position }) =>
      kind === 'needsWork' || kind === 'temporaryRepair' ? [{ position, grade: kind }] : [],
    );
    const isClosed = doneRenews ? here.some(({ kind }) => kind === 'changed') : shows === 'whenLooked';
    if (moment.service && isClosed) records.push({ kind: 'closed', cardId, point, findings: found });
    for (const { kind, position } of here) {
      const place = { cardId, position, point };
      if (kind === 'broke') records.push({ kind, ...place, where: 'sinceLastPoint' });
      if (kind === 'fitted') records.push({ kind, ...place, because: null });
      if (kind === 'madeGood') records.push({ kind, ...place });
      if (kind === 'modified') records.push({ kind, ...place, newPart: true });
    }
    // A failure that was felt comes before the car stops there.
    route.events[moment.eventIndex]?.records.unshift(...records.filter(({ kind }) => kind === 'broke'));
    route.events[moment.eventIndex]?.records.push(...records.filter(({ kind }) => kind !== 'broke'));
  }
}

/** Lays the breaks over a life and tells its pieces. */
function cut(life: ScriptedLife, { breaks, moments }: Route, { shows, doneRenews }: PartQuestion): string[] {
  const within = breaks.filter(({ order }) => order > life.fromOrder && order < life.toOrder);
  const ends = [...within, { order: life.toOrder, total: life.to, ending: life.ending }];
  let [from, origin] = [life.from, life.origin];
  return ends.flatMap(({ order, total, ending }) => {
    if (total === from && ending !== 'failed') return [];
    const looks = moments.filter((look) => look.service && look.order > life.fromOrder && look.order < order);
    const looked = doneRenews ? life.from : Math.max(life.from, looks.at(-1)?.total ?? 0);
    const inHand = ending === 'replaced' || ending === 'modified' || shows === 'atOnce';
    const goodTo = ending === 'failed' ? life.goodTo : inHand ? total : looked;
    const age = life.entryAge === null ? '?' : life.entryAge + from - life.from;
    const which = `${life.position ?? '-'} ${life.part}.${life.design} ${origin}@${age}`;
    const line = `${which} ${from}..${total} good ${goodTo} ${ending}`;
    [from, origin] = [total, 'resumed'];
    return [line];
  });
}
