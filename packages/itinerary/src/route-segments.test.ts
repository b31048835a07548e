import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyItinerary, goodItinerary, TWO_LEGS } from './fixtures';
import { segmentsBetween } from './route-segments';
import { servicesOf } from './services-of';

const twoLegs = goodItinerary(TWO_LEGS);
const indexOf = (id: string) => twoLegs.points.findIndex((point) => point.id === id);
const shapes = (from: string, to: string) =>
  segmentsBetween(twoLegs, indexOf(from), indexOf(to)).map((one) => [
    one.kind,
    one.stageId,
    one.metres,
    one.engineOn,
  ]);

describe('segmentsBetween', () => {
  it('puts a stage between its point and the next, then the road', () => {
    expect(shapes('TC1', 'TC2')).toEqual([
      ['road', null, 0, true],
      ['stage', 'SS1', 9800, true],
      ['road', null, 11_200, true],
    ]);
    // 9.8 km at 80 km/h is 441 s.
    const stage = segmentsBetween(twoLegs, indexOf('SS1'), indexOf('TC2'))[0];
    expect(stage && stage.endsAt - stage.startsAt).toBe(441);
  });

  it('stands still with the engine off in remote service, service, regroup and parc fermé, and through the night', () => {
    expect(shapes('TC2A', 'TC2B')).toEqual([['halt', null, 0, false]]);
    expect(shapes('TC4A', 'TC4C')).toEqual([
      ['halt', null, 0, false],
      ['halt', null, 0, false],
    ]);
    expect(shapes('TC4D', 'TC4E')).toEqual([['halt', null, 0, false]]);
    expect(shapes('TC6C', 'TC6E')).toEqual([
      ['halt', null, 0, true],
      ['halt', null, 0, false],
    ]);
  });

  it('keeps the engine off between legs, parc fermé or not', () => {
    const head = 'TC/SS;Location;SS km;Road km;First car due';
    const nights = goodItinerary([head, 'TC0;Au;;0;18:00', 'Leg 2', 'TC0A;Au;;0;07:00'].join('\n'));
    expect(segmentsBetween(nights, 0, 1)).toMatchObject([{ kind: 'halt', startsLeg: true, engineOn: false }]);
  });

  it('marks the arrival at a service and at a new leg', () => {
    const all = segmentsBetween(twoLegs, 0, twoLegs.points.length - 1);
    const arrivals = all.filter((one) => one.startsService).map((one) => one.toIndex);
    expect(arrivals).toEqual(servicesOf(twoLegs).map((service) => service.inIndex));
    expect(all.filter((one) => one.startsLeg).map((one) => one.toIndex)).toEqual([indexOf('TC4E')]);
  });

  it('has nothing from a point to itself', () => {
    expect(segmentsBetween(twoLegs, 4, 4)).toEqual([]);
  });

  it('throws a sentence on a way that is none', () => {
    expect(() => segmentsBetween(twoLegs, 5, 4)).toThrow(
      'segmentsBetween: the way from point 5 to point 4 goes backwards',
    );
    expect(() => segmentsBetween(twoLegs, -1, 4)).toThrow(/^segmentsBetween: -1 is no point/);
    expect(() => segmentsBetween(twoLegs, 0, 0.5)).toThrow(/^segmentsBetween: 0.5 is no point/);
  });

  it('covers any way without a hole in time, distance or order, and can be cut anywhere', () => {
    fc.assert(
      fc.property(anyItinerary, fc.nat(), fc.nat(), fc.nat(), (itinerary, ...cuts) => {
        const [from = 0, middle = 0, to = 0] = cuts
          .map((cut) => cut % itinerary.points.length)
          .sort((a, b) => a - b);
        const way = segmentsBetween(itinerary, from, to);
        expect([
          ...segmentsBetween(itinerary, from, middle),
          ...segmentsBetween(itinerary, middle, to),
        ]).toEqual(way);
        way.forEach((segment, order) => {
          expect(segment.endsAt).toBeGreaterThanOrEqual(segment.startsAt);
          expect(segment.startsAt).toBe(way[order - 1]?.endsAt ?? itinerary.points[from]?.firstCarAt);
          expect(Number.isInteger(segment.endsAt)).toBe(true);
        });
        expect(way.at(-1)?.endsAt ?? itinerary.points[to]?.firstCarAt).toBe(itinerary.points[to]?.firstCarAt);
        const passed = itinerary.points.slice(from, to).filter((point) => point.kind === 'stage');
        expect(way.filter((one) => one.kind === 'stage').map((one) => one.stageId)).toEqual(
          passed.map((one) => one.id),
        );
      }),
      { numRuns: 100 },
    );
  }, 60_000);
});
