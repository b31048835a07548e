import type { ReadingSpec } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import { readReadings, readTyped, slotsOf } from './read-typed';

const pads: ReadingSpec = {
  id: 'pads',
  name: 'Pad thickness',
  kind: 'wear',
  unit: 'mm',
  decimals: 1,
  positions: ['FL', 'FR'],
  low: 30,
  high: null,
  required: true,
};

describe('readTyped', () => {
  it.each([
    ['3.5', 1, 35],
    ['3,5', 1, 35],
    ['3', 1, 30],
    ['3.', 1, 30],
    ['12.45', 2, 1245],
    ['0', 0, 0],
    ['-0.5', 1, -5],
    [' 110 ', 0, 110],
    ['1.005', 3, 1005],
  ])('reads %j with %i decimals as %i', (text, decimals, value) => {
    expect(readTyped(text, { decimals })).toEqual({ ok: true, value });
  });

  it.each([
    ['3.55', 1, 'One decimal at most.'],
    ['3.5', 0, 'A whole number is wanted, without decimals.'],
    ['abc', 1, 'That is not a number. Type it again.'],
    ['1.2.3', 1, 'That is not a number. Type it again.'],
    ['9999999', 0, 'That is too large a number. Check it.'],
  ])('tells what is wrong with %j', (text, decimals, sentence) => {
    expect(readTyped(text, { decimals })).toEqual({ ok: false, sentence });
  });
});

describe('readReadings', () => {
  const slots = slotsOf([pads, { ...pads, id: 'volts', positions: [], required: false, decimals: 0 }]);

  it('sends what was typed and names what is required and missing', () => {
    const read = readReadings(slots, { 'pads FL': '3.5' });
    expect(read.readings).toEqual([{ readingId: 'pads', position: 'FL', value: 35 }]);
    expect(read.missing.map((slot) => slot.key)).toEqual(['pads FR']);
    expect(read.problems).toEqual({});
  });

  it('keeps a problem with the box it belongs to', () => {
    const read = readReadings(slots, { 'pads FL': '3', 'pads FR': '3', 'volts ': '12.4' });
    expect(read.problems).toEqual({ 'volts ': 'A whole number is wanted, without decimals.' });
    expect(read.missing).toEqual([]);
  });
});
