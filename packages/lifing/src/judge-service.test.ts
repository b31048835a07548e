import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardWith, deepFreeze, threeLoops } from './fixtures';
import { judgeCard } from './judge-card';
import { judgeService } from './judge-service';
import type { Interval, LastDone, LifingCard } from './model';
import type { CardsQuestion } from './questions';
import { card, randomQuestion } from './random-questions/fixtures';

function stageKm(id: string, every: number, tolerance = 0, own: Partial<LifingCard> = {}): LifingCard {
  const interval: Interval = { counter: 'stageMetres', every: every * 1000, tolerance: tolerance * 1000 };
  return cardWith({ ...own, id, intervals: [interval] });
}

/** At Service B of the three loops: 24 stage km driven, 48 at Service C, 72 at the finish. */
function atServiceB(cards: LifingCard[], lastDone: [string, LastDone][] = []): CardsQuestion {
  return {
    ...threeLoops(),
    runs: new Map(),
    plannedConditions: new Map(),
    serviceIndex: 1,
    position: 1,
    cards,
    lastDone: new Map(lastDone),
  };
}

describe('judgeService', () => {
  it('puts do now first by urgency, then if time, then leave', () => {
    const cards = [
      stageKm('lasts', 100),
      stageKm('reaches', 60),
      stageKm('within-late', 46, 10),
      stageKm('within-early', 44, 10),
      stageKm('wont-late', 40),
      stageKm('wont-early', 30),
      stageKm('past', 20, 10),
      stageKm('overdue', 22),
      stageKm('not-here', 10, 0, { remoteAllowed: false, leastServiceSeconds: 9999 }),
    ];
    expect(judgeService(atServiceB(cards)).map((verdict) => verdict.cardId)).toEqual([
      'overdue',
      'past',
      'wont-early',
      'wont-late',
      'within-early',
      'within-late',
      // overdue but not doable here: first among what is left
      'not-here',
      'reaches',
      'lasts',
    ]);
  });

  it('puts what was past before the event before what was passed in it', () => {
    const cards = [stageKm('passed-on-ss1', 10), stageKm('worn-before', 20)];
    const worn: LastDone = { pointIndex: null, carried: { stageMetres: 21_000 } };
    const verdicts = judgeService(atServiceB(cards, [['worn-before', worn]]));
    expect(verdicts.map((verdict) => verdict.cardId)).toEqual(['worn-before', 'passed-on-ss1']);
  });

  it('keeps the given order among equals', () => {
    const ids = ['c', 'a', 'b'];
    const verdicts = judgeService(atServiceB(ids.map((id) => stageKm(id, 30))));
    expect(verdicts.map((verdict) => verdict.cardId)).toEqual(ids);
  });

  it('takes a card without history as done just before the event', () => {
    const verdicts = judgeService(atServiceB([stageKm('fresh', 100)]));
    expect(verdicts[0]?.reasons[0]?.wearNow).toBe(24_000);
  });

  it('says of each card what judgeCard says, and a done job changes only its own verdict', () => {
    fc.assert(
      fc.property(
        randomQuestion,
        fc.array(card, { minLength: 1, maxLength: 6 }),
        fc.nat(),
        (random, drawn, pick) => {
          const cards = drawn.map((each, index) => ({ ...each, id: `card-${index}` }));
          const done = `card-${pick % cards.length}`;
          const { card: _one, lastDone, ...service } = random.question;
          const history = new Map(cards.map((each) => [each.id, lastDone]));
          const question = deepFreeze({ ...service, cards, lastDone: history });
          const before = judgeService(question);

          expect(before).toHaveLength(cards.length);
          for (const each of cards) {
            const alone = judgeCard({ ...service, card: each, lastDone });
            expect(before.find((verdict) => verdict.cardId === each.id)).toEqual(alone);
          }

          const pointIndex = service.services[service.serviceIndex]?.inIndex ?? 0;
          const after = judgeService({
            ...question,
            lastDone: new Map([...history, [done, { pointIndex, carried: null }]]),
          });
          const others = (verdicts: typeof before) => verdicts.filter((verdict) => verdict.cardId !== done);
          expect(others(after)).toEqual(others(before));
          expect(after.find((verdict) => verdict.cardId === done)?.verdict).toBe('leave');
        },
      ),
      { numRuns: 100 },
    );
  });

  it('never puts a less pressing verdict before a more pressing one', () => {
    const order = ['doNow', 'ifTime', 'leave'];
    fc.assert(
      fc.property(randomQuestion, fc.array(card, { maxLength: 8 }), ({ question }, cards) => {
        const history = new Map([['card', question.lastDone]]);
        const ranks = judgeService({ ...question, cards, lastDone: history }).map((each) =>
          order.indexOf(each.verdict),
        );
        expect(ranks).toEqual([...ranks].sort());
      }),
      { numRuns: 100 },
    );
  });
});
