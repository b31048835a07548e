import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyItinerary, goodItinerary, TWO_LEGS } from '../fixtures';
import type { Itinerary, Point } from '../model';
import { changeInWords } from './change-in-words';
import { type CompareOptions, compareItineraries } from './compare-itineraries';

const before = goodItinerary(TWO_LEGS);

const copyOf = (itinerary: Itinerary): Itinerary => JSON.parse(JSON.stringify(itinerary));

function amended(...edits: [from: string | RegExp, to: string][]): Itinerary {
  // Sums are beside the point here.
  const rows = TWO_LEGS.split('\n')
    .filter((line) => !/^(?:leg |event )?total;/i.test(line))
    .join('\n');
  return goodItinerary(edits.reduce((text, [from, to]) => text.replace(from, to), rows));
}

const inWords = (after: Itinerary, options?: CompareOptions) =>
  compareItineraries(before, after, options).map(changeInWords);

describe('an amendment in sentences', () => {
  it('has nothing to say of the same itinerary', () => {
    expect(compareItineraries(before, copyOf(before))).toEqual([]);
  });

  it('names a cancelled stage, its kilometres and the times that follow', () => {
    const after = amended(
      [/SS6;.*\n/, ''],
      ['22,10;34,15;0:50;10:10', '22,10;22,10;0:50;10:07'],
      ['0:20;10:30', '0:23;10:30'],
    );
    expect(inWords(after)).toEqual([
      'SS6 Kalte Rinne is cancelled: 12.05 km of stage less.',
      'TC6A is 3 min earlier: 10:07 instead of 10:10.',
      'From RZ2 to the finish it is 12.05 km less, 168.13 km instead of 180.18 km without a refuel.',
      'The target time of TC6B is 23 min instead of 20 min.',
    ]);
  });

  it('says what a stage repeats, but not that it no longer repeats a cancelled one', () => {
    const stage = (id: string, repeatOf: string | null): Point => {
      const stages = before.points.filter((point) => point.kind === 'stage');
      return { ...(stages.find((point) => point.id === id) as Point & { kind: 'stage' }), repeatOf };
    };
    const withStage = (repeatOf: string | null) => ({
      ...before,
      points: before.points.map((point) => (point.id === 'SS6' ? stage('SS6', repeatOf) : point)),
    });
    const first = before.points.find((point) => point.kind === 'stage')?.id ?? '';
    const words = (from: Itinerary, to: Itinerary) => compareItineraries(from, to).map(changeInWords);
    expect(words(withStage(null), withStage(first))).toEqual([`SS6 repeats ${first}.`]);
    expect(words(withStage(first), withStage(null))).toEqual([`SS6 no longer repeats ${first}.`]);
    const cancelled = withStage(null);
    const rest = { ...cancelled, points: cancelled.points.filter(({ id }) => id !== first) };
    expect(words(withStage(first), rest).filter((sentence) => sentence.includes('repeats'))).toEqual([]);
  });

  it('names a service that gains minutes and what is later for it', () => {
    const after = amended(
      ['TC6E;Service out;;;;0:30;11:08', 'TC6E;Service out;;;;0:42;11:20'],
      ['11:53', '12:05'],
      ['11:56', '12:08'],
      ['12:54', '13:06'],
    );
    expect(inWords(after)).toEqual([
      'Service D (TC6D) gains 12 min: 42 min instead of 30 min.',
      'Everything from TC6E to TC7A is 12 min later: TC6E at 11:20 instead of 11:08.',
    ]);
  });

  it('names a service that loses minutes, one that is gone and one that is new', () => {
    const shorter = amended(['0:45;17:39', '0:35;17:29'], ['0:10;17:49', '0:20;17:49']);
    expect(inWords(shorter)[0]).toBe('Service B (TC4B) loses 10 min: 35 min instead of 45 min.');
    const gone = amended(['Regroup out / Service in', 'Regroup out'], ['TC4C;Service out', 'TC4C;Control']);
    expect(inWords(gone)).toEqual([
      'Service B (TC4B) is cancelled: 45 min of service less.',
      'TC4B is called “Regroup out” instead of “Regroup out / Service in”.',
      'TC4B is regroup out instead of regroup out / service in.',
      'TC4C is called “Control” instead of “Service out”.',
      'TC4C is time control instead of service out.',
    ]);
    expect(compareItineraries(gone, before).map(changeInWords)[0]).toBe('Service B (TC4B) is new: 45 min.');
  });

  it('names a shorter stage, a longer road and the stretches between refuels', () => {
    const after = amended(
      ['SS3;Hochmoos (II);9,80;;9,80', 'SS3;Hochmoos (II);6,60;;6,60'],
      ['TC4;Steinbruch;;11,20;21,00', 'TC4;Steinbruch;;13,20;19,80'],
    );
    expect(inWords(after)).toEqual([
      'SS3 is 3.20 km shorter, 6.60 km instead of 9.80 km.',
      'From RZ1 to RZ2 it is 1.20 km less, 131.30 km instead of 132.50 km without a refuel.',
      'The road to TC4 is 2.00 km longer, 13.20 km instead of 11.20 km.',
    ]);
  });

  it('names start order and intervals, and the times of this car', () => {
    const after: Itinerary = {
      ...before,
      startBlocks: before.startBlocks.map((block) =>
        block.section === 2 ? { ...block, intervalSeconds: 120 } : block,
      ),
    };
    expect(inWords(after, { position: 3 })).toEqual([
      'Everything from TC4B to TC4D is 2 min later: TC4B at 16:58 instead of 16:56.',
      'In section 2, cars start 2 min apart instead of 1 min.',
    ]);
    const moved = inWords(before, {
      position: 12,
      positionAfter: new Map([
        [1, 12],
        [3, 9],
      ]),
    });
    expect(moved).toEqual([
      'Everything from TC4E to TC7A is 3 min earlier: TC4E at 07:38 instead of 07:41.',
      'From section 3 on, this car starts in position 9 instead of 12.',
    ]);
  });

  it('names a new stage, new controls, a new refuel and a new order', () => {
    const after = amended(
      [
        'TC7A;Finish',
        'TC8;Moos;;12,00;28,65;0:30;12:26\nSS8;Moos;5,20;;5,20;;12:29\nRZ3;Refuel;;1,00;;\nTC7A;Finish',
      ],
      ['42,65;0:58', ';0:58'],
      ['12:54', '13:27'],
    );
    expect(inWords(after)).toEqual([
      'SS8 Moos is new after TC8: 5.20 km of stage more.',
      'TC7A is 33 min later: 13:27 instead of 12:54.',
      'From RZ2 to RZ3 it is now 172.38 km without a refuel.',
      'From RZ3 to the finish it is now 26.00 km without a refuel.',
      'TC8 Moos is a new control after SS7.',
      'RZ3 Refuel is a new control after SS8.',
    ]);
    const swapped = {
      ...before,
      points: before.points.toSpliced(1, 2, before.points[2] as Point, before.points[1] as Point),
    };
    expect(inWords(swapped)).toContain('RZ1 is now after TC1.');
  });

  it('names a day’s move with the day', () => {
    const after = amended(['Leg 2, 2026-06-13', 'Leg 2, 2026-06-14']);
    expect(inWords(after)).toEqual([
      'Everything from TC4E to TC7A is 24 h later: TC4E at 07:30 on Sun 14 Jun 2026 instead of 07:30 on Sat 13 Jun 2026.',
    ]);
  });
});

