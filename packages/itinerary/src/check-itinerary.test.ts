import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkItinerary } from './check-itinerary';
import { goodItinerary, TWO_LEGS } from './fixtures';
import type { ControlPoint, Itinerary, StagePoint } from './model';

const good = goodItinerary(TWO_LEGS);

function withControl(id: string, change: Partial<ControlPoint>): Itinerary {
  return {
    ...good,
    points: good.points.map((point) =>
      point.kind === 'control' && point.id === id ? { ...point, ...change } : point,
    ),
  };
}

function withStage(id: string, change: Partial<StagePoint>): Itinerary {
  return {
    ...good,
    points: good.points.map((point) =>
      point.kind === 'stage' && point.id === id ? { ...point, ...change } : point,
    ),
  };
}

const BAD: { title: string; itinerary: Itinerary; id: string | null; code: string }[] = [
  { title: 'no points', itinerary: { ...good, points: [] }, id: null, code: 'empty-table' },
  { title: 'an unknown zone', itinerary: { ...good, timeZone: 'Mars/Base' }, id: null, code: 'zone-unknown' },
  {
    title: 'a time that is none',
    itinerary: withControl('TC0', { firstCarAt: Number.NaN }),
    id: 'TC0',
    code: 'time-malformed',
  },
  {
    title: 'a time out of all bounds',
    itinerary: withControl('TC0', { firstCarAt: 1e15 }),
    id: 'TC0',
    code: 'time-malformed',
  },
  {
    title: 'a time before the one before',
    itinerary: withControl('TC3', { firstCarAt: 0, allowedSeconds: null }),
    id: 'TC3',
    code: 'time-backwards',
  },
  {
    title: 'a target time at odds',
    itinerary: withControl('TC3', { allowedSeconds: 1560 }),
    id: 'TC3',
    code: 'time-mismatch',
  },
  {
    title: 'an endless target time',
    itinerary: withControl('TC3', { allowedSeconds: 1e15 }),
    id: 'TC3',
    code: 'target-absurd',
  },
  {
    title: 'parts of a metre',
    itinerary: withControl('TC3', { roadMetres: 14.5 }),
    id: 'TC3',
    code: 'number-malformed',
  },
  {
    title: 'negative road',
    itinerary: withControl('TC3', { roadMetres: -1 }),
    id: 'TC3',
    code: 'km-negative',
  },
  {
    title: 'a stage without length',
    itinerary: withStage('SS3', { stageMetres: 0 }),
    id: 'SS3',
    code: 'stage-km-missing',
  },
  {
    title: 'a negative gap',
    itinerary: withStage('SS3', { gapSeconds: -60 }),
    id: 'SS3',
    code: 'gap-absurd',
  },
  {
    title: 'a name of no kind',
    itinerary: withControl('TC3', { id: 'three' }),
    id: 'three',
    code: 'id-malformed',
  },
  { title: 'a stage twice', itinerary: withStage('SS3', { id: 'SS1' }), id: 'SS1', code: 'duplicate-id' },
  {
    title: 'a control without a role',
    itinerary: withControl('TC3', { roles: [] }),
    id: 'TC3',
    code: 'roles-malformed',
  },
  {
    title: 'a control without a name',
    itinerary: withControl('TC3', { name: ' ' }),
    id: 'TC3',
    code: 'name-missing',
  },
  {
    title: 'a repeat of a later stage',
    itinerary: withStage('SS1', { repeatOf: 'SS3' }),
    id: 'SS1',
    code: 'repeat-unknown',
  },
  {
    title: 'a service nobody leaves',
    itinerary: withControl('TC4C', { roles: ['timeControl'] }),
    id: 'TC4B',
    code: 'service-without-out',
  },
  {
    title: 'a leg skipped',
    itinerary: { ...good, points: good.points.map((point) => ({ ...point, leg: point.leg + 1 })) },
    id: 'TC0',
    code: 'leg-out-of-order',
  },
  {
    title: 'a section backwards',
    itinerary: withControl('TC7A', { section: 1 }),
    id: 'TC7A',
    code: 'section-order',
  },
  {
    title: 'an interval of no time',
    itinerary: { ...good, startBlocks: [{ section: 2, fromPosition: 1, intervalSeconds: 0 }] },
    id: 'TC4B',
    code: 'interval-absurd',
  },
  {
    title: 'a block of no section',
    itinerary: { ...good, startBlocks: [{ section: 9, fromPosition: 1, intervalSeconds: 60 }] },
    id: null,
    code: 'interval-malformed',
  },
];

describe('checkItinerary', () => {
  it('has nothing to say about a good one, nor changes it', () => {
    const before = JSON.stringify(good);
    expect(checkItinerary(good)).toEqual([]);
    expect(JSON.stringify(good)).toBe(before);
  });

  it.each(BAD)('finds $title', ({ itinerary, id, code }) => {
    const problems = checkItinerary(itinerary);
    const found = problems.filter((problem) => problem.code === code);
    expect(found.length).toBeGreaterThan(0);
    expect(found.every((problem) => problem.severity === 'error' && problem.column === null)).toBe(true);
    const ids = found.map((problem) =>
      problem.row === null ? null : (itinerary.points[problem.row - 1]?.id ?? null),
    );
    expect(ids).toContain(id);
  });

  it('accepts a clock cut to the minute where the target time gives seconds', () => {
    const gap = withStage('SS6', {
      gapSeconds: 210,
      firstCarAt: (good.points.find((point) => point.id === 'SS6')?.firstCarAt ?? 0) + 30,
    });
    expect(checkItinerary(gap).filter((problem) => problem.severity === 'error')).toEqual([]);
  });

  it('answers whatever number stands in whatever field, and says so when it is nonsense', () => {
    const fields = [
      'leg',
      'section',
      'firstCarAt',
      'roadMetres',
      'stageMetres',
      'gapSeconds',
      'allowedSeconds',
    ];
    const nonsense = fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -1, 0.5, 1e15, 1e300, -1e300);
    fc.assert(
      fc.property(
        fc.nat(good.points.length - 1),
        fc.constantFrom(...fields),
        nonsense,
        fc.boolean(),
        (at, field, value, fromStart) => {
          const points = good.points.map((point, index) =>
            index === at && field in point ? { ...point, [field]: value } : point,
          );
          const roadTimedFrom = fromStart ? 'stageStart' : 'stageFinish';
          const errors = checkItinerary({ ...good, points, roadTimedFrom }).filter(
            (one) => one.severity === 'error',
          );
          if (fromStart && field in (good.points[at] ?? {})) expect(errors.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 400 },
    );
  }, 60_000);
});
