import fc from 'fast-check';
import type { JobCard } from '../job-card';
import type { CardQuestion } from '../questions';
import { randomQuestion } from '../random-questions/fixtures';
import type { ReadingsQuestion } from '../readings/judge-gauges';
import { judgeReadings } from '../readings/judge-readings';
import type { PartEvent } from '../readings/model';
import { canDo, driveSlowly } from '../slow-wear/fixtures';
import { reading, starterCard } from '../starter-parts';

/*
 * For tests only: random pads, read on a round and changed by a job, and what is said of them worked out a second time,
 * slowly and plainly: one wheel after the other, the log is read aloud from service to service, a set of pads is thrown
 * away when a new one goes on, and every pair of readings that follow each other on one set is put down as a loop.
 */

const WHEELS = ['FL', 'FR'] as const;
type Wheel = (typeof WHEELS)[number];
type Values = Record<Wheel, number>;

/** What went on at one service, and on the road to it. */
interface Visit {
  round: Values | null;
  change: { isMeasured: boolean; values: Values } | null;
  changedBeforeRound: boolean;
  fittedOnRoad: Wheel | 'all' | null;
  fittedHere: Wheel | 'all' | null;
}

export interface PadQuestion {
  route: CardQuestion;
  visits: readonly Visit[];
  low: number;
}

const values: fc.Arbitrary<Values> = fc.record({
  FL: fc.integer({ min: 0, max: 90 }),
  FR: fc.integer({ min: 0, max: 90 }),
});
const fitted = fc.constantFrom(
  null,
  null,
  null,
  null,
  null,
  null,
  null,
  null,
  'FL' as const,
  'FR' as const,
  'all' as const,
);
const visit: fc.Arbitrary<Visit> = fc.record({
  round: fc.option(values, { freq: 5 }),
  change: fc.oneof(
    { weight: 3, arbitrary: fc.constant(null) },
    { weight: 1, arbitrary: fc.record({ isMeasured: fc.boolean(), values }) },
  ),
  changedBeforeRound: fc.boolean(),
  fittedOnRoad: fitted,
  fittedHere: fitted,
});

export const randomPads: fc.Arbitrary<PadQuestion> = fc.record({
  route: randomQuestion.map(({ question }) => question),
  visits: fc.array(visit, { minLength: 5, maxLength: 5 }),
  low: fc.integer({ min: 0, max: 40 }),
});

const ROUND = 'starter:front-corners';
const CHANGE = 'starter:front-pads';

function cardsOf({ route, low }: PadQuestion): JobCard[] {
  const pads = { id: 'pads', kind: 'wear' as const, unit: 'mm', decimals: 1, positions: [...WHEELS] };
  const round = { id: 'front-corners', name: 'Front corners', place: 'allCorners' as const, seconds: 60 };
  const change = { id: 'front-pads', name: 'Change', place: 'allCorners' as const, seconds: 60 };
  const { conditionFactors, combineConditions, leastServiceSeconds, remoteAllowed } = route.card;
  return [
    starterCard({ ...round, readings: [reading({ ...pads, name: 'Pad thickness', low })] }),
    starterCard({
      ...change,
      ...{ conditionFactors, combineConditions, leastServiceSeconds, remoteAllowed },
      readings: [reading({ ...pads, name: 'New pad thickness' })],
    }),
  ];
}

function historyOf({ route, visits }: PadQuestion): PartEvent[] {
  return route.services.flatMap(({ id, inIndex }, index): PartEvent[] => {
    const now = visits[index];
    if (now === undefined) return [];
    const read = (cardId: string, from: Values | null): PartEvent[] =>
      from === null
        ? []
        : WHEELS.map((position) => ({
            ...({ kind: 'read', cardId, readingId: 'pads', serviceId: id, pointIndex: inIndex } as const),
            ...{ position, value: from[position] },
          }));
    const fit = (what: Visit['fittedHere']): PartEvent[] =>
      what === null
        ? []
        : [{ kind: 'fitted', cardId: CHANGE, position: what === 'all' ? null : what, pointIndex: inIndex }];
    const round = read(ROUND, now.round);
    const change: PartEvent[] = now.change
      ? [
          { kind: 'done', cardId: CHANGE, pointIndex: inIndex },
          ...read(CHANGE, now.change.isMeasured ? now.change.values : null),
        ]
      : [];
    const work = now.changedBeforeRound ? [...change, ...round] : [...round, ...change];
    return [...fit(now.fittedOnRoad), ...work, ...fit(now.fittedHere)];
  });
}

export interface PadAnswer {
  verdict: string;
  overdue: boolean;
  doableHere: boolean;
  /** "FL wearsOut 45 19": place, code, value, most it loses. */
  places: string[];
}

