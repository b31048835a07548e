import type { StageRun } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { at, cardWith, EIGHT_OCLOCK, eventOf, threeLoops } from './fixtures';
import { judgeCard } from './judge-card';
import type { LastDone, VerdictReason } from './model';
import type { CardQuestion } from './questions';

const NEW: LastDone = { pointIndex: null, carried: {} };
const doneAt = (pointIndex: number): LastDone => ({ pointIndex, carried: null });

function judge(own: Partial<CardQuestion>) {
  return judgeCard({
    ...threeLoops(),
    runs: new Map(),
    plannedConditions: new Map(),
    serviceIndex: 0,
    position: 1,
    card: cardWith(),
    lastDone: NEW,
    ...own,
  });
}

function firstReason(own: Partial<CardQuestion>): VerdictReason | undefined {
  return judge(own).reasons[0];
}

/*
 * The event, first car. A loop is 10 km road, 16 km stage, 10 km road, 8 km stage, 10 km road: 54 km.
 * Road 60 s a km, stage 45 s a km, three minutes from a time control to its start, 20 minutes of service.
 *
 *   point            clock      route km       point            clock      route km
 *   0  A in          08:00      0              9  SS3 start     09:47      64
 *   1  A out         08:20      0              10 TC            10:09      90   (finish of SS3 09:59, km 80)
 *   2  TC            08:30      10             11 SS4 start     10:12      90
 *   3  SS1 start     08:33      10             12 C in          10:28      108  (finish of SS4 10:18, km 98)
 *   4  TC            08:55      36             13 C out         10:48      108
 *   5  SS2 start     08:58      36             15 SS5 start     11:01      118
 *   6  B in          09:14      54             17 SS6 start     11:26      144
 *   7  B out         09:34      54             18 finish        11:42      162
 *   8  TC            09:44      64
 */
describe('three loops worked by hand', () => {
  const airFilter = cardWith({
    id: 'air-filter',
    intervals: [{ counter: 'stageMetres', every: 60_000, tolerance: 5_000 }],
    conditionFactors: { dust: 2000 },
  });
  // Loop 1 as the crew confirmed it: SS1 half dusty (16 × 1.5 = 24 km), SS2 clear (8 km): 32 km at Service B.
  const loop1: [string, StageRun][] = [
    ['SS1', { stageId: 'SS1', driven: true, conditions: { dust: 500 } }],
    ['SS2', { stageId: 'SS2', driven: true, conditions: {} }],
  ];
  // Planned: SS3 as dusty as it gets (16 × 2 = 32 km), all others clear: 32 + 32 + 8 = 72 km at Service C.
  const plannedConditions = new Map([['SS3', { dust: 1000 }]]);
  const knowledge = { card: airFilter, runs: new Map(loop1), plannedConditions };

  it('air filter at Service B: do now, 72 km at Service C is more than 60 + 5', () => {
    const verdict = judge({ ...knowledge, serviceIndex: 1 });
    expect(verdict).toEqual({
      cardId: 'air-filter',
      verdict: 'doNow',
      doableHere: true,
      overdue: false,
      reasons: [
        {
          code: 'wontReach',
          counter: 'stageMetres',
          limit: 60_000,
          wearNow: 32_000,
          wearAtNextChance: 72_000,
          nextChance: 'C',
          // 60 − 32 = 28 km left, used up twice as fast: 14 km into SS3. Route 64 + 14 = 78 km.
          // Clock 09:47 + 14 × 45 s = 09:47 + 10 min 30 s = 09:57:30.
          passedAt: { stageId: 'SS3', pointIndex: 9, routeMetres: 78_000, at: at(9, 57, 30) },
        },
      ],
    });
  });

  it('the third car passes the same place two minutes later', () => {
    const reason = firstReason({ ...knowledge, serviceIndex: 1, position: 3 });
    expect(reason?.passedAt).toMatchObject({ routeMetres: 78_000, at: at(9, 59, 30) });
  });

  it('air filter at Service A: lasts to Service B', () => {
    const verdict = judge({ ...knowledge, serviceIndex: 0 });
    expect(verdict).toMatchObject({ verdict: 'leave', overdue: false });
    expect(verdict.reasons[0]).toMatchObject({ code: 'reaches', wearNow: 0, wearAtNextChance: 32_000 });
  });

  it('a cancelled SS3 moves the limit to the last stage and the work to Service C', () => {
    const runs = new Map<string, StageRun>([
      ...loop1,
      ['SS3', { stageId: 'SS3', driven: false, conditions: {} }],
    ]);
    const atB = judge({ ...knowledge, runs, serviceIndex: 1 });
    expect(atB.verdict).toBe('leave');
    // 32 + 0 + 8 = 40 km at Service C. SS5 makes 56, so 4 km into SS6: route 144 + 4 = 148 km, 11:26 + 180 s.
    expect(atB.reasons[0]).toMatchObject({
      code: 'reaches',
      wearAtNextChance: 40_000,
      passedAt: { stageId: 'SS6', pointIndex: 17, routeMetres: 148_000, at: at(11, 29) },
    });
    // At Service C: 40 + 16 + 8 = 64 km at the finish, within 60 + 5.
    const atC = judge({ ...knowledge, runs, serviceIndex: 2 });
    expect(atC.verdict).toBe('ifTime');
    expect(atC.reasons[0]).toMatchObject({
      code: 'withinTolerance',
      wearAtNextChance: 64_000,
      nextChance: null,
    });
  });

  it('pads at Service B: if time, 48 km at Service C is over 45 but within 10', () => {
    const pads = cardWith({ intervals: [{ counter: 'stageMetres', every: 45_000, tolerance: 10_000 }] });
    const verdict = judge({ card: pads, serviceIndex: 1 });
    expect(verdict.verdict).toBe('ifTime');
    // 45 − 24 = 21 km left: 16 of SS3 and 5 of SS4. Route 90 + 5 = 95 km, 10:12 + 5 × 45 s = 10:15:45.
    expect(verdict.reasons).toEqual([
      {
        code: 'withinTolerance',
        counter: 'stageMetres',
        limit: 45_000,
        wearNow: 24_000,
        wearAtNextChance: 48_000,
        nextChance: 'C',
        passedAt: { stageId: 'SS4', pointIndex: 11, routeMetres: 95_000, at: at(10, 15, 45) },
      },
    ]);
  });
});

