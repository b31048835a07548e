import type { ReadingReason, ReadingSpec, Series } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import { expectationInWords, trendInWords } from './trend-in-words';

const PADS: ReadingSpec = {
  id: 'pads',
  name: 'Pad thickness',
  kind: 'wear',
  unit: 'mm',
  decimals: 1,
  positions: ['FL'],
  low: 30,
  high: null,
  required: false,
};
const FREE: ReadingSpec = { ...PADS, kind: 'passFail', unit: '', decimals: 0, low: 1 };
const name = (id: string) => `Service ${id}`;

/** Read at A, B, C …; `parts` says of which part, and `part` which is on now. */
function series(values: number[], parts: number[] = values.map(() => 0), part = parts.at(-1) ?? 0): Series {
  const readings = values.map((value, index) => ({
    value,
    serviceId: 'ABCDE'[index] ?? '',
    pointIndex: index * 4,
    part: parts[index] ?? 0,
    since: null,
    compound: '',
  }));
  return { position: 'FL', readings, part, since: null, compound: '' };
}

describe('trendInWords', () => {
  it.each<[string, ReadingSpec, Series]>([
    ['not read yet', PADS, series([])],
    ['first reading', PADS, series([60])],
    ['0.9 mm less than at Service A', PADS, series([50, 41])],
    ['0.2 mm more than at Service B', PADS, series([50, 41, 43])],
    ['as at Service A', PADS, series([50, 50])],
    ['new part, not read yet', PADS, series([50, 41], [0, 0], 1)],
    ['first reading of the new part', PADS, series([41, 100], [0, 1])],
    ['0.7 mm less than at Service B', PADS, series([41, 100, 93], [0, 1, 1])],
    ['passed at Service A', FREE, series([1, 0])],
  ])('%s', (words, spec, place) => {
    expect(trendInWords(spec, place, name)).toBe(words);
  });
});

describe('expectationInWords', () => {
  const reason = (own: Partial<ReadingReason>): ReadingReason => ({
    code: 'holds',
    readingId: 'pads',
    position: 'FL',
    value: 41,
    limit: 30,
    lossAhead: 9,
    expected: 32,
    nextChance: 'C',
    words: '',
    ...own,
  });
  it.each<[string, ReadingSpec, Partial<ReadingReason>]>([
    ['3.2 mm at Service C: lasts', PADS, {}],
    ["2.9 mm at the finish: won't last: do now", PADS, { code: 'wearsOut', expected: 29, nextChance: null }],
    ['past its limit: do now', PADS, { code: 'outOfOrder', expected: null }],
    ['out of order: do now', FREE, { code: 'outOfOrder', expected: null }],
    ['not known yet how fast it wears', PADS, { code: 'notKnown', expected: null }],
  ])('%s', (words, spec, own) => {
    expect(expectationInWords(spec, reason(own), name)).toBe(words);
  });
});
