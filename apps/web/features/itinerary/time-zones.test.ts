import { describe, expect, it } from 'vitest';
import { dayIn, zoneOptions } from './time-zones';

describe('zoneOptions', () => {
  it('puts the wanted zones first and each zone once', () => {
    const known = ['Europe/Vienna', 'America/New_York', 'Europe/Rome'];
    expect(zoneOptions(known, ['Europe/Rome', '', 'Pacific/Apia'])).toEqual([
      { value: 'Europe/Rome', label: 'Europe/Rome' },
      { value: 'Pacific/Apia', label: 'Pacific/Apia' },
      { value: 'America/New_York', label: 'America/New York' },
      { value: 'Europe/Vienna', label: 'Europe/Vienna' },
    ]);
    expect(known[0]).toBe('Europe/Vienna');
  });
});

describe('dayIn', () => {
  it('is the day of the zone, not of the machine', () => {
    const lateInLondon = Date.UTC(2026, 5, 12, 23, 30);
    expect(dayIn('UTC', lateInLondon)).toBe('2026-06-12');
    expect(dayIn('Europe/Vienna', lateInLondon)).toBe('2026-06-13');
  });
});
