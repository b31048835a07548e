import { readItinerary } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { itineraryOptions, itineraryText } from './event';

const SAVED_BEFORE = {
  source: 'TC/SS;Location;SS km;Road km;First car due\nTC0;Start;;;09:00\nTC1;Au;;12,4;09:20\n',
  timeZone: 'Europe/Vienna',
  startsOn: '2026-06-12',
  roadTimedFrom: 'stageFinish' as const,
  startIntervalSeconds: 120,
  defaultGapSeconds: 300,
};

describe('itineraryOptions', () => {
  it('takes a version saved without saying whom its times are for as for the first car', () => {
    const text = itineraryText.parse(SAVED_BEFORE);
    expect(itineraryOptions(text)).toEqual({
      timeZone: 'Europe/Vienna',
      startDate: '2026-06-12',
      roadTimedFrom: 'stageFinish',
      startIntervalSeconds: 120,
      defaultGapSeconds: 300,
      printedFor: 'positionOne',
    });
  });

  it('puts the first car one interval behind a car 0', () => {
    const startOf = (printedFor: 'positionOne' | 'carZero') => {
      const text = { ...itineraryText.parse(SAVED_BEFORE), printedFor };
      const { parsed } = readItinerary(text.source, itineraryOptions(text));
      return parsed.ok ? (parsed.itinerary.points[0]?.firstCarAt ?? 0) : 0;
    };
    expect(startOf('carZero') - startOf('positionOne')).toBe(SAVED_BEFORE.startIntervalSeconds);
  });

  it('lets no other word through', () => {
    expect(itineraryText.safeParse({ ...SAVED_BEFORE, printedFor: 'carOne' }).success).toBe(false);
  });
});
