import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from '../fixtures';
import { formatClock } from '../format';
import { routeMetresAt } from '../route-counters';
import { servicesOf } from '../services-of';
import { latenessAlong } from './lateness-along';
import type { LatenessQuestion, TimeRecord } from './lateness-question';
import { metresAlong } from './metres-along';
import { PENALTY_PRESETS } from './penalty-presets';
import { DEFAULT_PENALTY_RULES, type PenaltyRules } from './penalty-rules';
import { serviceNow } from './service-now';
import { timesAlong } from './times-along';

const itinerary = goodItinerary(TWO_LEGS);
const indexOf = (id: string) => itinerary.points.findIndex((point) => point.id === id);
const planned = (id: string) => itinerary.points[indexOf(id)]?.firstCarAt ?? 0;

/** Minutes after the timetable, by the name of the control or stage; `held`: of those the event's; `finish`: of a stage. */
type Written = Record<string, number | { late: number; held?: number; finish?: number }>;

function ask(written: Written, more: Partial<PenaltyRules> = {}, way = itinerary): LatenessQuestion {
  const records = Object.entries(written).map(([id, said]): TimeRecord => {
    const { late, held = 0, finish } = typeof said === 'number' ? { late: said } : said;
    const writtenAt = planned(id) + late * 60;
    const finishedAt = finish === undefined ? null : planned(id) + finish * 60;
    return { pointIndex: indexOf(id), writtenAt, heldMinutes: held, finishedAt };
  });
  const rules = { ...DEFAULT_PENALTY_RULES, ...more };
  return { itinerary: way, positions: new Map([[1, 1]]), rules, records };
}

/** Minutes after the timetable at which the car is due, or was written, at these points. */
function lateAt(question: LatenessQuestion, ...ids: string[]): number[] {
  const times = timesAlong(question);
  return ids.map((id) => ((times[indexOf(id)]?.at ?? 0) - planned(id)) / 60);
}

// Source of the rule: "due at the next control = actual recorded time at the control before (or stage start) + target
// time", Motorsport UK National Competition Rules 2026, chapter 13. The rows without it are common practice, no source.
describe('timesAlong', () => {
  it('is the timetable until the first time is written', () => {
    for (const { plannedAt, dueAt, writtenAt, at } of timesAlong(ask({})))
      expect([dueAt, writtenAt, at]).toEqual([plannedAt, null, plannedAt]);
  });

  it.each<[what: string, written: Written, rules: Partial<PenaltyRules>, at: [id: string, late: number][]]>([
    [
      'late at a control: late at all after it',
      { TC1: 7 },
      {},
      [
        ['SS1', 7],
        ['TC2', 7],
        ['TC2A', 7],
        ['TC2B', 7],
      ],
    ],
    [
      'late by the event’s doing: due as late',
      { TC1: { late: 7, held: 7 } },
      {},
      [
        ['SS1', 7],
        ['TC2A', 7],
      ],
    ],
    [
      'up to the regroup, which sets the times anew',
      { TC1: 7 },
      {},
      [
        ['TC4A', 7],
        ['TC4B', 0],
        ['TC4C', 0],
      ],
    ],
    [
      'later than the regroup ends: it leaves as it comes',
      { TC4A: 25 },
      {},
      [
        ['TC4B', 5],
        ['TC4C', 5],
      ],
    ],
    [
      'a new leg starts by its timetable',
      { TC4D: 30 },
      {},
      [
        ['TC4E', 0],
        ['TC5', 0],
      ],
    ],
    [
      'a held start moves what follows',
      { TC1: 0, SS1: 12 },
      {},
      [
        ['TC2', 12],
        ['TC2A', 12],
      ],
    ],
    [
      'in late, out late',
      { TC2A: 6 },
      {},
      [
        ['TC2B', 6],
        ['TC3', 6],
      ],
    ],
    [
      'in late, out as printed',
      { TC2A: 6 },
      { serviceOut: 'asPlanned' },
      [
        ['TC2B', 0],
        ['TC3', 0],
      ],
    ],
    [
      'out written later than due',
      { TC2A: 6, TC2B: 9 },
      {},
      [
        ['TC3', 9],
        ['SS3', 9],
      ],
    ],
    [
      'early under target timing: due earlier',
      { TC1: -2 },
      {},
      [
        ['SS1', -2],
        ['TC2', -2],
      ],
    ],
    ['early under the timetable: due by it', { TC2: -2 }, { timing: 'scheduled' }, [['TC2A', 0]]],
    [
      'late under the timetable: behind it as much',
      { TC1: 7 },
      { timing: 'scheduled' },
      [
        ['TC2', 7],
        ['TC4C', 0],
      ],
    ],
  ])('%s', (_, written, rules, expected) => {
    const ids = expected.map(([id]) => id);
    expect(lateAt(ask(written, rules), ...ids)).toEqual(expected.map(([, late]) => late));
  });

  it('counts from the finish of a stage where the itinerary says so', () => {
    const fromFinish = { ...itinerary, roadTimedFrom: 'stageFinish' as const };
    const question = ask({ TC1: 0, SS1: { late: 0, finish: 9 } }, {}, fromFinish);
    // Target time from SS1 to TC2: 28 minutes.
    expect(timesAlong(question)[indexOf('TC2')]?.dueAt).toBe(planned('SS1') + (9 + 28) * 60);
    // While nobody wrote the finish down, the stage is taken to last as long as planned.
    expect(lateAt(ask({ TC1: 4 }, {}, fromFinish), 'SS1', 'TC2')).toEqual([4, 4]);
  });

  it('tells the minutes of a car further back by its own timetable', () => {
    const question = { ...ask({}), positions: new Map([[1, 8]]) };
    const at = timesAlong(question)[indexOf('TC2A')]?.plannedAt ?? 0;
    expect(formatClock(at, itinerary.timeZone)).toBe('14:38');
  });

  it('parts ours from the event’s at the control, and counts on from the minute written', () => {
    const question = ask({ TC1: { late: 9, held: 6 }, TC2: 9 });
    expect(latenessAlong(question).map((at) => [at.ourMinutes, at.heldMinutes, at.totalMinutes])).toEqual([
      [3, 6, 3],
      [0, 0, 3],
    ]);
  });

  it('does not carry what was lost before a regroup past it, where the regroup itself was not written', () => {
    for (const { rules } of PENALTY_PRESETS)
      expect(latenessAlong(ask({ TC4A: 7, TC4C: 0 }, rules)).at(-1)).toMatchObject({ ourMinutes: 0 });
  });
});

