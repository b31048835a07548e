import { formatClock, servicesOf } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { checkText } from './check-text';
import { EMPTY_LOOP, QUICK_TIMING, type QuickDraft, quickDraftToText } from './quick-draft';

const SETTINGS = {
  timeZone: 'Europe/Vienna',
  startsOn: '2026-06-12',
  startIntervalSeconds: 120,
  defaultGapSeconds: 240,
  // Of a text that was pasted before; a quick form has its own.
  roadTimedFrom: 'stageFinish' as const,
  printedFor: 'carZero' as const,
};
const DRAFT: QuickDraft = {
  firstCarAt: '08:30',
  loops: [
    { stages: '12,4 8.1', roadKm: '60', serviceMinutes: '30' },
    { stages: '12.4, 8.1 + 5', roadKm: '62,5', serviceMinutes: '' },
  ],
};

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
  ] as const)('says of %s %j what to write, at that field of that loop', (field, typed) => {
    const loops = [...DRAFT.loops, { ...EMPTY_LOOP, stages: '5', roadKm: '10', [field]: typed }];
    const made = quickDraftToText({ ...DRAFT, loops }, SETTINGS);
    expect(made).toMatchObject({ ok: false, problems: [{ loop: 2, field }] });
  });

  it('waits for the settings it is worked out with', () => {
    for (const settings of [null, { ...SETTINGS, startIntervalSeconds: Number.NaN }]) {
      const made = quickDraftToText(DRAFT, settings);
      expect(made).toMatchObject({ ok: false, problems: [{ loop: null, field: 'settings' }] });
    }
  });

  it('wants a time of day for the first car', () => {
    const made = quickDraftToText({ ...DRAFT, firstCarAt: '9 o’clock' }, SETTINGS);
    expect(made).toMatchObject({ ok: false, problems: [{ loop: null, field: 'firstCarAt' }] });
  });
});
