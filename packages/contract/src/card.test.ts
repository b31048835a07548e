import { type Drive, fullStarterCards, type Surface, starterCards } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import { cardBody } from './card';

const DRIVES: Drive[] = ['front', 'rear', 'four'];
const SURFACES: Surface[] = ['gravel', 'tarmac', 'snow'];
const CARS = DRIVES.flatMap((drive) => SURFACES.map((surface) => ({ drive, surface })));

describe('a card as a person edits it', () => {
  it.each(CARS)('takes every starter card of $drive drive on $surface, and changes none', (car) => {
    const cards = [...starterCards(car.drive, car.surface), ...fullStarterCards(car.drive, car.surface)];
    expect(cards.length).toBeGreaterThan(50);
    for (const { id, ...body } of cards) {
      const read = cardBody.safeParse(body);
      expect(read.error?.issues ?? [], id).toEqual([]);
      expect(read.data, id).toEqual(body);
    }
  });

  it('refuses a card with no limit', () => {
    const [first] = starterCards('front', 'gravel');
    const read = cardBody.safeParse({ ...first, intervals: [], dateLimit: null });
    expect(read.error?.issues.map((issue) => issue.path.join('.'))).toEqual(['intervals']);
  });
});
