import { describe, expect, it } from 'vitest';
import { goodItinerary, VIENNA } from '../fixtures';
import { formatClock } from '../format';
import type { Itinerary } from '../model';
import { type ControlLateness, latenessAlong } from './lateness-along';
import { PENALTY_PRESETS } from './penalty-presets';
import { DEFAULT_PENALTY_RULES, type PenaltyRules } from './penalty-rules';

const ROWS = `TC/SS;Location;SS km;Road km;Target time;First car due
MTC0;Start;;;;09:00
TC1;Au;;9;0:12;09:12
TC1A;Berg;;7;0:09;09:21
MTC1;Service in;;20;0:30;09:51
MTC2;Service out;;;0:30;10:21
TC2;Tal;;15;0:20;10:41
SS2;Tal;8;;;10:44
TC2A;Regroup in;;20;0:40;11:24
TC2B;Regroup out;;;0:10;11:34
MTC3;Finish;;20;0:30;12:04
`;
const mainControls = goodItinerary(ROWS);
/** The same road, with controls that are none of them main ones. */
const plainControls = goodItinerary(
  ROWS.replace('MTC0', 'TC0').replace('MTC1', 'TC1B').replace('MTC2', 'TC1C').replace('MTC3', 'TC2C'),
);
const rulesOf = (id: string): PenaltyRules => {
  const preset = PENALTY_PRESETS.find((one) => one.id === id);
  if (!preset) throw new Error(`no preset ${id}`);
  return preset.rules;
};

type Written = Record<string, string | [clock: string, heldMinutes: number]>;

/** Written times by the name of the control, for the car in position 1. */
function drive(itinerary: Itinerary, rules: PenaltyRules, written: Written): ControlLateness[] {
  const midnight = (itinerary.points[0]?.firstCarAt ?? 0) - 9 * 3600;
  const records = Object.entries(written).map(([id, value]) => {
    const [clock, heldMinutes] = typeof value === 'string' ? [value, 0] : value;
    const [hours = 0, minutes = 0, seconds = 0] = clock.split(':').map(Number);
    const writtenAt = midnight + hours * 3600 + minutes * 60 + seconds;
    return { pointIndex: itinerary.points.findIndex((point) => point.id === id), writtenAt, heldMinutes };
  });
  return latenessAlong({ itinerary, positions: new Map([[1, 1]]), rules, records });
}

const due = (one: ControlLateness | undefined) => formatClock(one?.dueAt ?? 0, VIENNA.timeZone);
const last = (all: ControlLateness[]) => {
  const one = all.at(-1);
  if (!one) throw new Error('nothing was written');
  return one;
};

// Source of the rules and examples: Motorsport UK National Competition Rules 2026, chapter 13.
describe('the British national code of 2026', () => {
  const british = rulesOf('british');

  it('cuts minutes: 9:59 counts as 9', () => {
    const [, one] = drive(mainControls, british, { MTC0: '09:00', TC1: '09:12:59' });
    expect(one).toMatchObject({ ourMinutes: 0, earlyMinutes: 0, penaltySeconds: 0 });
  });

  it('lets a late car make up time, but a section of 9 minutes not under 6', () => {
    // Ten minutes late at TC1: due at 09:31, and no sooner than 09:22 + 6.
    const at = (clock: string) => last(drive(mainControls, british, { TC1: '09:22', TC1A: clock }));
    expect(due(at('09:28'))).toBe('09:31');
    expect(at('09:28')).toMatchObject({
      earlyMinutes: 0,
      allowedEarlyMinutes: 3,
      penaltySeconds: 0,
      totalMinutes: 7,
    });
    expect(at('09:27')).toMatchObject({ earlyMinutes: 1, allowedEarlyMinutes: 3, penaltySeconds: 60 });
  });

  it('and one of 12 minutes not under 9', () => {
    const at = (clock: string) => last(drive(mainControls, british, { MTC0: '09:10', TC1: clock }));
    expect(at('09:19')).toMatchObject({ earlyMinutes: 0, allowedEarlyMinutes: 3 });
    expect(at('09:18')).toMatchObject({ earlyMinutes: 1, penaltySeconds: 60 });
  });

  it('lets nobody be before the timetable, late before or not', () => {
    // One minute late at TC1: the timetable, 09:21, comes before the floor.
    const at = (clock: string) => last(drive(mainControls, british, { TC1: '09:13', TC1A: clock }));
    expect(at('09:21')).toMatchObject({ earlyMinutes: 0, totalMinutes: 0 });
    expect(at('09:20')).toMatchObject({ earlyMinutes: 1, penaltySeconds: 60 });
  });

  it('costs 60 s a minute early and nothing a minute late, unless the event says 10 s', () => {
    expect(last(drive(mainControls, british, { MTC0: '09:00', TC1: '09:10' })).penaltySeconds).toBe(120);
    expect(last(drive(mainControls, british, { MTC0: '09:00', TC1: '09:19' })).penaltySeconds).toBe(0);
    const withPenalty = { ...british, lateSecondsPerMinute: 10 };
    expect(last(drive(mainControls, withPenalty, { MTC0: '09:00', TC1: '09:19' })).penaltySeconds).toBe(70);
  });

  it('is over at more than 30 minutes past the timetable, and at a setting of the event', () => {
    const over = (clock: string, rules = british) =>
      last(drive(mainControls, rules, { MTC0: '09:00', TC1: clock })).over;
    expect(over('09:42')).toEqual([]);
    expect(over('09:43')).toEqual(['inTotal']);
    expect(over('09:28', { ...british, maxLateMinutesInTotal: 15 })).toEqual(['inTotal']);
  });

  it('gives a fixed penalty over the maximum where the event is at one venue', () => {
    const oneVenue: PenaltyRules = { ...british, overMaximum: { means: 'fixedPenalty', seconds: 300 } };
    expect(last(drive(mainControls, oneVenue, { MTC0: '09:00', TC1: '09:43' }))).toMatchObject({
      over: ['inTotal'],
      penaltySeconds: 300,
    });
  });

  it('costs 10 s a minute before or after on leaving a main control', () => {
    const out = (clock: string) => last(drive(mainControls, british, { MTC1: '09:51', MTC2: clock }));
    expect(out('10:23')).toMatchObject({ ourMinutes: 2, penaltySeconds: 20 });
    expect(out('10:18')).toMatchObject({ earlyMinutes: 3, penaltySeconds: 30 });
  });

  it('begins to count anew at main time controls', () => {
    const along = drive(mainControls, british, { TC1: '09:32', MTC1: '10:21', MTC2: '10:51', TC2: '11:12' });
    expect(along.map((one) => [one.id, one.totalMinutes, one.over])).toEqual([
      ['TC1', 20, []],
      ['MTC1', 30, []],
      ['MTC2', 0, []],
      ['TC2', 1, []],
    ]);
  });
});

