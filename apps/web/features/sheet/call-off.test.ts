import { expect, it } from 'vitest';
import { callOffSteps } from './call-off';

it('calls the last steps before the out-time, and none before the car is in', () => {
  expect(callOffSteps(0, 1200).map(({ at }) => at)).toEqual([900, 1020]);
  expect(callOffSteps(0, 240).map(({ at }) => at)).toEqual([60]);
});
