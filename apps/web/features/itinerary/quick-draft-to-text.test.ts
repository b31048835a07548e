import { formatClock, formatDay, servicesOf } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { checkText } from './check-text';
import {
  copyDay,
  dateInWords,
  datesOf,
  EMPTY_DAY,
  EMPTY_LOOP,
  QUICK_TIMING,
  type QuickDayDraft,
  type QuickDraft,
  repeatLoop,
} from './quick-draft';
import { quickDraftToText } from './quick-draft-to-text';

const SETTINGS = {
  timeZone: 'Europe/Vienna',
  startsOn: '2026-06-12',
  startIntervalSeconds: 120,
  defaultGapSeconds: 240,
  // Of a text that was pasted before; a quick form has its own.
  roadTimedFrom: 'stageFinish' as const,
  printedFor: 'carZero' as const,
};
const DAY: QuickDayDraft = {
  ...EMPTY_DAY,
  firstCarAt: '08:30',
  loops: [
    { ...EMPTY_LOOP, stages: '12,4 8.1', roadKm: '60' },
    { ...EMPTY_LOOP, stages: '12.4, 8.1 + 5', roadKm: '62,5', end: 'none', serviceMinutes: '' },
  ],
};
const DRAFT: QuickDraft = { days: [DAY] };

/** What the text is understood as, on another first day than it was written for when one is given. */
function understood(draft: QuickDraft, startsOn = SETTINGS.startsOn) {
  const made = quickDraftToText(draft, SETTINGS);
  if (!made.ok) throw new Error(made.problems[0]?.message);
  const checked = checkText({ ...SETTINGS, ...QUICK_TIMING, source: made.text, startsOn });
  if (checked.state !== 'good') throw new Error(checked.state);
  expect(checked.warnings).toEqual([]);
  return checked.itinerary;
}

