import { expect, it } from 'vitest';
import { readMaximum } from './read-maximum';

it.each([
  ['15', 15],
  [' 0 ', 0],
  ['720', 720],
  ['721', null],
  ['-1', null],
  ['1.5', null],
  ['', null],
  ['soon', null],
])('reads %j', (typed, minutes) => {
  expect(readMaximum(typed)).toBe(minutes);
});
