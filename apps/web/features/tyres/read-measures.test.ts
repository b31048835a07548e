import { describe, expect, it } from 'vitest';
import { NOTHING_TYPED, readMeasures } from './read-measures';

describe('readMeasures', () => {
  it('reads point and comma into tenths of a millimetre and millibar; empty says nothing', () => {
    expect(readMeasures({ treadTenths: '6,2', coldMillibar: '1.95', hotMillibar: ' ' })).toEqual({
      values: { treadTenths: 62, coldMillibar: 1950, hotMillibar: null },
      problems: {},
    });
    expect(readMeasures(NOTHING_TYPED).values.treadTenths).toBeNull();
    expect(readMeasures({ ...NOTHING_TYPED, treadTenths: '0' }).values.treadTenths).toBe(0);
  });

  it('says what is wrong: words, too fine, below nothing, a pressure typed in psi', () => {
    const { values, problems } = readMeasures({ treadTenths: '6.25', coldMillibar: '28', hotMillibar: '-1' });
    expect(values).toEqual({ treadTenths: null, coldMillibar: null, hotMillibar: null });
    expect(problems).toEqual({
      treadTenths: 'One decimal at most.',
      coldMillibar: 'A value from 0 to 6 bar is wanted. Check it.',
      hotMillibar: 'A value from 0 to 6 bar is wanted. Check it.',
    });
    expect(readMeasures({ ...NOTHING_TYPED, treadTenths: 'bald' }).problems.treadTenths).toMatch(
      /not a number/,
    );
  });
});
