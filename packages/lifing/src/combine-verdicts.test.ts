import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combineVerdicts } from './combine-verdicts';
import { combinedReasonInWords } from './combined-reason-in-words';
import { reasonWith } from './fixtures';
import { judgeService } from './judge-service';
import type { CardVerdict, VerdictReason } from './model';
import { card, randomQuestion } from './random-questions/fixtures';
import type { ReadingReason, ReadingVerdict } from './readings/model';
import type { TriggerReason, TriggerVerdict } from './triggers/model';

function interval(cardId: string, code: VerdictReason['code'], own: Partial<CardVerdict> = {}): CardVerdict {
  const verdict = code === 'withinTolerance' ? 'ifTime' : 'doNow';
  return {
    cardId,
    verdict: code === 'reaches' || code === 'lasts' ? 'leave' : verdict,
    doableHere: true,
    overdue: false,
    reasons: [reasonWith({ code })],
    ...own,
  };
}

function trigger(
  cardId: string,
  code: TriggerReason['code'],
  own: Partial<TriggerVerdict> = {},
): TriggerVerdict {
  const words = `because of ${code}`;
  const reason = { code, triggerId: 't', pointIndex: 3, stageId: null, nextChance: null, words };
  return { cardId, verdict: 'doNow', doableHere: true, overdue: false, reasons: [reason], ...own };
}

function reading(cardId: string, code: ReadingReason['code']): ReadingVerdict {
  const verdict = code === 'holds' ? 'leave' : 'doNow';
  const reason = {
    code,
    readingId: 'pads',
    position: 'FL',
    value: 62,
    limit: 30,
    lossAhead: 19,
    expected: 43,
    nextChance: null,
    words: 'pads FL',
  };
  return { cardId, verdict, doableHere: true, overdue: false, reasons: [reason] };
}

const codesOf = (verdict: ReturnType<typeof combineVerdicts>[number] | undefined) =>
  verdict?.reasons.map(({ reason }) => reason.code);

describe('combineVerdicts', () => {
  it('the worst wins: a trigger makes due what its interval would leave', () => {
    const [verdict] = combineVerdicts({
      intervals: [interval('nuts', 'reaches')],
      triggers: [trigger('nuts', 'jobDone')],
    });
    expect(verdict).toMatchObject({ cardId: 'nuts', verdict: 'doNow', doableHere: true });
    expect(codesOf(verdict)).toEqual(['jobDone', 'reaches']);
  });

  it('lists the reasons of all sources, the most pressing first', () => {
    const [verdict] = combineVerdicts({
      intervals: [interval('pads', 'withinTolerance')],
      triggers: [trigger('pads', 'incident')],
      readings: [reading('pads', 'wearsOut')],
    });
    expect(codesOf(verdict)).toEqual(['incident', 'wearsOut', 'withinTolerance']);
    expect(verdict?.reasons.map((each) => each.source)).toEqual(['trigger', 'reading', 'interval']);
  });

  it('what a card that is left says comes after what makes it due', () => {
    // Done here: a limit that even the fresh work will not keep still stands, but asks for nothing.
    const [verdict] = combineVerdicts({
      intervals: [interval('pads', 'wontReach', { verdict: 'leave' })],
      triggers: [trigger('pads', 'newlyFitted')],
    });
    expect(codesOf(verdict)).toEqual(['newlyFitted', 'wontReach']);
  });

  it('says once and first that a card cannot be done here, and then leaves it', () => {
    const [verdict] = combineVerdicts({
      intervals: [
        interval('bleed', 'lasts', {
          doableHere: false,
          reasons: [reasonWith({ code: 'notHere' }), reasonWith({ code: 'lasts' })],
        }),
      ],
      triggers: [
        trigger('bleed', 'incident', {
          verdict: 'leave',
          doableHere: false,
          overdue: true,
          reasons: [...trigger('bleed', 'notHere').reasons, ...trigger('bleed', 'incident').reasons],
        }),
      ],
    });
    expect(verdict).toMatchObject({ verdict: 'leave', doableHere: false, overdue: true });
    expect(codesOf(verdict)).toEqual(['notHere', 'incident', 'lasts']);
  });

  it('puts the cards in order: do now, overdue first, what happened before what is to come', () => {
    const order = combineVerdicts({
      intervals: [
        interval('left', 'reaches'),
        interval('maybe', 'withinTolerance'),
        interval('wont', 'wontReach'),
        interval('past', 'past'),
      ],
      triggers: [
        trigger('called', 'incident'),
        trigger('ahead', 'conditionAhead'),
        trigger('late', 'conditionOver', { overdue: true }),
      ],
    }).map((each) => each.cardId);
    expect(order).toEqual(['late', 'called', 'past', 'ahead', 'wont', 'maybe', 'left']);
  });

  it('is what judgeService says when nothing else says anything', () => {
    fc.assert(
      fc.property(randomQuestion, fc.array(card, { maxLength: 6 }), (random, drawn) => {
        const cards = drawn.map((each, index) => ({ ...each, id: `card-${index}` }));
        const { card: _one, lastDone, ...service } = random.question;
        const history = new Map(cards.map((each) => [each.id, lastDone]));
        const intervals = judgeService({ ...service, cards, lastDone: history });
        const combined = combineVerdicts({ intervals }).map((verdict) => ({
          ...verdict,
          reasons: verdict.reasons.map((each) => each.reason),
        }));
        expect(combined).toEqual(intervals);
      }),
      { numRuns: 200 },
    );
  });

  it('has nothing to say of nothing', () => {
    expect(combineVerdicts({ intervals: [] })).toEqual([]);
  });
});

describe('combinedReasonInWords', () => {
  const names = { clock: () => '14:32', serviceName: (id: string) => `Service ${id}` };
  it('puts a limit into words as ever, and hands on the words of the others', () => {
    const limit = { source: 'interval', reason: reasonWith({ code: 'lasts', counter: null }) } as const;
    expect(combinedReasonInWords(limit, names)).toBe('has no limit of its own');
    const [verdict] = combineVerdicts({ intervals: [], triggers: [trigger('a', 'incident')] });
    const first = verdict?.reasons[0];
    expect(first && combinedReasonInWords(first, names)).toBe('because of incident');
  });
});
