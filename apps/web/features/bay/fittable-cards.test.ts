import { expect, it } from 'vitest';
import { cardOf, entryOf } from '../work/fixtures';
import { fittableCards } from './fittable-cards';

it('lists jobs that fit a new part first, a team’s own among them, then every other job, and no round', () => {
  const cards = [
    cardOf('check'),
    cardOf('round', { kind: 'round' }),
    cardOf('shafts', { starterId: 'starter:driveshafts', fitsNewPart: true }),
    cardOf('own', { fitsNewPart: true }),
  ];
  expect(fittableCards(entryOf({ cards })).map(({ id }) => id)).toEqual(['shafts', 'own', 'check']);
});
