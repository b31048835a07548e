import { describe, expect, it } from 'vitest';
import { at, cardWith, DONE_BEFORE, eventOf, questionWith } from './fixtures';
import { judgeCard } from './judge-card';
import type { LastDone, VerdictReason } from './model';
import type { CardQuestion } from './questions';

const doneAt = (pointIndex: number): LastDone => ({ pointIndex, carried: null });

function judge(own: Partial<CardQuestion>) {
  return judgeCard(questionWith(own));
}

function firstReason(own: Partial<CardQuestion>): VerdictReason | undefined {
  return judge(own).reasons[0];
}

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
    expect(judge({ serviceIndex: 2, lastDone: doneAt(0) })).toMatchObject({
      verdict: 'doNow',
      overdue: true,
    });
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
    const everyStages = (every: number) =>
      cardWith({ intervals: [{ counter: 'stages', every, tolerance: 0 }] });
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
    expect(verdictAt(0, DONE_BEFORE)).toBe('doNow');
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
