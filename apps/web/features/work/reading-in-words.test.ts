import type { ReadingSpec } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import { bandInWords, limitInWords, readingsInWords, valueInWords } from './reading-in-words';

const torque: ReadingSpec = {
  id: 'torque',
  name: 'Torque',
  kind: 'setValue',
  unit: 'Nm',
  decimals: 0,
  positions: ['FL', 'FR'],
  low: 90,
  high: 150,
  required: false,
};
const pads: ReadingSpec = {
  ...torque,
  id: 'pads',
  name: 'Pads',
  unit: 'mm',
  decimals: 1,
  low: 30,
  high: null,
};

describe('readings in words', () => {
  it('shows whole-number units as people read them', () => {
    expect(valueInWords(pads, 35)).toBe('3.5 mm');
    expect(valueInWords({ unit: '', decimals: 2 }, -5)).toBe('-0.05');
  });

  it('says what is out of order, the limits themselves being in order', () => {
    expect(limitInWords(torque, 89)).toBe('below 90 Nm');
    expect(limitInWords(torque, 90)).toBeNull();
    expect(limitInWords(torque, 150)).toBeNull();
    expect(limitInWords(torque, 151)).toBe('above 150 Nm');
    expect(limitInWords({ ...torque, kind: 'passFail' }, 0)).toBe('failed');
    expect(limitInWords({ ...torque, kind: 'passFail' }, 1)).toBeNull();
  });

  it('says what is allowed', () => {
    expect([torque, pads, { ...pads, low: null, high: 50 }, { ...pads, low: null }].map(bandInWords)).toEqual(
      ['90 to 150 Nm', 'at least 3.0 mm', 'at most 5.0 mm', ''],
    );
  });

  it('tells the last value of each place', () => {
    const readings = [
      { readingId: 'torque', position: 'FL', value: 80 },
      { readingId: 'torque', position: 'FL', value: 110 },
      { readingId: 'pads', position: 'FR', value: 31 },
    ];
    expect(readingsInWords([torque, pads], readings)).toBe('Torque FL 110 Nm; Pads FR 3.1 mm');
  });
});
