import { describe, expect, it } from 'vitest';
import { hotMillibarOf } from './hot-pressure';

describe('hotMillibarOf', () => {
  it('follows the gas law: 2.0 bar at 20 °C is 2.41 bar at 60 °C', () => {
    // Worked by hand from Gay-Lussac's law: (2.0 + 1.01325) × 333.15 / 293.15 − 1.01325 = 2.4111 bar.
    expect(hotMillibarOf({ coldMillibar: 2000, coldCelsius: 20, hotCelsius: 60 })).toBe(2411);
  });

  it('rises by about 0.1 bar for ten degrees near 2 bar, and falls the same way', () => {
    const up = hotMillibarOf({ coldMillibar: 2000, coldCelsius: 20, hotCelsius: 30 });
    expect(up).toBe(2103);
    expect(hotMillibarOf({ coldMillibar: 2103, coldCelsius: 30, hotCelsius: 20 })).toBe(2000);
    expect(hotMillibarOf({ coldMillibar: 1900, coldCelsius: 15, hotCelsius: 15 })).toBe(1900);
  });

  it('says nothing of temperatures no tyre has', () => {
    expect(hotMillibarOf({ coldMillibar: 2000, coldCelsius: -273.15, hotCelsius: 60 })).toBeNull();
    expect(hotMillibarOf({ coldMillibar: 2000, coldCelsius: 20, hotCelsius: 900 })).toBeNull();
    expect(hotMillibarOf({ coldMillibar: 2000, coldCelsius: Number.NaN, hotCelsius: 60 })).toBeNull();
  });
});
