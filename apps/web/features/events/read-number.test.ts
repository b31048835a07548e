import { describe, expect, it } from 'vitest';
import { readNumber, readScaled } from './read-number';

describe('readNumber', () => {
  it.each([
    ['60', 60],
    [' 2,5 ', 2.5],
    ['2.5', 2.5],
    [',5', 0.5],
    ['-3', -3],
    ['−3', -3],
    ['7.', 7],
  ])('reads %j as %d', (text, number) => {
    expect(readNumber(text)).toBe(number);
  });

  it.each(['', ' ', 'ten', '1.2.3', '1e3', '0x10', '12 km', '.', '-'])('takes %j for no number', (text) => {
    expect(readNumber(text)).toBeNaN();
  });
});

describe('readScaled', () => {
  it('gives whole numbers where binary fractions would be a hair off', () => {
    expect(1.1 * 100).not.toBe(110);
    expect(readScaled('1.1', 100)).toBe(110);
    expect(readScaled('0,07', 1000)).toBe(70);
  });

  it('keeps a fraction that was typed', () => {
    expect(readScaled('3.55', 10)).toBeCloseTo(35.5);
  });

  it('makes no minus zero', () => {
    expect(Object.is(readScaled('-0', 10), 0)).toBe(true);
  });
});