describe('any two itineraries', () => {
  /** One field of one point, block or the whole, changed. */
  const edit = fc.tuple(
    fc.nat(),
    fc.constantFrom(
      'at',
      'metres',
      'allowed',
      'gap',
      'name',
      'roles',
      'section',
      'leg',
      'repeat',
      'drop',
      'block',
      'from',
      'zone',
      'swap',
    ),
    fc.integer({ min: 1, max: 9 }),
  );

  function edited(itinerary: Itinerary, [at, what, by]: [number, string, number]): Itinerary {
    const index = at % itinerary.points.length;
    const point = itinerary.points[index] as Point;
    const withPoint = (changed: Point) => ({ ...itinerary, points: itinerary.points.with(index, changed) });
    const isStage = point.kind === 'stage';
    switch (what) {
      case 'at':
        return withPoint({ ...point, firstCarAt: point.firstCarAt + by });
      case 'metres':
        return withPoint(
          isStage
            ? { ...point, stageMetres: point.stageMetres + by }
            : { ...point, roadMetres: point.roadMetres + by },
        );
      case 'allowed':
        return withPoint(isStage ? point : { ...point, allowedSeconds: (point.allowedSeconds ?? 0) + by });
      case 'gap':
        return withPoint(isStage ? { ...point, gapSeconds: point.gapSeconds + by } : point);
      case 'name':
        return withPoint({ ...point, name: `${point.name}${by}` });
      case 'roles':
        return withPoint(isStage ? point : { ...point, roles: [...point.roles, 'technicalIn'] });
      case 'section':
        return withPoint({ ...point, section: point.section + by });
      case 'leg':
        return withPoint({ ...point, leg: point.leg + by });
      case 'repeat':
        return withPoint(isStage ? { ...point, repeatOf: `SS9${by}` } : point);
      case 'drop':
        return { ...itinerary, points: itinerary.points.toSpliced(index, 1) };
      case 'block':
        return {
          ...itinerary,
          startBlocks: itinerary.startBlocks.map((block, order) =>
            order === at % itinerary.startBlocks.length
              ? { ...block, intervalSeconds: block.intervalSeconds + by }
              : block,
          ),
        };
      case 'from':
        return {
          ...itinerary,
          roadTimedFrom: itinerary.roadTimedFrom === 'stageStart' ? 'stageFinish' : 'stageStart',
        };
      case 'zone':
        return { ...itinerary, timeZone: 'Asia/Tokyo' };
      default: {
        const other = (index + by) % itinerary.points.length;
        return {
          ...itinerary,
          points: itinerary.points.with(index, itinerary.points[other] as Point).with(other, point),
        };
      }
    }
  }

  it('give no change if and only if they are equal, and every change is a sentence with a figure or a name', () => {
    fc.assert(
      fc.property(anyItinerary, edit, fc.integer({ min: 1, max: 40 }), (itinerary, change, position) => {
        expect(compareItineraries(itinerary, copyOf(itinerary), { position })).toEqual([]);
        const after = edited(itinerary, change);
        const changes = compareItineraries(itinerary, after, { position });
        expect(changes.length > 0).toBe(JSON.stringify(after) !== JSON.stringify(itinerary));
        for (const sentence of changes.map(changeInWords))
          expect(sentence).toMatch(/^\p{Lu}.*(?:\d|instead|no ).*\.$/su);
      }),
      { numRuns: 150 },
    );
  }, 60_000);
});
