import { expect, it } from 'vitest';
import { fitInside } from './fit-inside';

it.each([
  [4000, 3000, 1600, 1200],
  [3000, 4000, 1200, 1600],
  [800, 600, 800, 600],
  [1600, 1600, 1600, 1600],
  [10_000, 1, 1600, 1],
])('makes %d × %d into %d × %d', (width, height, wantedWidth, wantedHeight) => {
  expect(fitInside({ width, height }, 1600)).toEqual({ width: wantedWidth, height: wantedHeight });
});
