import { describe, expect, it } from 'vitest';
import { listTimeZones } from './time-zones';

describe('listTimeZones', () => {
  it('has UTC, the browser’s zones and the chosen one, each once, in order', () => {
    const zones = listTimeZones('Europe/Vienna');
    expect(zones).toContain('UTC');
    expect(zones.filter((zone) => zone === 'Europe/Vienna')).toHaveLength(1);
    expect(zones).toEqual([...zones].sort());
  });

  it('keeps a zone the browser does not list', () => {
    expect(listTimeZones('Etc/GMT+3')).toContain('Etc/GMT+3');
    expect(listTimeZones('')).not.toContain('');
  });
});
