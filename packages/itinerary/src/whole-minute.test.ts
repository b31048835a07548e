import { describe, expect, it } from 'vitest';
import { stageStartAt, toWholeMinute } from './whole-minute';

describe('toWholeMinute', () => {
  it('cuts and never rounds', () => {
    expect([540, 541, 599, 600].map(toWholeMinute)).toEqual([540, 540, 540, 600]);
  });

  it('throws a sentence on what is no instant', () => {
    expect(() => toWholeMinute(Number.NaN)).toThrow('toWholeMinute: NaN is no instant');
  });
});

describe('stageStartAt', () => {
  it('adds the gap to the minute written at the control', () => {
    expect(stageStartAt({ gapSeconds: 180 }, 659)).toBe(780);
    expect(stageStartAt({ gapSeconds: 480 }, 600)).toBe(1080);
  });
});
