import type { StageRun } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { at, cardWith, questionWith } from './fixtures';
import { judgeCard } from './judge-card';
import type { VerdictReason } from './model';
import type { CardQuestion } from './questions';

function judge(own: Partial<CardQuestion>) {
  return judgeCard(questionWith(own));
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
