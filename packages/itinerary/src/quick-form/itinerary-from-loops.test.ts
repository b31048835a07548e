import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkItinerary } from '../check-itinerary';
import { formatClock } from '../format';
import { itineraryToTable } from '../itinerary-to-table';
import { parseItineraryTable } from '../parse-itinerary-table';
import { routeMetresAt } from '../route-counters';
import { servicesOf } from '../services-of';
import { itineraryFromLoops } from './itinerary-from-loops';
import type { QuickForm } from './quick-form';
import { quickFormInWords } from './quick-form-in-words';

const FORM: QuickForm = {
  timeZone: 'Europe/Vienna',
  startDate: '2026-06-12',
  firstCarAt: '09:00',
  startIntervalSeconds: 60,
  gapSeconds: 180,
  loops: [
    {
      stages: [
        { name: 'Auwald', metres: 8000 },
        { name: 'Rinne', metres: 12_000 },
      ],
      roadMetres: 60_001,
      serviceMinutes: 30,
    },
    { stages: [{ name: 'Auwald', metres: 8000 }, { metres: 12_000 }], roadMetres: 60_000, serviceMinutes: 0 },
  ],
};

describe('itineraryFromLoops', () => {
  it('plans the times by the speeds it names, in whole minutes', () => {
    const { points } = itineraryFromLoops(FORM);
    expect(points.map((point) => `${point.id} ${formatClock(point.firstCarAt, FORM.timeZone)}`)).toEqual([
      // 20 km at 50 km/h are 24 min; 8 km at 80 km/h 6 min, 12 km 9 min; the odd metre costs a whole minute.
      'TC0 09:00',
      'TC1 09:24',
      'SS1 09:27',
      'TC2 09:57',
      'SS2 10:00',
      'TC2A 10:34',
      'TC2B 11:04',
      'TC3 11:28',
      'SS3 11:31',
      'TC4 12:01',
      'SS4 12:04',
      'TC4A 12:37',
    ]);
  });

  it('knows a stage that comes again, letters its services and ends with a finish', () => {
    const itinerary = itineraryFromLoops(FORM);
    expect(
      itinerary.points.flatMap((point) => (point.kind === 'stage' ? [[point.name, point.repeatOf]] : [])),
    ).toEqual([
      ['Auwald', null],
      ['Rinne', null],
      ['Auwald', 'SS1'],
      ['SS4', null],
    ]);
    expect(servicesOf(itinerary)).toMatchObject([{ id: 'A', inControl: 'TC2A', allowedSeconds: 1800 }]);
    expect(itinerary.points.at(-1)).toMatchObject({ roles: ['finish'] });
  });

  it('says that it is an estimate and on what', () => {
    expect(quickFormInWords(FORM)).toMatch(/estimate: 50 km\/h on the road and 80 km\/h on stages/);
    expect(quickFormInWords({ roadSpeedMetresPerHour: 60_000 })).toMatch(/60 km\/h on the road/);
  });

  it('breaks no rule, loses no metre and survives being written and read, whatever the loops', () => {
    const loop = fc.record({
      stages: fc.array(fc.record({ metres: fc.integer({ min: 1, max: 50_000 }) }), {
        minLength: 1,
        maxLength: 5,
      }),
      roadMetres: fc.integer({ min: 0, max: 200_000 }),
      serviceMinutes: fc.constantFrom(0, 10, 20, 45),
      serviceKind: fc.constantFrom('service' as const, 'remoteService' as const),
    });
    fc.assert(
      fc.property(
        fc.array(loop, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 23 }),
        (loops, hour) => {
          const itinerary = itineraryFromLoops({
            ...FORM,
            firstCarAt: `${String(hour).padStart(2, '0')}:40`,
            loops,
          });
          expect(checkItinerary(itinerary)).toEqual([]);
          const metres = loops.reduce(
            (sum, one) => one.stages.reduce((stages, stage) => stages + stage.metres, sum + one.roadMetres),
            0,
          );
          expect(routeMetresAt(itinerary, itinerary.points.length - 1)).toBe(metres);
          const { timeZone, startDate } = FORM;
          const read = parseItineraryTable(itineraryToTable(itinerary), {
            timeZone,
            startDate,
            roadTimedFrom: 'stageStart',
          });
          expect(read).toEqual({ ok: true, itinerary, warnings: [] });
        },
      ),
      { numRuns: 40 },
    );
  }, 60_000);

  it('throws a sentence on figures that are none', () => {
    expect(() => itineraryFromLoops({ ...FORM, firstCarAt: 'nine' })).toThrow(/^itineraryFromLoops: “nine”/);
    expect(() => itineraryFromLoops({ ...FORM, loops: [] })).toThrow(/number of stages/);
    const bad = { stages: [{ metres: 0 }], roadMetres: 1, serviceMinutes: 0 };
    expect(() => itineraryFromLoops({ ...FORM, loops: [bad] })).toThrow(/metres of a stage/);
    expect(() => itineraryFromLoops({ ...FORM, startDate: 'soon' })).toThrow(
      /^itineraryFromLoops: .*YYYY-MM-DD/,
    );
  });
});
