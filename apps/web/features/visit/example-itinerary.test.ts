import { formatClock, parseItineraryTable, servicesOf } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_ITINERARY } from './example-itinerary';

describe('EXAMPLE_ITINERARY', () => {
  it.each(['Europe/Vienna', 'America/St_Johns', 'UTC'])('is read without a problem in %s', (timeZone) => {
    const parsed = parseItineraryTable(EXAMPLE_ITINERARY, {
      timeZone,
      startDate: '2026-06-13',
      roadTimedFrom: 'stageStart',
    });
    expect(parsed).toMatchObject({ ok: true, warnings: [] });
    if (!parsed.ok) return;
    expect(new Set(parsed.itinerary.points.map((point) => point.leg))).toEqual(new Set([1, 2]));
    expect(
      servicesOf(parsed.itinerary).map(({ id, kind, allowedSeconds, inIndex }) => [
        id,
        kind,
        allowedSeconds / 60,
        formatClock(parsed.itinerary.points[inIndex]?.firstCarAt ?? 0, timeZone),
      ]),
    ).toEqual([
      ['A', 'service', 30, '10:52'],
      ['B', 'service', 45, '13:59'],
      ['C', 'service', 15, '07:30'],
      ['D', 'remoteService', 15, '08:56'],
    ]);
  });
});