describe('every service', () => {
  const atService = [0, 6, 12];

  it('is due at each service on arrival, not overdue', () => {
    expect(judge({ serviceIndex: 0 })).toMatchObject({ verdict: 'doNow', overdue: false });
    expect(judge({ serviceIndex: 1, lastDone: doneAt(0) })).toMatchObject({
      verdict: 'doNow',
      overdue: false,
      reasons: [{ code: 'past', wearNow: 1, wearAtNextChance: 2 }],
    });
  });

  it.each([0, 1])('once done at service %i it is left there and lasts to the next', (serviceIndex) => {
    const verdict = judge({ serviceIndex, lastDone: doneAt(atService[serviceIndex] ?? -1) });
    expect(verdict).toMatchObject({
      verdict: 'leave',
      reasons: [{ code: 'reaches', wearNow: 0, wearAtNextChance: 1 }],
    });
    expect(verdict.reasons[0]?.passedAt?.pointIndex).toBe(atService[serviceIndex + 1]);
  });

  it('once done at the last service it lasts to the finish', () => {
    const verdict = judge({ serviceIndex: 2, lastDone: doneAt(12) });
    expect(verdict).toMatchObject({ verdict: 'leave', reasons: [{ code: 'lasts', passedAt: null }] });
  });

  it('is overdue when a service was missed', () => {
    expect(judge({ serviceIndex: 2, lastDone: doneAt(0) })).toMatchObject({ verdict: 'doNow', overdue: true });
  });

  it('every second service skips one', () => {
    const card = cardWith({ intervals: [{ counter: 'services', every: 2, tolerance: 0 }] });
    expect(judge({ card, serviceIndex: 1, lastDone: doneAt(0) }).verdict).toBe('leave');
    expect(judge({ card, serviceIndex: 2, lastDone: doneAt(0) })).toMatchObject({
      verdict: 'doNow',
      overdue: false,
    });
  });

  it('is not made overdue by a remote service nobody may do it in', () => {
    const event = eventOf([
      { service: 20 },
      { service: 15, remote: true, road: 5_000 },
      { service: 20, road: 5_000 },
      { finish: true },
    ]);
    const card = cardWith({ remoteAllowed: false });
    expect(judge({ ...event, card, serviceIndex: 0, lastDone: doneAt(0) })).toMatchObject({
      verdict: 'leave',
      reasons: [{ code: 'reaches', nextChance: 'C' }],
    });
    expect(judge({ ...event, card, serviceIndex: 2, lastDone: doneAt(0) })).toMatchObject({
      verdict: 'doNow',
      overdue: false,
    });
  });
});

