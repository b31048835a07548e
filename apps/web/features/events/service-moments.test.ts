import { dueAt, type Itinerary, parseItineraryTable, routeMetresAt, servicesOf } from '@halfshaft/itinerary';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_TABLE } from '../itinerary/example-table';
import { plannedMetres } from './planned-metres';
import { momentInWords, serviceMoments } from './service-moments';

function readExample(): Itinerary {
  const read = parseItineraryTable(EXAMPLE_TABLE, {
    timeZone: 'Europe/Vienna',
    startDate: '2026-06-12',
    roadTimedFrom: 'stageStart',
  });
  if (!read.ok) throw new Error('the example does not read');
  return read.itinerary;
}

const itinerary = readExample();
const moments = serviceMoments(itinerary, servicesOf(itinerary), 5);
const inAt = Date.UTC(2026, 5, 12, 8, 53) / 1000;

describe('serviceMoments', () => {
  it("are those of the car's own start position, in the event's zone", () => {
    expect(moments).toHaveLength(1);
    expect(moments[0]).toMatchObject({ inAt, inClock: '10:53', outClock: '11:13', outAt: inAt + 1200 });
  });
});

describe('momentInWords', () => {
  it.each([
    [-3 * 86_400, 'next, in 3 days'],
    [-125 * 60, 'next, in 2 h 5 min'],
    [-42 * 60 - 30, 'next, in 42 min'],
    [0, 'now, out in 20 min'],
    [61, 'now, out in 18 min'],
    [1199, 'now, out in 0 min'],
    [1200, 'past'],
  ])('%i s after the in-time says %s', (seconds, words) => {
    const kind = words.split(',')[0];
    expect(momentInWords(moments, 0, inAt + seconds)).toEqual({ kind, words });
  });

  it('says nothing of services behind the next one, nor without a clock', () => {
    const later = moments.map((moment) => ({
      ...moment,
      inAt: moment.inAt + 9000,
      outAt: moment.outAt + 9000,
    }));
    expect(momentInWords([...moments, ...later], 1, inAt)).toBeNull();
    expect(momentInWords(moments, 0, null)).toBeNull();
    expect(momentInWords(moments, 9, inAt)).toBeNull();
  });
});

describe('plannedMetres', () => {
  const last = itinerary.points.length - 1;

  it('is nothing before the start and after the last point', () => {
    expect(plannedMetres(itinerary, 5, dueAt(itinerary, 0, 5) - 1)).toBeNull();
    expect(plannedMetres(itinerary, 5, dueAt(itinerary, last, 5))).toBeNull();
  });

  it('is at each point when the car is due there', () => {
    for (let index = 0; index < last; index += 1) {
      expect(plannedMetres(itinerary, 5, dueAt(itinerary, index, 5))).toBe(routeMetresAt(itinerary, index));
    }
  });

  it('never goes backwards', () => {
    const span = fc.integer({ min: 0, max: dueAt(itinerary, last, 1) - dueAt(itinerary, 0, 1) - 1 });
    fc.assert(
      fc.property(span, span, (one, other) => {
        const start = dueAt(itinerary, 0, 1);
        const earlier = plannedMetres(itinerary, 1, start + Math.min(one, other)) ?? Number.NaN;
        const later = plannedMetres(itinerary, 1, start + Math.max(one, other)) ?? Number.NaN;
        expect(later).toBeGreaterThanOrEqual(earlier);
      }),
    );
  });
});