// Source of the rules: North American winter rally-sprint competitor bulletin 2017.
describe('the winter rally-sprint of 2017', () => {
  const winter = rulesOf('winterSprint');

  it('allows 15 minutes at one control and 30 in all', () => {
    const over = (written: Written) => last(drive(plainControls, winter, written)).over;
    expect(over({ TC0: '09:00', TC1: '09:27' })).toEqual([]);
    expect(over({ TC0: '09:00', TC1: '09:28' })).toEqual(['atControl']);
    expect(over({ TC0: '09:00', TC1: '09:27', TC1A: '09:51' })).toEqual([]);
    expect(over({ TC0: '09:00', TC1: '09:27', TC1A: '09:50', TC1B: '10:22' })).toEqual(['inTotal']);
  });

  it('allows 10 minutes early in all', () => {
    const early = drive(plainControls, winter, { TC0: '09:00', TC1: '09:06', TC1A: '09:11', TC1B: '09:40' });
    expect(early.map((one) => [one.earlyMinutes, one.over])).toEqual([
      [0, []],
      [6, []],
      [4, []],
      [1, ['early']],
    ]);
  });

  it('never takes an early arrival off what is counted', () => {
    const along = drive(plainControls, winter, { TC0: '09:00', TC1: '09:20', TC1A: '09:26' });
    expect(along.map((one) => [one.ourMinutes, one.earlyMinutes, one.totalMinutes])).toEqual([
      [0, 0, 0],
      [8, 0, 8],
      [0, 3, 8],
    ]);
  });

  it('lets service time be given up to be back on schedule, and keeps the lateness counted', () => {
    // Ten minutes late in: out at 10:31 by right, at 10:21 by the timetable.
    const out = (clock: string) => last(drive(plainControls, winter, { TC1B: '10:01', TC1C: clock }));
    expect(due(out('10:31'))).toBe('10:31');
    expect(out('10:21')).toMatchObject({
      earlyMinutes: 0,
      allowedEarlyMinutes: 10,
      penaltySeconds: 0,
      totalMinutes: 10,
    });
    expect(out('10:20')).toMatchObject({ earlyMinutes: 1, penaltySeconds: 60 });
    const strict = { ...winter, serviceTimeMayBeGivenUp: false };
    expect(last(drive(plainControls, strict, { TC1B: '10:01', TC1C: '10:21' })).earlyMinutes).toBe(10);
  });

  it('begins to count anew at main controls', () => {
    const along = drive(mainControls, winter, { MTC0: '09:00', TC1: '09:24', MTC1: '10:03', MTC2: '10:35' });
    expect(along.map((one) => one.totalMinutes)).toEqual([0, 12, 12, 2]);
  });
});

// Source of the reset: published answers of a hill rally on lateness; the rest is common practice.
describe('a hill rally with its reset at service out', () => {
  it('begins to count anew where service is left', () => {
    const along = drive(plainControls, rulesOf('serviceOut'), {
      TC1: '09:32',
      TC1B: '10:11',
      TC1C: '10:44',
      TC2: '11:04',
    });
    expect(along.map((one) => [one.id, one.totalMinutes])).toEqual([
      ['TC1', 20],
      ['TC1B', 20],
      ['TC1C', 3],
      ['TC2', 3],
    ]);
  });
});

