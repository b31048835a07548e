import { dueAt, type ServiceWindow } from '@halfshaft/itinerary';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeCard } from './judge-card';
import type { Counter, Verdict } from './model';
import type { CardQuestion } from './questions';
import { randomQuestion } from './random-questions/fixtures';
import { wearBetween } from './wear-between';

/*
 * The same rules written a second time, slowly and from the points of the itinerary instead of its segments: every
 * metre is driven one by one and every arrival looked at. Only the counters that need no stage time are covered.
 */

const COVERED: readonly Counter[] = ['stages', 'stageMetres', 'totalMetres', 'services', 'days', 'events'];

type SlowLog = {
  metresDriven: number;
  wear: Record<string, number>;
  pointIndex: number;
  stage: string | null;
};

/** Calls `visit` after each metre and after each arrival, with wear in thousandths. */
function driveSlowly(question: CardQuestion, visit: (log: SlowLog) => 'stop' | undefined): void {
  const { itinerary, lastDone, services, card, runs, plannedConditions } = question;
  const counting = (index: number) => lastDone.pointIndex === null || index >= lastDone.pointIndex;
  const chance = (service: ServiceWindow | undefined) =>
    service !== undefined &&
    !(service.allowedSeconds < card.leastServiceSeconds) &&
    !(service.kind === 'remoteService' && !card.remoteAllowed);
  const wear: Record<string, number> = {};
  for (const counter of COVERED) {
    wear[counter] = lastDone.pointIndex === null ? 1000 * (lastDone.carried[counter] ?? 0) : 0;
  }
  const add = (counter: string, thousandths: number) => {
    wear[counter] = (wear[counter] ?? 0) + thousandths;
  };
  if (lastDone.pointIndex === null) {
    add('days', 1000);
    if (chance(services.find((service) => service.inIndex === 0))) add('services', 1000);
  }
  let metresDriven = 0;
  const show = (pointIndex: number, stage: string | null) => visit({ metresDriven, wear, pointIndex, stage });
  if (show(0, null) === 'stop') return;

  for (let index = 1; index < itinerary.points.length; index += 1) {
    const from = itinerary.points[index - 1];
    const to = itinerary.points[index];
    if (from === undefined || to === undefined) throw new Error('no such point');
    const counts = counting(index - 1);
    if (from.kind === 'stage') {
      const run = runs.get(from.id);
      const multiplier =
        run?.driven === false
          ? 0
          : slowMultiplier(question, run?.conditions ?? plannedConditions.get(from.id) ?? {});
      for (let metre = 0; metre < from.stageMetres; metre += 1) {
        metresDriven += 1;
        if (counts) {
          add('stageMetres', multiplier);
          add('totalMetres', multiplier);
        }
        if (metre === from.stageMetres - 1 && counts) add('stages', multiplier);
        if (show(index - 1, from.id) === 'stop') return;
      }
    }
    for (let metre = 0; to.kind === 'control' && metre < to.roadMetres; metre += 1) {
      metresDriven += 1;
      if (counts) add('totalMetres', 1000);
      if (show(index - 1, null) === 'stop') return;
    }
    if (counts && to.leg !== from.leg) add('days', 1000);
    if (counts && chance(services.find((service) => service.inIndex === index))) add('services', 1000);
    if (show(index, null) === 'stop') return;
  }
}

function slowMultiplier({ card }: CardQuestion, conditions: { dust?: number; rough?: number }): number {
  const dust = (conditions.dust ?? 0) * ((card.conditionFactors.dust ?? 1000) - 1000);
  const rough = (conditions.rough ?? 0) * ((card.conditionFactors.rough ?? 1000) - 1000);
  const excess = card.combineConditions === 'sum' ? dust + rough : Math.max(dust, rough);
  const rounded = Math.round(1000 + excess / 1000);
  return Math.min(rounded, 3000);
}

function slowWear(question: CardQuestion, counter: Counter, toIndex: number): number {
  let thousandths = 0;
  driveSlowly(question, ({ wear, pointIndex }) => {
    // The first word of a point is the arrival there.
    if (pointIndex !== toIndex) return undefined;
    thousandths = wear[counter] ?? 0;
    return 'stop';
  });
  return Math.floor(thousandths / 1000);
}