export function quickPads(question: PadQuestion): PadAnswer | null {
  const asked: ReadingsQuestion = {
    ...question.route,
    cards: cardsOf(question),
    history: historyOf(question),
    surface: 'gravel',
  };
  const found = judgeReadings(asked).find(({ cardId }) => cardId === CHANGE);
  if (found === undefined) return null;
  const { verdict, overdue, doableHere, reasons } = found;
  const places = reasons
    .filter(({ code }) => code !== 'notHere')
    .map(({ position, code, value, lossAhead }) => `${position} ${code} ${value} ${lossAhead}`);
  return { verdict, overdue, doableHere, places: places.sort() };
}

/** A set of pads on one wheel. */
interface PadSet {
  since: number | null;
  values: { value: number; at: number }[];
}

export function slowPads(question: PadQuestion): PadAnswer | null {
  const { route, low } = question;
  const change = cardsOf(question)[1];
  const here = route.services[route.serviceIndex];
  if (change === undefined || here === undefined) throw new Error('no such card or service');
  let lastsTo = route.itinerary.points.length - 1;
  for (let later = route.services.length - 1; later > route.serviceIndex; later -= 1) {
    const service = route.services[later];
    if (service !== undefined && canDo(change, service)) lastsTo = service.inIndex;
  }
  const sets = { FL: setsOn('FL', question), FR: setsOn('FR', question) };
  const driven = (set: PadSet, point: number) => {
    const lastDone =
      set.since === null ? { pointIndex: null, carried: {} } : { pointIndex: set.since, carried: null };
    return driveSlowly({ ...route, card: change, lastDone })[point]?.stageMetres ?? -1;
  };
  let worstLoss = 0;
  let worstMetres = 0;
  for (const set of [...sets.FL, ...sets.FR]) {
    for (let index = 1; index < set.values.length; index += 1) {
      const before = set.values[index - 1];
      const after = set.values[index];
      if (before === undefined || after === undefined) continue;
      const metres = driven(set, after.at) - driven(set, before.at);
      if (metres === 0) continue;
      const loss = before.value > after.value ? before.value - after.value : 0;
      if (worstMetres === 0 || loss / metres > worstLoss / worstMetres) {
        worstLoss = loss;
        worstMetres = metres;
      }
    }
  }
  const places: { wheel: Wheel; code: string; value: number; loss: number | null; room: number }[] = [];
  for (const wheel of WHEELS) {
    const set = sets[wheel].at(-1);
    const last = set?.values.at(-1);
    if (set === undefined || last === undefined) continue;
    const ahead = driven(set, lastsTo) - driven(set, last.at);
    let loss: number | null = null;
    if (worstMetres > 0) {
      loss = 0;
      // A fifth on top; as many whole units as it takes.
      while (BigInt(loss) * BigInt(worstMetres) * 1000n < BigInt(worstLoss) * BigInt(ahead) * 1200n)
        loss += 1;
    }
    const room = last.value - low - (loss ?? 0);
    const code =
      last.value < low ? 'outOfOrder' : loss === null ? 'notKnown' : room < 0 ? 'wearsOut' : 'holds';
    places.push({ wheel, code, value: last.value, loss, room });
  }
  if (places.length === 0) return null;
  const due = places.filter(({ code }) => code === 'outOfOrder' || code === 'wearsOut');
  const worst = places.reduce((one, other) => (other.room < one.room ? other : one));
  const doableHere = canDo(change, here);
  return {
    verdict: due.length > 0 && doableHere ? 'doNow' : 'leave',
    overdue: places.some(({ code }) => code === 'outOfOrder'),
    doableHere,
    places: (due.length > 0 ? due : [worst])
      .map((each) => `${each.wheel} ${each.code} ${each.value} ${each.loss}`)
      .sort(),
  };
}

/** All sets of pads one wheel has had up to this service, the one that is on last. */
function setsOn(wheel: Wheel, { route, visits }: PadQuestion): PadSet[] {
  const sets: PadSet[] = [{ since: null, values: [] }];
  for (let index = 0; index <= route.serviceIndex; index += 1) {
    const at = route.services[index]?.inIndex;
    const now = visits[index];
    if (at === undefined || now === undefined) continue;
    const putOn = () => sets.push({ since: at, values: [] });
    const write = (value: number) => sets.at(-1)?.values.push({ value, at });
    // What the job itself does at the service that is judged is not looked at: it stays due and shows as done.
    const change = index === route.serviceIndex ? null : now.change;
    if (now.fittedOnRoad === wheel || now.fittedOnRoad === 'all') putOn();
    const isRoundLast = now.changedBeforeRound && change !== null && !change.isMeasured;
    if (now.round !== null && !isRoundLast) write(now.round[wheel]);
    if (change !== null) putOn();
    if (change?.isMeasured) write(change.values[wheel]);
    if (now.round !== null && isRoundLast) write(now.round[wheel]);
    if (now.fittedHere === wheel || now.fittedHere === 'all') putOn();
  }
  return sets;
}
