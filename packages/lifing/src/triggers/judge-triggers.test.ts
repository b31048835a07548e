import { describe, expect, it } from 'vitest';
import { cardWith } from '../fixtures';
import { CARDS, done, incident, POINTS, repair, triggersQuestion } from './fixtures';
import { judgeTriggers } from './judge-triggers';

describe('judgeTriggers', () => {
  it('gives several reasons to one card, in the order of the triggers', () => {
    const question = triggersQuestion('C', {
      facts: [incident('off', POINTS.SS4), repair('look', POINTS.SS3)],
    });
    const codes = judgeTriggers(question).map((each) => each.reasons.map((reason) => reason.code));
    expect(codes).toEqual([['incident', 'temporaryRepair']]);
  });

  it('names the stage ahead and the next chance in its reason', () => {
    const [verdict] = judgeTriggers(triggersQuestion('C', { dark: ['SS5'] }));
    expect(verdict?.reasons[0]).toMatchObject({
      triggerId: 'dark',
      pointIndex: POINTS.SS5,
      stageId: 'SS5',
      nextChance: 'D',
    });
  });

  it('names services as it is told to', () => {
    const serviceName = (id: string) => `Bay ${id}`;
    const question = { ...triggersQuestion('C', { dark: ['SS5'] }), serviceName };
    expect(judgeTriggers(question)[0]?.reasons[0]?.words).toBe('dark stage SS5 comes before Bay D');
  });

  it('says nothing of a card the car does not have, or when there are no triggers', () => {
    const question = triggersQuestion('B', {
      facts: [incident('off', POINTS.SS1), done('gone', POINTS.SS1)],
    });
    expect(judgeTriggers({ ...question, cards: CARDS.filter((card) => card.id !== 'look') })).toEqual([]);
    expect(judgeTriggers({ ...question, triggers: [] })).toEqual([]);
  });

  it('looks at further cards of a temporary repair when the trigger names them', () => {
    const question = triggersQuestion('C', { facts: [repair('under', POINTS.SS4)] });
    const triggers = [{ kind: 'temporaryRepair' as const, id: 'repair', cardIds: ['look'] }];
    const cards = [...CARDS, cardWith({ id: 'other' })];
    const called = judgeTriggers({ ...question, triggers, cards }).map((each) => each.cardId);
    expect(called).toEqual(['look', 'under']);
  });

  it('refuses a service or a point that does not exist', () => {
    const question = triggersQuestion('A', {});
    expect(() => judgeTriggers({ ...question, serviceIndex: 9 })).toThrow('no service at index 9');
    const facts = [incident('off', 99)];
    expect(() => judgeTriggers({ ...question, facts })).toThrow('no point 99');
  });
});
