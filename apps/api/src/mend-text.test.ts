import { describe, expect, it } from 'vitest';
import { mendText } from './mend-text';

describe('mendText', () => {
  it('leaves out NUL and marks half a character', () => {
    expect(mendText('oil\0 leak')).toBe('oil leak');
    expect(mendText('😀'.slice(0, 1))).toBe('\uFFFD');
    expect(mendText(`a${'😀'.slice(1)}b`)).toBe('a\uFFFDb');
  });

  it('leaves every whole character alone', () => {
    const words = 'Parc fermé – 20′ 😀👩🏽‍🔧\n\t"ok"';
    expect(mendText(words)).toBe(words);
  });

  it('reaches into lists and objects, and touches nothing else', () => {
    const value = { a: ['x\0', { b: 'y\0' }], c: 1.5, d: null, e: true, f: undefined };
    expect(mendText(value)).toEqual({ a: ['x', { b: 'y' }], c: 1.5, d: null, e: true, f: undefined });
    expect(value.a[0]).toBe('x\0');
  });
});