describe('other counters that come in pieces', () => {
  it('stages: coming up to the limit on the way to the next service is in time, one more is not', () => {
    const everyStages = (every: number) => cardWith({ intervals: [{ counter: 'stages', every, tolerance: 0 }] });
    expect(firstReason({ card: everyStages(2) })).toMatchObject({ code: 'reaches', wearAtNextChance: 2 });
    const tooMany = judge({ card: everyStages(3), serviceIndex: 1 });
    expect(tooMany.verdict).toBe('doNow');
    // The third stage is full at the finish of SS3: km 80, 09:59.
    expect(tooMany.reasons[0]).toMatchObject({
      code: 'wontReach',
      passedAt: { stageId: 'SS3', pointIndex: 9, routeMetres: 80_000, at: at(9, 59) },
    });
  });

  it('days: due on the first service of each day, and not again that day', () => {
    const event = eventOf([
      { service: 20 },
      { stage: 'SS1', metres: 5_000, road: 1_000 },
      { service: 30, road: 1_000 },
      { overnight: true },
      { service: 20 },
      { stage: 'SS2', metres: 5_000, road: 1_000 },
      { service: 30, road: 1_000 },
      { finish: true },
    ]);
    const card = cardWith({ intervals: [{ counter: 'days', every: 1, tolerance: 0 }] });
    const verdictAt = (serviceIndex: number, lastDone: LastDone) =>
      judge({ ...event, card, serviceIndex, lastDone }).verdict;
    expect(verdictAt(0, NEW)).toBe('doNow');
    expect(verdictAt(1, doneAt(0))).toBe('leave');
    expect(verdictAt(2, doneAt(0))).toBe('doNow');
    expect(verdictAt(3, doneAt(6))).toBe('leave');
  });

  it('events: what was carried decides, nothing is added on the way', () => {
    const card = cardWith({ intervals: [{ counter: 'events', every: 1, tolerance: 0 }] });
    expect(judge({ card })).toMatchObject({ verdict: 'leave', reasons: [{ code: 'lasts' }] });
    const due = judge({ card, lastDone: { pointIndex: null, carried: { events: 1 } } });
    expect(due).toMatchObject({ verdict: 'doNow', reasons: [{ code: 'past', passedAt: null }] });
  });
});

describe('chances', () => {
  const event = eventOf([
    { service: 20 },
    { stage: 'SS1', metres: 20_000, road: 5_000 },
    { service: 10, remote: true, road: 5_000 },
    { stage: 'SS2', metres: 20_000, road: 5_000 },
    { service: 30, road: 5_000 },
    { stage: 'SS3', metres: 20_000, road: 5_000 },
    { finish: true, road: 5_000 },
  ]);
  const pads = cardWith({
    intervals: [{ counter: 'stageMetres', every: 30_000, tolerance: 0 }],
    leastServiceSeconds: 1200,
  });

  it('ten minutes are no chance for long work: it is done before', () => {
    const verdict = judge({ ...event, card: pads, serviceIndex: 0 });
    expect(verdict).toMatchObject({ verdict: 'doNow', reasons: [{ code: 'wontReach', nextChance: 'C' }] });
    const quick = judge({ ...event, card: { ...pads, leastServiceSeconds: 600 }, serviceIndex: 0 });
    expect(quick).toMatchObject({ verdict: 'leave', reasons: [{ code: 'reaches', nextChance: 'B' }] });
  });

  it('in the short service itself it is left, with the reason and the danger told', () => {
    const verdict = judge({ ...event, card: pads, serviceIndex: 1 });
    expect(verdict).toMatchObject({ verdict: 'leave', doableHere: false, overdue: false });
    expect(verdict.reasons.map((reason) => reason.code)).toEqual(['notHere', 'wontReach']);
    const worn = { pointIndex: null, carried: { stageMetres: 15_000 } };
    const overdue = judge({ ...event, card: pads, serviceIndex: 1, lastDone: worn });
    expect(overdue).toMatchObject({ verdict: 'leave', doableHere: false, overdue: true });
    expect(overdue.reasons.map((reason) => reason.code)).toEqual(['notHere', 'past']);
  });

  it('without a later service the finish must be reached', () => {
    const verdict = judge({ ...event, card: pads, serviceIndex: 2 });
    expect(verdict).toMatchObject({ verdict: 'doNow', reasons: [{ code: 'past', nextChance: null }] });
    const fresh = judge({ ...event, card: pads, serviceIndex: 2, lastDone: doneAt(8) });
    expect(fresh).toMatchObject({ verdict: 'leave', reasons: [{ code: 'lasts', wearAtNextChance: 20_000 }] });
  });

  it('coming up to the limit exactly on arrival at the next chance is in time', () => {
    const exact = cardWith({ intervals: [{ counter: 'stageMetres', every: 20_000, tolerance: 0 }] });
    expect(judge({ ...event, card: exact }).verdict).toBe('leave');
    const short = cardWith({ intervals: [{ counter: 'stageMetres', every: 19_999, tolerance: 0 }] });
    expect(judge({ ...event, card: short }).verdict).toBe('doNow');
  });

  it('work done here that still will not last is left, and the reason says so', () => {
    const weak = cardWith({ intervals: [{ counter: 'stageMetres', every: 15_000, tolerance: 0 }] });
    const verdict = judge({ ...event, card: weak, serviceIndex: 0, lastDone: doneAt(0) });
    expect(verdict).toMatchObject({ verdict: 'leave', reasons: [{ code: 'wontReach', wearNow: 0 }] });
  });
});