describe('quickDraftToText', () => {
  it('makes a text that reads like a pasted one, on whatever first day', () => {
    const made = quickDraftToText(DRAFT, SETTINGS);
    if (!made.ok) throw new Error(made.problems[0]?.message);
    const checked = checkText({
      ...SETTINGS,
      ...QUICK_TIMING,
      source: made.text,
      startsOn: '2026-06-20',
      startIntervalSeconds: 60,
      defaultGapSeconds: 180,
    });
    expect(checked).toMatchObject({ state: 'good', warnings: [] });
    if (checked.state !== 'good') return;
    const { points, startBlocks } = checked.itinerary;
    const metres = points.map((point) => (point.kind === 'stage' ? point.stageMetres : 0));
    expect(metres.filter((one) => one > 0)).toEqual([12_400, 8100, 12_400, 8100, 5000]);
    expect(points.reduce((sum, point) => sum + (point.kind === 'control' ? point.roadMetres : 0), 0)).toBe(
      122_500,
    );
    expect(servicesOf(checked.itinerary).map((service) => service.allowedSeconds)).toEqual([1800]);
    expect(formatClock(points[0]?.firstCarAt ?? 0, 'Europe/Vienna')).toBe('08:30');
    expect(new Date((points[0]?.firstCarAt ?? 0) * 1000).toISOString()).toBe('2026-06-20T06:30:00.000Z');
    expect(startBlocks).toMatchObject([{ intervalSeconds: 120 }]);
    expect(points.flatMap((point) => (point.kind === 'stage' ? [point.gapSeconds] : []))).toContain(240);
  });

  it('has days with a night between them, which move with the first day', () => {
    const evening = {
      ...EMPTY_DAY,
      firstCarAt: '19:00',
      loops: [
        { ...EMPTY_LOOP, stages: '2', roadKm: '8', end: 'none' as const, marks: ['superSpecial' as const] },
      ],
    };
    const { points, timeZone } = understood({ days: [evening, DAY] }, '2026-07-03');
    expect(points.slice(0, 5).map((point) => `${point.leg} ${point.name}`)).toEqual([
      '1 Start',
      '1 Super special',
      '1 Super special',
      '1 Parc fermé in',
      '2 Parc fermé out',
    ]);
    const out = points[4]?.firstCarAt ?? 0;
    expect(`${formatDay(out, timeZone)} ${formatClock(out, timeZone)}`).toBe('Sat 4 Jul 2026 08:30');
  });

  it('keeps the dates where the times alone would not tell them', () => {
    const later = { ...DAY, firstCarAt: '20:00', date: '2026-06-14' };
    const { points, timeZone } = understood({ days: [DAY, later] });
    const second = points.find((point) => point.leg === 2);
    expect(second && formatDay(second.firstCarAt, timeZone)).toBe('Sun 14 Jun 2026');
  });

  it('carries what a loop is beside its stages, and a service before the first', () => {
    const [first = EMPTY_LOOP] = DAY.loops;
    const remote = {
      ...repeatLoop(first),
      end: 'remoteService' as const,
      serviceMinutes: '15',
      marks: ['refuel' as const, 'again' as const],
    };
    const itinerary = understood({ days: [{ ...DAY, serviceMinutes: '10', loops: [first, remote] }] });
    expect(servicesOf(itinerary).map((service) => [service.kind, service.allowedSeconds])).toEqual([
      ['service', 600],
      ['service', 1800],
      ['remoteService', 900],
    ]);
    const ids = itinerary.points.map((point) => point.id);
    expect(ids.indexOf('RZ1')).toBe(ids.indexOf('TC3') - 1);
    expect(itinerary.points.find((point) => point.id === 'SS3')).toMatchObject({ repeatOf: 'SS1' });
  });

  it('says that a day begins too early, at that day', () => {
    const made = quickDraftToText({ days: [DAY, { ...DAY, date: '2026-06-12' }] }, SETTINGS);
    expect(made).toMatchObject({ ok: false, problems: [{ day: 1, loop: null, field: 'firstCarAt' }] });
    expect(!made.ok && made.problems[0]?.message).toMatch(
      /^Day 2 begins before day 1 has ended, at about 1\d:/,
    );
  });

  it.each([
    ['stages', ''],
    ['stages', '12.4 long'],
    ['stages', '12.4 -3'],
    ['stages', '0'],
    ['stages', '1200'],
    ['roadKm', ''],
    ['roadKm', '501'],
    ['serviceMinutes', 'half an hour'],
    ['serviceMinutes', '7.5'],
    ['serviceMinutes', '0'],
  ] as const)('says of %s %j what to write, at that field of that loop of that day', (field, typed) => {
    const loops = [...DAY.loops, { ...EMPTY_LOOP, stages: '5', roadKm: '10', [field]: typed }];
    const made = quickDraftToText({ days: [DAY, { ...DAY, loops }] }, SETTINGS);
    expect(made).toMatchObject({ ok: false, problems: [{ day: 1, loop: 2, field }] });
  });

  it.each([
    ['date', '2026-06-31x'],
    ['firstCarAt', '9 o’clock'],
    ['serviceMinutes', '301'],
  ] as const)('says of %s %j what to write, at that field of that day', (field, typed) => {
    const made = quickDraftToText({ days: [DAY, { ...DAY, [field]: typed }] }, SETTINGS);
    expect(made).toMatchObject({ ok: false, problems: [{ day: 1, loop: null, field }] });
  });

  it('waits for the settings it is worked out with', () => {
    for (const settings of [null, { ...SETTINGS, startIntervalSeconds: Number.NaN }]) {
      const made = quickDraftToText(DRAFT, settings);
      expect(made).toMatchObject({ ok: false, problems: [{ loop: null, field: 'settings' }] });
    }
  });
});

it('dates the days one after the other, or as they are given', () => {
  const days = [EMPTY_DAY, EMPTY_DAY, { ...EMPTY_DAY, date: '2026-07-04' }, EMPTY_DAY];
  expect(datesOf({ days }, '2026-06-30')).toEqual(['2026-06-30', '2026-07-01', '2026-07-04', '2026-07-05']);
  expect(dateInWords('2026-07-04')).toBe('Sat 4 Jul 2026');
  expect(dateInWords('')).toBe('');
});

it('copies a day and repeats a loop without sharing anything with them', () => {
  const loop = repeatLoop(EMPTY_LOOP);
  expect(repeatLoop(loop)).toEqual({ ...EMPTY_LOOP, marks: ['again'] });
  const day = { ...DAY, date: '2026-07-04' };
  const copy = copyDay(day);
  expect(copy).toEqual({ ...DAY, date: '' });
  expect(copy.loops[0]).not.toBe(day.loops[0]);
});
