import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkItinerary } from '../check-itinerary';
import { formatClock, formatDay } from '../format';
import { itineraryToTable } from '../itinerary-to-table';
import { parseItineraryTable } from '../parse-itinerary-table';
import { routeMetresAt } from '../route-counters';
import { servicesOf } from '../services-of';
import { itineraryFromDays } from './itinerary-from-days';
import type { QuickDay, QuickForm, QuickLoop } from './quick-form';
import { quickFormInWords } from './quick-form-in-words';

const LOOP: QuickLoop = {
  stages: [
    { name: 'Auwald', metres: 8000 },
    { name: 'Rinne', metres: 12_000 },
  ],
  roadMetres: 60_001,
  serviceMinutes: 30,
};
const SECOND: QuickLoop = {
  stages: [{ name: 'Auwald', metres: 8000 }, { metres: 12_000 }],
  roadMetres: 60_000,
  serviceMinutes: 0,
};
const DAY: QuickDay = { date: '2026-06-12', firstCarAt: '09:00', loops: [LOOP, SECOND] };
const FORM: QuickForm = {
  timeZone: 'Europe/Vienna',
  startIntervalSeconds: 60,
  gapSeconds: 180,
  days: [DAY],
};

describe('itineraryFromDays', () => {
  it('plans the times by the speeds it names, in whole minutes', () => {
    const { points } = itineraryFromDays(FORM);
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
    const itinerary = itineraryFromDays(FORM);
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

  it('has a night in parc fermé between two days, a service before the first stage, and the order anew', () => {
    const { points, startBlocks } = itineraryFromDays({
      ...FORM,
      days: [
        {
          ...DAY,
          firstCarAt: '18:30',
          loops: [{ ...SECOND, stages: [{ metres: 2000, superSpecial: true }] }],
        },
        { ...DAY, date: '2026-06-13', firstCarAt: '07:00', serviceMinutes: 15, loops: [LOOP] },
        { ...DAY, date: '2026-06-15' },
      ],
    });
    const told = points
      .filter((point) => point.kind === 'control' && point.roles[0] !== 'timeControl')
      .map((point) => `${point.leg} ${formatDay(point.firstCarAt, FORM.timeZone)} ${point.id} ${point.name}`);
    expect(told).toEqual([
      '1 Fri 12 Jun 2026 TC0 Start',
      '1 Fri 12 Jun 2026 TC1A Parc fermé in',
      '2 Sat 13 Jun 2026 TC1B Parc fermé out / Service in',
      '2 Sat 13 Jun 2026 TC1C Service out',
      '2 Sat 13 Jun 2026 TC3A Service in',
      '2 Sat 13 Jun 2026 TC3B Service out / Parc fermé in',
      '3 Mon 15 Jun 2026 TC3C Parc fermé out',
      '3 Mon 15 Jun 2026 TC5A Service in',
      '3 Mon 15 Jun 2026 TC5B Service out',
      '3 Mon 15 Jun 2026 TC7A Finish',
    ]);
    expect(points.find((point) => point.id === 'SS1')?.name).toBe('Super special');
    expect(startBlocks.map((block) => block.section)).toEqual([1, 2, 3]);
  });

  it('knows a loop that is driven again, stage by stage where the lengths are the same', () => {
    const stages = [{ metres: 8000 }, { metres: 12_000 }];
    const shorter = [{ metres: 8000 }, { metres: 9000 }];
    const loops = [
      { ...LOOP, stages },
      { ...LOOP, stages, again: true },
      { ...LOOP, stages: shorter, again: true },
      { ...LOOP, stages },
    ];
    const { points } = itineraryFromDays({ ...FORM, days: [{ ...DAY, loops }] });
    const told = points.flatMap((point) =>
      point.kind === 'stage' ? [[point.id, point.name, point.repeatOf]] : [],
    );
    expect(told).toEqual([
      ['SS1', 'SS1', null],
      ['SS2', 'SS2', null],
      ['SS3', 'SS1 (2)', 'SS1'],
      ['SS4', 'SS2 (2)', 'SS2'],
      ['SS5', 'SS1 (3)', 'SS1'],
      ['SS6', 'SS6', null],
      ['SS7', 'SS7', null],
      ['SS8', 'SS8', null],
    ]);
  });

  it('takes a super special of another length for another one', () => {
    const special = (metres: number) => ({ ...SECOND, stages: [{ metres, superSpecial: true }] });
    const { points } = itineraryFromDays({
      ...FORM,
      days: [{ ...DAY, loops: [special(2000), special(2000), special(2500)] }],
    });
    const told = points.flatMap((point) => (point.kind === 'stage' ? [[point.name, point.repeatOf]] : []));
    expect(told).toEqual([
      ['Super special', null],
      ['Super special', 'SS1'],
      ['Super special SS3', null],
    ]);
  });

  it('places a refuel where the road of its loop begins, and no time is lost by it', () => {
    const loops = [LOOP, { ...SECOND, refuel: true }, { ...SECOND, refuel: true }];
    const plain = itineraryFromDays({ ...FORM, days: [{ ...DAY, loops: [LOOP, SECOND, SECOND] }] });
    const { points } = itineraryFromDays({ ...FORM, days: [{ ...DAY, loops }] });
    expect(points.filter((point) => !point.id.startsWith('RZ'))).toEqual(plain.points);
    const order = points.map((point) => `${point.id} ${formatClock(point.firstCarAt, FORM.timeZone)}`);
    expect(order.slice(6, 9)).toEqual(['TC2B 11:04', 'RZ1 11:04', 'TC3 11:40']);
    // SS4 is 12 km: nine minutes after its start.
    expect(order.slice(11, 14)).toEqual(['SS4 12:28', 'RZ2 12:37', 'TC5 13:01']);
  });

  it('leaves a day that begins before the one before has ended to the checks', () => {
    const early = itineraryFromDays({ ...FORM, days: [DAY, { ...DAY, firstCarAt: '10:00' }] });
    expect(checkItinerary(early).map((problem) => problem.code)).toContain('time-backwards');
  });

  it('breaks no rule, loses no metre and survives being written and read, whatever the days', () => {
    const stage = fc.record({ metres: fc.integer({ min: 1, max: 50_000 }), superSpecial: fc.boolean() });
    const loop = fc.record({
      stages: fc.array(stage, { minLength: 1, maxLength: 4 }),
      roadMetres: fc.integer({ min: 0, max: 150_000 }),
      serviceMinutes: fc.constantFrom(0, 10, 20, 45),
      serviceKind: fc.constantFrom('service' as const, 'remoteService' as const),
      refuel: fc.boolean(),
      again: fc.boolean(),
    });
    const day = fc.record({
      hour: fc.integer({ min: 6, max: 20 }),
      serviceMinutes: fc.constantFrom(0, 15),
      loops: fc.array(loop, { minLength: 1, maxLength: 3 }),
    });
    fc.assert(
      fc.property(fc.array(day, { minLength: 1, maxLength: 3 }), (days) => {
        const itinerary = itineraryFromDays({
          ...FORM,
          // Two days on: no loops here last longer.
          days: days.map(({ hour, ...rest }, index) => ({
            date: `2026-06-${12 + index * 3}`,
            firstCarAt: `${String(hour).padStart(2, '0')}:40`,
            ...rest,
          })),
        });
        expect(checkItinerary(itinerary)).toEqual([]);
        const loops = days.flatMap((one) => one.loops);
        const metres = loops.reduce(
          (sum, one) => one.stages.reduce((stages, { metres }) => stages + metres, sum + one.roadMetres),
          0,
        );
        expect(routeMetresAt(itinerary, itinerary.points.length - 1)).toBe(metres);
        const read = parseItineraryTable(itineraryToTable(itinerary), {
          timeZone: FORM.timeZone,
          startDate: '2026-06-12',
          roadTimedFrom: 'stageStart',
        });
        expect(read).toEqual({ ok: true, itinerary, warnings: [] });
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('throws a sentence on figures that are none', () => {
    const of = (change: Partial<QuickDay>) => () =>
      itineraryFromDays({ ...FORM, days: [{ ...DAY, ...change }] });
    expect(of({ firstCarAt: 'nine' })).toThrow(/^itineraryFromDays: “nine”/);
    expect(of({ loops: [] })).toThrow(/number of loops/);
    expect(of({ loops: [{ ...LOOP, stages: [] }] })).toThrow(/number of stages/);
    expect(of({ loops: [{ ...LOOP, stages: [{ metres: 0 }] }] })).toThrow(/metres of a stage/);
    expect(of({ date: 'soon' })).toThrow(/^itineraryFromDays: .*YYYY-MM-DD/);
    expect(() => itineraryFromDays({ ...FORM, days: [] })).toThrow(/number of days/);
  });
});