function slowVerdict(question: CardQuestion): { verdict: Verdict; overdue: boolean } {
  const { card, services, serviceIndex, itinerary, lastDone, position } = question;
  const here = services[serviceIndex];
  if (here === undefined) throw new Error('no such service');
  const usable = (service: ServiceWindow) =>
    service.allowedSeconds >= card.leastServiceSeconds && (service.kind === 'service' || card.remoteAllowed);
  let chanceIndex = itinerary.points.length - 1;
  for (let later = services.length - 1; later > serviceIndex; later -= 1) {
    const service = services[later];
    if (service !== undefined && usable(service)) chanceIndex = service.inIndex;
  }
  let mustDo = false;
  let mayDo = false;
  let overdue = false;
  for (const { counter, every, tolerance } of card.intervals) {
    const now = slowWear(question, counter, here.inIndex);
    const then = slowWear(question, counter, chanceIndex);
    if (now > every + tolerance) overdue = true;
    if (now >= every || then > every + tolerance) mustDo = true;
    else if (then > every) mayDo = true;
  }
  const doneHere = lastDone.pointIndex === here.inIndex;
  if (card.dateLimit !== null && !doneHere) {
    if (dueAt(itinerary, here.inIndex, position) > card.dateLimit.dueAt) overdue = true;
    if (dueAt(itinerary, here.inIndex, position) >= card.dateLimit.dueAt) mustDo = true;
    if (dueAt(itinerary, chanceIndex, position) > card.dateLimit.dueAt) mustDo = true;
  }
  if (!usable(here) || doneHere) return { verdict: 'leave', overdue };
  return { verdict: mustDo ? 'doNow' : mayDo ? 'ifTime' : 'leave', overdue };
}

function coveredOnly(question: CardQuestion): CardQuestion {
  const intervals = question.card.intervals.filter((each) => COVERED.includes(each.counter));
  return { ...question, card: { ...question.card, intervals } };
}

describe('compared with driving every metre', () => {
  it('wearBetween agrees at every point', () => {
    fc.assert(
      fc.property(randomQuestion, fc.nat(), ({ question }, anywhere) => {
        const first = question.lastDone.pointIndex ?? 0;
        const toIndex = first + (anywhere % (question.itinerary.points.length - first));
        const wear = wearBetween({ ...question, toIndex });
        for (const counter of COVERED) expect(wear[counter]).toBe(slowWear(question, counter, toIndex));
      }),
      { numRuns: 150 },
    );
  });

  it('judgeCard comes to the same verdict', () => {
    fc.assert(
      fc.property(randomQuestion, (random) => {
        const question = coveredOnly(random.question);
        const { verdict, overdue } = judgeCard(question);
        expect({ verdict, overdue }).toEqual(slowVerdict(question));
      }),
      { numRuns: 300 },
    );
  });

  it('the limit is passed at the metre where it is', () => {
    fc.assert(
      fc.property(randomQuestion, (random) => {
        const question = coveredOnly(random.question);
        for (const { counter, limit, passedAt } of judgeCard(question).reasons) {
          if (counter === null || counter === 'date' || limit === null) continue;
          if ((question.lastDone.carried?.[counter] ?? 0) >= limit) {
            expect(passedAt).toBeNull();
            continue;
          }
          let found: SlowLog | null = null;
          driveSlowly(question, (log) => {
            if ((log.wear[counter] ?? 0) < limit * 1000) return undefined;
            found = { ...log, wear: { ...log.wear } };
            return 'stop';
          });
          expect(passedAt === null).toBe(found === null);
          if (passedAt === null || found === null) continue;
          const { metresDriven, wear, stage } = found as SlowLog;
          // Reached inside the metre just driven, the place is cut to its beginning.
          const inside = (wear[counter] ?? 0) > limit * 1000 && counter.endsWith('Metres');
          expect(passedAt.routeMetres).toBe(metresDriven - (inside ? 1 : 0));
          expect(passedAt.stageId).toBe(stage);
          const own = (index: number) => dueAt(question.itinerary, index, question.position);
          expect(passedAt.at).toBeGreaterThanOrEqual(own(passedAt.pointIndex));
          const next = Math.min(passedAt.pointIndex + 1, question.itinerary.points.length - 1);
          expect(passedAt.at).toBeLessThanOrEqual(own(next));
        }
      }),
      { numRuns: 200 },
    );
  });
});
