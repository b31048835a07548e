import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from './fixtures';
import { itineraryToTable } from './itinerary-to-table';
import type { Itinerary, Point } from './model';
import { servicesOf } from './services-of';

describe('servicesOf', () => {
  it('letters service and remote service in driving order over the whole event', () => {
    const services = servicesOf(goodItinerary(TWO_LEGS));
    expect(
      services.map((one) => [
        one.id,
        one.kind,
        one.inControl,
        one.outControl,
        one.leg,
        one.section,
        one.allowedSeconds,
      ]),
    ).toEqual([
      ['A', 'remoteService', 'TC2A', 'TC2B', 1, 1, 900],
      ['B', 'service', 'TC4B', 'TC4C', 1, 2, 2700],
      ['C', 'service', 'TC4E', 'TC4F', 2, 3, 900],
      ['D', 'service', 'TC6D', 'TC6E', 2, 4, 1800],
    ]);
  });

  it('points at its controls', () => {
    const itinerary = goodItinerary(TWO_LEGS);
    for (const service of servicesOf(itinerary)) {
      expect(itinerary.points[service.inIndex]?.id).toBe(service.inControl);
      expect(itinerary.points[service.outIndex]?.id).toBe(service.outControl);
      expect(service.name).toBe(itinerary.points[service.inIndex]?.name);
    }
  });

  it('goes on with AA after Z', () => {
    const points = Array.from({ length: 54 }, (_, order): Point => {
      const roles = order % 2 === 0 ? ['serviceIn' as const] : ['serviceOut' as const];
      return {
        kind: 'control',
        id: `TC${order}`,
        name: 'x',
        roles,
        leg: 1,
        section: 1,
        firstCarAt: order * 600,
        roadMetres: 0,
        allowedSeconds: 600,
      };
    });
    const itinerary: Itinerary = { timeZone: 'UTC', roadTimedFrom: 'stageStart', points, startBlocks: [] };
    expect(
      servicesOf(itinerary)
        .map((one) => one.id)
        .slice(24),
    ).toEqual(['Y', 'Z', 'AA']);
  });

  it('is the same after a round through a table', () => {
    const itinerary = goodItinerary(TWO_LEGS);
    expect(servicesOf(goodItinerary(itineraryToTable(itinerary)))).toEqual(servicesOf(itinerary));
  });
});
