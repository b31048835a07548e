import { parseItineraryTable } from '@halfshaft/itinerary';
import { starterCards } from '@halfshaft/lifing';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_ITINERARY } from './example-itinerary';
import { makeSheet, serviceName } from './sheet';

const VISIT = { drive: 'four', surface: 'gravel', people: 2, startPosition: 1 } as const;

function sheetOf(own: Partial<Parameters<typeof makeSheet>[0]['visit']> = {}, serviceIndex = 0) {
  const parsed = parseItineraryTable(EXAMPLE_ITINERARY, {
    timeZone: 'Europe/Vienna',
    startDate: '2026-06-13',
    roadTimedFrom: 'stageStart',
  });
  if (!parsed.ok) throw new Error('The example cannot be read.');
  return makeSheet({ visit: { ...VISIT, ...own }, itinerary: parsed.itinerary, serviceIndex });
}

const namesOf = (sheet: ReturnType<typeof sheetOf>) =>
  sheet?.shares.map((share) => share.work.map(({ card }) => card.name)) ?? [];

describe('makeSheet', () => {
  it('takes every card once: to do, or to wait', () => {
    const sheet = sheetOf({ people: 1 });
    const all = [...namesOf(sheet).flat(), ...(sheet?.canWait ?? []).map((card) => card.name)];
    expect(all.sort()).toEqual(
      starterCards('four', 'gravel')
        .map((card) => card.name)
        .sort(),
    );
  });

  it('shows the times of the car where it starts again after a regroup', () => {
    // Service A begins Section 2 of the example, and cars follow at 60 s.
    const first = sheetOf();
    const later = sheetOf({ startPosition: 12, positionsBySection: { 2: 5 } });
    expect(later?.startPosition).toBe(5);
    expect((later?.inAt ?? 0) - (first?.inAt ?? 0)).toBe(4 * 60);
    expect((later?.outAt ?? 0) - (first?.outAt ?? 0)).toBe(4 * 60);
    expect(sheetOf({ startPosition: 12 })?.startPosition).toBe(12);
  });

  it('says why: the air filter does not last to Service B', () => {
    const tasks = sheetOf({ people: 1 })?.shares[0]?.work ?? [];
    const filter = tasks.find(({ card }) => card.id === 'starter:air-filter');
    // 35.85 stage km before Service A and 71.70 before Service B, against 60 km and 5 km of tolerance.
    expect(filter?.mustDo).toBe(true);
    expect(filter?.reason).toMatch(/^won't reach Service B: 60 stage km is passed on SS6 at km /);
  });

  it('takes the car as prepared at home, and daily work as done at the first service of each later day', () => {
    const gearbox = (sheet: ReturnType<typeof sheetOf>) =>
      namesOf(sheet).flat().includes('Gearbox oil level');
    const days = [0, 1, 2, 3].map((index) => sheetOf({ people: 1 }, index));
    const legs = days.map((sheet) => sheet?.service.leg);
    expect([legs, days.map(gearbox)]).toEqual([
      [1, 1, 2, 2],
      [false, false, true, false],
    ]);
  });

  it('leaves a pad change in a remote service', () => {
    const pads = sheetOf({}, 3)?.canWait.find((card) => card.name.startsWith('Front brake pads'));
    expect(pads?.reason).toMatch(/^cannot be done at this service/);
  });

  it('puts what is signed and what closes the service last in each list', () => {
    const lists = namesOf(sheetOf());
    expect(lists.every((list) => list.includes('Wheel nuts: torque'))).toBe(true);
    const walker = lists.find((list) => list.includes('Final walk-round')) ?? [];
    expect(walker.slice(-2)).toEqual(['Wheel nuts: torque', 'Final walk-round']);
  });

  it('knows the times of the start position and the working time', () => {
    const [first, ninth] = [sheetOf(), sheetOf({ startPosition: 9 })];
    expect(ninth?.inAt).toBe((first?.inAt ?? 0) + 8 * 60);
    expect(first && first.outAt - first.inAt).toBe(30 * 60);
    // 30 minutes less 2 to settle and 2 to close up, for two people.
    expect(first?.usable.personSeconds).toBe(2 * 26 * 60);
  });

  it('has no sheet for a service that is not there', () => {
    expect(sheetOf({}, 4)).toBeNull();
  });
});

describe('serviceName', () => {
  it('tells a remote service apart', () => {
    expect(serviceName({ id: 'B', kind: 'service' })).toBe('Service B');
    expect(serviceName({ id: 'C', kind: 'remoteService' })).toBe('Remote service C');
  });
});
