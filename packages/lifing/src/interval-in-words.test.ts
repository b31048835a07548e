import { describe, expect, it } from 'vitest';
import { amountInWords } from './amount-in-words';
import { intervalInWords } from './interval-in-words';
import type { Counter } from './model';

describe('intervalInWords', () => {
  it.each<[Counter, number, string]>([
    ['stageMetres', 60_000, 'every 60 stage km'],
    ['stageMetres', 1_000, 'every stage km'],
    ['stageMetres', 12_500, 'every 12.5 stage km'],
    ['totalMetres', 300_000, 'every 300 km'],
    ['engineSeconds', 36_000, 'every 10 engine hours'],
    ['engineSeconds', 3_600, 'every engine hour'],
    ['engineSeconds', 5_400, 'every 1.5 engine hours'],
    ['engineSeconds', 5_460, 'every 91 engine minutes'],
    ['engineSeconds', 61, 'every 61 engine seconds'],
    ['services', 1, 'every service'],
    ['services', 2, 'every 2 services'],
    ['stages', 4, 'every 4 stages'],
    ['days', 1, 'every day'],
    ['events', 10, 'every 10 events'],
  ])('%s %i', (counter, every, words) => {
    expect(intervalInWords({ counter, every })).toBe(words);
  });
});

describe('amountInWords', () => {
  it('says one and several', () => {
    expect(amountInWords('services', 1)).toBe('1 service');
    expect(amountInWords('services', 0)).toBe('0 services');
    expect(amountInWords('stageMetres', 1_001)).toBe('1.001 stage km');
  });
});