describe('a calendar date', () => {
  const dated = (dueAt: number) => cardWith({ intervals: [], dateLimit: { dueAt } });

  it('is due once it has come, and overdue after', () => {
    expect(judge({ card: dated(EIGHT_OCLOCK) })).toMatchObject({ verdict: 'doNow', overdue: false });
    expect(judge({ card: dated(EIGHT_OCLOCK - 1) })).toMatchObject({
      verdict: 'doNow',
      overdue: true,
      reasons: [{ code: 'past', counter: 'date', passedAt: null }],
    });
  });

  it('is due when it falls before the next chance, and says where the car will be', () => {
    const verdict = judge({ card: dated(at(8, 39)) });
    // SS1 starts at 08:33; six of its twelve minutes are 8 of its 16 km. Route 10 + 8 = 18 km.
    expect(verdict).toMatchObject({
      verdict: 'doNow',
      overdue: false,
      reasons: [
        { code: 'dateFalls', passedAt: { stageId: 'SS1', pointIndex: 3, routeMetres: 18_000, at: at(8, 39) } },
      ],
    });
  });

  it('waits when it falls at the next chance or later, by the time of this car', () => {
    expect(judge({ card: dated(at(9, 14)) }).reasons[0]?.code).toBe('reaches');
    expect(judge({ card: dated(at(9, 14)), position: 2 }).reasons[0]?.code).toBe('dateFalls');
    expect(judge({ card: dated(at(20, 0)) }).reasons[0]?.code).toBe('lasts');
  });

  it('rules until the card has its next date, except where it was just done', () => {
    const card = dated(at(7, 0));
    expect(judge({ card, serviceIndex: 1, lastDone: doneAt(6) })).toMatchObject({
      verdict: 'leave',
      overdue: false,
    });
    expect(judge({ card, serviceIndex: 2, lastDone: doneAt(6) }).verdict).toBe('doNow');
  });
});

describe('several limits', () => {
  it('the worst decides and stands first', () => {
    const card = cardWith({
      intervals: [
        { counter: 'stageMetres', every: 500_000, tolerance: 0 },
        { counter: 'stages', every: 3, tolerance: 5 },
        { counter: 'totalMetres', every: 80_000, tolerance: 0 },
      ],
      dateLimit: { dueAt: at(6, 0) },
    });
    const verdict = judge({ card, serviceIndex: 1 });
    expect(verdict).toMatchObject({ verdict: 'doNow', overdue: true });
    expect(verdict.reasons.map(({ code, counter }) => [code, counter])).toEqual([
      ['past', 'date'],
      ['wontReach', 'totalMetres'],
      ['withinTolerance', 'stages'],
      ['lasts', 'stageMetres'],
    ]);
  });

  it('total kilometres are passed on the road as well', () => {
    const card = cardWith({ intervals: [{ counter: 'totalMetres', every: 57_000, tolerance: 0 }] });
    // 3 km of the road out of Service B: out at 09:34, 60 s a km.
    expect(firstReason({ card, serviceIndex: 1 })?.passedAt).toEqual({
      stageId: null,
      pointIndex: 7,
      routeMetres: 57_000,
      at: at(9, 37),
    });
  });

  it('a limit passed already says where that was', () => {
    const card = cardWith({ intervals: [{ counter: 'stageMetres', every: 20_000, tolerance: 0 }] });
    // 16 km of SS1 and 4 of SS2: route 36 + 4 = 40 km, 08:58 + 180 s.
    expect(firstReason({ card, serviceIndex: 1 })).toMatchObject({
      code: 'past',
      passedAt: { stageId: 'SS2', pointIndex: 5, routeMetres: 40_000, at: at(9, 1) },
    });
  });

  it('a card without any limit is left', () => {
    expect(judge({ card: cardWith({ intervals: [] }) })).toMatchObject({
      verdict: 'leave',
      reasons: [{ code: 'lasts', counter: null }],
    });
  });
});

describe('nonsense', () => {
  it('is refused with a sentence that names the function', () => {
    expect(() => judge({ serviceIndex: 9 })).toThrow(/judgeCard: there is no service at index 9/);
    expect(() => judge({ serviceIndex: 0, lastDone: doneAt(6) })).toThrow(/judgeCard: card was last done/);
    const zero = cardWith({ intervals: [{ counter: 'stages', every: 0, tolerance: 0 }] });
    expect(() => judge({ card: zero })).toThrow(/judgeCard: the interval on stages/);
    expect(() => judge({ position: 0 })).toThrow(/position/);
  });
});
