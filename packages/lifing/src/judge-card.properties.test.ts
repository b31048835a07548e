import type { Conditions, StageRun } from '@halfshaft/itinerary';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deepFreeze, eventOf } from './fixtures';
import { judgeCard } from './judge-card';
import type { CardVerdict, Verdict } from './model';
import type { CardQuestion } from './questions';
import { COUNTERS, piecesOf, randomQuestion } from './random-questions/fixtures';

const MORE_URGENT: Record<Verdict, number> = { leave: 0, ifTime: 1, doNow: 2 };

function urgency(question: CardQuestion): number {
  return MORE_URGENT[judgeCard(question).verdict];
}

function worse(conditions: Conditions, by: number): Conditions {
  const raised = (level = 0) => Math.min(1000, level + by);
  return { dust: raised(conditions.dust), rough: raised(conditions.rough) };
}

describe('more wear is never less urgent', () => {
  it('more carried', () => {
    fc.assert(
      fc.property(
        randomQuestion,
        fc.constantFrom(...COUNTERS),
        fc.integer({ min: 0, max: 900 }),
        (random, counter, more) => {
          const { question } = random;
          const { lastDone } = question;
          if (lastDone.pointIndex !== null) return;
          const carried = { ...lastDone.carried, [counter]: (lastDone.carried[counter] ?? 0) + more };
          const after = urgency({ ...question, lastDone: { pointIndex: null, carried } });
          expect(after).toBeGreaterThanOrEqual(urgency(question));
        },
      ),
      { numRuns: 300 },
    );
  });

  it('longer stages', () => {
    fc.assert(
      fc.property(randomQuestion, fc.integer({ min: 1, max: 300 }), ({ loops, question }, more) => {
        // By the plan's own clock a longer stage also makes the car late for a date: only the counters are compared.
        const card = { ...question.card, dateLimit: null };
        const longer = loops.map((each) => ({
          ...each,
          stages: each.stages.map((stage) => ({ ...stage, metres: stage.metres + more })),
        }));
        const after = urgency({ ...question, ...eventOf(piecesOf(longer)), card });
        expect(after).toBeGreaterThanOrEqual(urgency({ ...question, card }));
      }),
      { numRuns: 200 },
    );
  });

  it('worse conditions, driven and planned', () => {
    fc.assert(
      fc.property(randomQuestion, fc.integer({ min: 1, max: 1000 }), ({ question }, by) => {
        const runs = new Map(
          [...question.runs].map(([id, run]): [string, StageRun] => [
            id,
            { ...run, conditions: worse(run.conditions, by) },
          ]),
        );
        const plannedConditions = new Map(
          [...question.plannedConditions].map(([id, each]): [string, Conditions] => [id, worse(each, by)]),
        );
        const after = urgency({ ...question, runs, plannedConditions });
        expect(after).toBeGreaterThanOrEqual(urgency(question));
      }),
      { numRuns: 200 },
    );
  });

  it('a stage that is driven after all', () => {
    fc.assert(
      fc.property(randomQuestion, ({ question }) => {
        const runs = new Map(
          [...question.runs].map(([id, run]): [string, StageRun] => [id, { ...run, driven: true }]),
        );
        expect(urgency({ ...question, runs })).toBeGreaterThanOrEqual(urgency(question));
      }),
      { numRuns: 100 },
    );
  });
});

describe('the other way round', () => {
  it('a larger tolerance is never more urgent', () => {
    fc.assert(
      fc.property(randomQuestion, fc.integer({ min: 0, max: 2000 }), ({ question }, more) => {
        const intervals = question.card.intervals.map((each) => ({
          ...each,
          tolerance: each.tolerance + more,
        }));
        const after = judgeCard({ ...question, card: { ...question.card, intervals } });
        expect(MORE_URGENT[after.verdict]).toBeLessThanOrEqual(urgency(question));
        if (after.overdue) expect(judgeCard(question).overdue).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  it('a card done here is left here, whatever its limits', () => {
    fc.assert(
      fc.property(randomQuestion, ({ question }) => {
        const pointIndex = question.services[question.serviceIndex]?.inIndex ?? 0;
        const done = judgeCard({ ...question, lastDone: { pointIndex, carried: null } });
        expect(done).toMatchObject({ verdict: 'leave', overdue: false });
      }),
      { numRuns: 100 },
    );
  });

  it('more limits never take urgency away', () => {
    fc.assert(
      fc.property(randomQuestion, ({ question }) => {
        const fewer = { ...question.card, intervals: question.card.intervals.slice(1) };
        expect(urgency(question)).toBeGreaterThanOrEqual(urgency({ ...question, card: fewer }));
      }),
      { numRuns: 100 },
    );
  });
});

describe('the answer', () => {
  it('is the same when asked twice, and leaves what it was given as it was', () => {
    fc.assert(
      fc.property(randomQuestion, ({ question }) => {
        const before = JSON.stringify([...question.runs, ...question.plannedConditions]);
        const frozen = deepFreeze(question);
        expect(judgeCard(frozen)).toEqual(judgeCard(frozen));
        expect(JSON.stringify([...question.runs, ...question.plannedConditions])).toBe(before);
      }),
      { numRuns: 100 },
    );
  });

  it('holds whole numbers only and its verdict follows from its first reason', () => {
    const expected: Record<string, Verdict> = {
      past: 'doNow',
      wontReach: 'doNow',
      dateFalls: 'doNow',
      withinTolerance: 'ifTime',
      reaches: 'leave',
      lasts: 'leave',
      notHere: 'leave',
    };
    fc.assert(
      fc.property(randomQuestion, ({ question }) => {
        const verdict: CardVerdict = judgeCard(question);
        const here = question.services[question.serviceIndex]?.inIndex;
        const code = verdict.reasons[0]?.code ?? 'none';
        expect(verdict.verdict).toBe(question.lastDone.pointIndex === here ? 'leave' : expected[code]);
        expect(code === 'notHere').toBe(!verdict.doableHere);
        for (const { wearNow, wearAtNextChance, passedAt } of verdict.reasons) {
          const numbers = [
            wearNow ?? 0,
            wearAtNextChance ?? 0,
            passedAt?.at ?? 0,
            passedAt?.routeMetres ?? 0,
          ];
          expect(numbers.every(Number.isSafeInteger)).toBe(true);
        }
      }),
      { numRuns: 200 },
    );
  });
});
