import { expect, it } from 'vitest';
import { tapCondition } from './planned-draft';

it('goes from none to some, to bad, and back to none', () => {
  const some = tapCondition({}, 'SS3', 'night');
  expect(some).toEqual({ SS3: { night: 500 } });
  const bad = tapCondition(some, 'SS3', 'night');
  expect(bad).toEqual({ SS3: { night: 1000 } });
  expect(tapCondition(bad, 'SS3', 'night')).toEqual({});
});

it('leaves other conditions and other stages as they are', () => {
  const planned = { SS1: { dust: 1000 }, SS2: { dust: 500, water: 500 } };
  expect(tapCondition(planned, 'SS2', 'water')).toEqual({
    SS1: { dust: 1000 },
    SS2: { dust: 500, water: 1000 },
  });
  expect(planned.SS2.water).toBe(500);
});