describe('target timing, as most events have it (common practice, no source)', () => {
  const common = DEFAULT_PENALTY_RULES;

  it('costs 10 s a minute late and 60 s a minute early', () => {
    expect(last(drive(plainControls, common, { TC0: '09:00', TC1: '09:15' })).penaltySeconds).toBe(30);
    expect(last(drive(plainControls, common, { TC0: '09:00', TC1: '09:10' })).penaltySeconds).toBe(120);
  });

  it('counts from the actual time before, so that a minute is lost once', () => {
    const along = drive(plainControls, common, { TC0: '09:00', TC1: '09:17', TC1A: '09:26', TC1B: '09:58' });
    expect(along.map((one) => one.ourMinutes)).toEqual([0, 5, 0, 2]);
    expect(along.map(due)).toEqual(['09:00', '09:12', '09:26', '09:56']);
  });

  it('counts from the stage start the marshal gave, so that a held start costs nothing', () => {
    const along = drive(plainControls, common, { TC1C: '10:21', TC2: '10:41', SS2: '10:58', TC2A: '11:39' });
    expect(last(along)).toMatchObject({ id: 'TC2A', ourMinutes: 1 });
  });

  it('parts what we lost from what the event cost: only ours is penalised and counted', () => {
    const held = last(drive(plainControls, common, { TC0: '09:00', TC1: ['09:32', 12] }));
    expect(held).toMatchObject({
      ourMinutes: 8,
      heldMinutes: 12,
      penaltySeconds: 80,
      totalMinutes: 8,
      over: [],
    });
    const counted = { ...common, heldMinutesCount: true };
    expect(last(drive(plainControls, counted, { TC0: '09:00', TC1: ['09:32', 12] }))).toMatchObject({
      totalMinutes: 20,
      over: ['atControl'],
      penaltySeconds: 80,
    });
    expect(last(drive(plainControls, common, { TC0: '09:00', TC1: ['09:14', 12] }))).toMatchObject({
      ourMinutes: 0,
      heldMinutes: 2,
    });
  });

  it('leaves a regroup by its timetable, and begins to count anew there', () => {
    const along = drive(plainControls, common, { TC2: '10:41', SS2: '10:44', TC2A: '11:31', TC2B: '11:36' });
    expect(
      along.map((one) => [one.id, due(one), one.ourMinutes, one.totalMinutes, one.sectionMinutes]),
    ).toEqual([
      ['TC2', '10:41', 0, 0, 0],
      ['TC2A', '11:24', 7, 7, 7],
      ['TC2B', '11:34', 2, 2, 2],
    ]);
    const afterTheTime = drive(plainControls, common, { SS2: '10:44', TC2A: '11:37', TC2B: '11:37' });
    expect(last(afterTheTime).ourMinutes).toBe(0);
  });

  it('allows an early check-in where the rules name the control', () => {
    expect(last(drive(plainControls, common, { TC2B: '11:34', TC2C: '11:50' }))).toMatchObject({
      earlyMinutes: 0,
      allowedEarlyMinutes: 14,
      penaltySeconds: 0,
    });
    const none = { ...common, earlyAllowedAt: [] };
    expect(last(drive(plainControls, none, { TC2B: '11:34', TC2C: '11:50' })).penaltySeconds).toBe(14 * 60);
  });

  it('keeps the printed out-time of a service where the event says so', () => {
    const fixed: PenaltyRules = { ...common, serviceOut: 'asPlanned' };
    expect(due(last(drive(plainControls, fixed, { TC1B: '10:01', TC1C: '10:21' })))).toBe('10:21');
  });

  it('limits a section where the rules do', () => {
    const rules = { ...common, maxLateMinutesInSection: 10, resetsAt: [] };
    const along = drive(plainControls, rules, {
      TC0: '09:00',
      TC1: '09:20',
      TC1A: '09:32',
      TC2A: '11:35',
      TC2B: '11:40',
    });
    expect(along.map((one) => [one.sectionMinutes, one.over])).toEqual([
      [0, []],
      [8, []],
      [11, ['inSection']],
      [11, ['inSection']],
      [5, []],
    ]);
    expect(last(along).totalMinutes).toBe(16);
  });

  it('throws a sentence on a record of no point, or of one twice', () => {
    const ask = (indexes: number[]) => () =>
      latenessAlong({
        itinerary: plainControls,
        positions: new Map([[1, 1]]),
        rules: common,
        records: indexes.map((pointIndex) => ({ pointIndex, writtenAt: 1_781_250_000 })),
      });
    expect(ask([99])).toThrow(/^latenessAlong: 99 is no point/);
    expect(ask([1, 1])).toThrow(/^latenessAlong: point 1 is recorded twice/);
  });
});
