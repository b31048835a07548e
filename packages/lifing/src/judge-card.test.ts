import { describe, expect, it } from 'vitest';
import { at, cardWith, EIGHT_OCLOCK, eventOf, questionWith } from './fixtures';
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
    expect(judge({ card: dated(EIGHT_OCLOCK) })).toMatchObject({
      verdict: 'doNow',
      overdue: false,
      reasons: [{ code: 'past' }],
    });
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
        {
          code: 'dateFalls',
          passedAt: { stageId: 'SS1', pointIndex: 3, routeMetres: 18_000, at: at(8, 39) },
        },
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

  it('a limit that is full exactly on arrival is passed at the control, not on the road before it', () => {
    const card = cardWith({ intervals: [{ counter: 'totalMetres', every: 54_000, tolerance: 0 }] });
    expect(firstReason({ card })).toMatchObject({
      code: 'reaches',
      passedAt: { stageId: null, pointIndex: 6, routeMetres: 54_000, at: at(9, 14) },
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
