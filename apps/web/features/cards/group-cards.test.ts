import type { JobCard } from '@halfshaft/lifing';
import { starterCards } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import { dueInWords, workInWords } from './card-words';
import { groupCards } from './group-cards';
import { limitInWords } from './limit-in-words';

const cards = starterCards('four', 'gravel');
const [first] = cards;

function cardWith(own: Partial<JobCard>): JobCard {
  if (first === undefined) throw new Error('there are no starter cards');
  return { ...first, kind: 'job', intervals: [], ...own };
}

describe('groupCards', () => {
  it('puts every card into one group', () => {
    const grouped = groupCards(cards).flatMap((group) => group.cards);
    expect(new Set(grouped)).toEqual(new Set(cards));
    expect(grouped).toHaveLength(cards.length);
  });

  it('sorts by how a card is asked for', () => {
    const groups = groupCards([
      cardWith({ id: 'days', intervals: [{ counter: 'days', every: 1, tolerance: 0 }] }),
      cardWith({ id: 'km', intervals: [{ counter: 'totalMetres', every: 500_000, tolerance: 0 }] }),
      cardWith({ id: 'every', intervals: [{ counter: 'services', every: 1, tolerance: 0 }] }),
      cardWith({ id: 'second', intervals: [{ counter: 'services', every: 2, tolerance: 0 }] }),
      cardWith({ id: 'round', kind: 'round', intervals: [{ counter: 'services', every: 1, tolerance: 0 }] }),
    ]);
    expect(groups.map(({ title, cards: own }) => [title, ...own.map((card) => card.id)])).toEqual([
      ['Rounds', 'round'],
      ['Every service', 'every'],
      ['By distance', 'km'],
      ['Other', 'days', 'second'],
    ]);
  });

  it('leaves out empty groups', () => {
    expect(groupCards([])).toEqual([]);
  });
});

describe('a card in words', () => {
  it('tells all its limits', () => {
    const words = dueInWords({
      intervals: [
        { counter: 'stageMetres', every: 60_000, tolerance: 0 },
        { counter: 'engineSeconds', every: 9000, tolerance: 0 },
      ],
      dateLimit: { dueAt: Date.UTC(2027, 2, 31) / 1000 },
      readings: [],
    });
    expect(words).toBe('every 60 stage km or every 2.5 engine hours or by 2027-03-31');
  });

  it('says that there is no limit, and what calls for the card then', () => {
    const none = { intervals: [], dateLimit: null };
    const spec = {
      id: 'r',
      name: 'Gap',
      unit: 'mm',
      decimals: 1,
      positions: [],
      high: null,
      required: false,
    };
    const reading = { ...spec, kind: 'wear' as const, low: 30 };
    expect(dueInWords({ ...none, readings: [] })).toBe('no limit: on request only');
    expect(dueInWords({ ...none, readings: [reading] })).toBe('no limit: on request or by reading');
    expect(dueInWords({ ...none, readings: [{ ...reading, low: null }] })).toBe('no limit: on request only');
    expect(dueInWords({ ...none, readings: [{ ...reading, kind: 'hint' }] })).toBe(
      'no limit: on request only',
    );
  });

  it('tells a limit that is still being typed', () => {
    expect(limitInWords({ counter: 'services', every: '1' })).toBe('1 service');
    expect(limitInWords({ counter: 'stageMetres', every: '62,5' })).toBe('62.5 stage km');
    expect(limitInWords({ counter: 'stageMetres', every: '' })).toBe('… stage km');
  });

  it('tells minutes and people', () => {
    expect(workInWords({ seconds: 240, people: 1 })).toBe('4 min × 1 person');
    expect(workInWords({ seconds: 390, people: 2 })).toBe('6.5 min × 2 people');
  });
});
