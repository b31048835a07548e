import { expect, it } from 'vitest';
import { cardOf, entryOf } from '../work/fixtures';
import { fittableCards } from './fittable-cards';

it('lists jobs with new parts first, then every other job, and no round', () => {
  const cards = [
    cardOf('own', { starterId: null }),
    cardOf('round', { kind: 'round' }),
    cardOf('shafts', { starterId: 'starter:driveshafts' }),
  ];
  expect(fittableCards(entryOf({ cards })).map(({ id }) => id)).toEqual(['shafts', 'own']);
});