describe('serviceNow', () => {
  const services = servicesOf(itinerary);
  const at = (written: Written, id: string, minutes: number) =>
    serviceNow(services, timesAlong(ask(written)), planned(id) + minutes * 60)?.id;

  // Service A: TC2A to TC2B, 15 minutes. Service B: TC4B to TC4C.
  it.each<[what: string, written: Written, minutesAfterOut: number, service: string]>([
    ['by plan, to the out-time', {}, 0, 'A'],
    ['by plan, after it', {}, 1, 'B'],
    ['25 minutes late in, still there', { TC2A: 25 }, 24, 'A'],
    ['25 minutes late on the way, not there yet', { TC2: 25 }, 24, 'A'],
    ['overrunning, nobody wrote it out', { TC2A: 0 }, 20, 'A'],
    ['overrunning by more than any event allows', { TC2A: 0 }, 31, 'B'],
    ['written out before its time', { TC2A: 0, TC2B: -3 }, -2, 'B'],
    ['written further on, the out forgotten', { TC2A: 25, TC3: 0 }, 10, 'B'],
  ])('%s', (_, written, minutes, service) => {
    expect(at(written, 'TC2B', minutes)).toBe(service);
  });

  it('is the last one after all of them, and none in an event without', () => {
    expect(at({}, 'TC7A', 999)).toBe(services.at(-1)?.id);
    expect(serviceNow([], timesAlong(ask({})), 0)).toBeNull();
  });
});

describe('metresAlong', () => {
  const where = (written: Written, id: string, minutes: number) =>
    metresAlong(itinerary, timesAlong(ask(written)), planned(id) + minutes * 60);
  const metresOf = (id: string) => routeMetresAt(itinerary, indexOf(id));

  it('is nothing before the start and after the last point', () => {
    expect(where({}, 'TC0', -1)).toBeNull();
    expect(where({}, 'TC7A', 0)).toBeNull();
  });

  it('follows the written times: ten minutes late is as far as planned ten minutes before', () => {
    expect(where({ TC1: 10 }, 'TC2', 5)).toBe(where({}, 'TC2', -5));
    expect(where({ TC1: 10 }, 'TC2', 5)).toBeLessThan(metresOf('TC2'));
  });

  it('is at least where it was last written, however early', () => {
    expect(where({ TC2: -10 }, 'TC2', -10)).toBe(metresOf('TC2'));
  });

  it('knows the stage from the road after it, once the finish is written', () => {
    const driven = { SS1: { late: 0, finish: 7 } };
    expect(where(driven, 'SS1', 7)).toBe(metresOf('SS1') + 9_800);
    expect(where(driven, 'SS1', 3.5)).toBe(metresOf('SS1') + 4_900);
    expect(where(driven, 'TC2', 0)).toBe(metresOf('TC2'));
  });
});
