import { describe, expect, it } from 'vitest';
import { type PadKey, pressKey } from './press-key';

const typed = (...keys: PadKey[]) => keys.reduce(pressKey, '');

describe('pressKey', () => {
  it('types a number with its decimals', () => {
    expect(typed('1', '2', '.', '5')).toBe('12.5');
  });

  it('puts a nought before a leading point, and none before a figure', () => {
    expect(typed('.', '5')).toBe('0.5');
    expect(typed('0', '7')).toBe('7');
  });

  it('takes one point only, also beside a typed comma', () => {
    expect(typed('1', '.', '.', '5')).toBe('1.5');
    expect(pressKey('1,5', '.')).toBe('1,5');
  });

  it('steps back, and stops at a length no reading needs', () => {
    expect(typed('1', 'back', 'back')).toBe('');
    expect(pressKey('12345678', '9')).toBe('12345678');
  });
});
