import type { PartOutline } from '@halfshaft/contract';
import type { JobCard } from '@halfshaft/lifing';
import { adviseLimit, type LifeObservation } from '@halfshaft/reliability';
import { describe, expect, it } from 'vitest';
import { adviceInWords, lastsInWords, suggestedEvery } from './advice-in-words';
import { drivenInFigures, drivenInWords } from './amount-driven';
import { leftOutInWords, unfitInWords } from './left-out-in-words';
import { drawLives, shareInWords } from './life-points';
import { partRows, placeRows } from './place-rows';
import { seenInWords } from './seen-in-words';
import { trendInWords } from './trend-in-words';
import { withLimit } from './with-limit';

const NONE = { ageUnknown: 0, enteredLate: 0, failedWhenNew: 0, neverLooked: 0 };

function partOf(ats: readonly number[], more: Partial<PartOutline> = {}): PartOutline {
  return {
    ...{ partId: 'pads', cardId: 'pads', name: 'Pads', roundName: null, place: 'allCorners' },
    ...{ removed: false, counter: 'stageMetres', every: 60_000, renews: true, watched: 210_000 },
    failures: ats.map((at) => ({ at, eventId: 'e', position: null })),
    lives: { observations: [], leftOut: NONE },
    ...more,
  };
}

describe('amounts', () => {
  it.each([
    ['stageMetres', 37_300, '37 stage km'],
    ['stageMetres', 7_250, '7.3 stage km'],
    ['stageMetres', 20, '0.1 stage km'],
    ['stageMetres', 0, '0 stage km'],
    ['totalMetres', 640_400, '640 km'],
    ['engineSeconds', 9_100, '2.5 engine hours'],
    ['stages', 1, '1 stage'],
  ] as const)('%s %d is %s', (counter, amount, words) => {
    expect(drivenInWords(counter, amount)).toBe(words);
  });

  it('leaves the unit away where it stands already', () => {
    expect(drivenInFigures('stageMetres', 37_300)).toBe('37');
  });
});

describe('seenInWords', () => {
  it('says how often, in how far, and where last', () => {
    expect(seenInWords(partOf([20_000, 90_000, 180_000]))).toBe(
      'Seen 3 times in 210 stage km; last at 180 stage km.',
    );
    expect(seenInWords(partOf([20_000]))).toBe('Seen once in 210 stage km; last at 20 stage km.');
  });
});

describe('trendInWords', () => {
  it.each([
    ['too few', [10_000, 200_000], 'Too few to say whether it gets better or worse.'],
    ['none driven', [0, 0, 0, 0], 'Too few to say whether it gets better or worse.'],
    ['bunched at the end', [180, 185, 190, 195, 200, 205].map((km) => km * 1000), 'More often lately.'],
    ['bunched at the beginning', [5, 10, 15, 20, 25, 30].map((km) => km * 1000), 'Less often lately.'],
    ['later than sooner', [60_000, 150_000, 180_000, 200_000], 'More often lately; may be chance.'],
    ['sooner than later', [10_000, 30_000, 60_000, 150_000], 'Less often lately; may be chance.'],
    ['even', [30_000, 70_000, 105_000, 140_000, 180_000], 'About as often as before.'],
  ])('%s', (_, ats, words) => {
    expect(trendInWords(partOf(ats))).toBe(words);
  });
});

const failedAt = (...distances: number[]): LifeObservation[] =>
  distances.map((distance) => ({ kind: 'failedAt', distance }));
const advised = (observations: readonly LifeObservation[]) => {
  const advice = adviseLimit(observations);
  if (!advice.ok) throw new Error(advice.says);
  return advice;
};

describe('advice', () => {
  const advice = advised(failedAt(48_000, 55_000, 60_000, 66_000, 71_000, 80_000));

  it('stands beside the limit the card has, and never without how far off it may be', () => {
    const words = adviceInWords(partOf([]), advice);
    expect(words).toMatch(
      /^Every 60 stage km now; the log suggests \d+ stage km \(\d+ to \d+\): by then 9 of 10 are still good\.$/,
    );
    const [, suggested, low, high] = /suggests (\d+) .*\((\d+) to (\d+)\)/.exec(words)?.map(Number) ?? [];
    expect(suggested).toBe(suggestedEvery(partOf([]), advice) / 1000);
    expect(low).toBeLessThan(suggested ?? 0);
    expect(high).toBeGreaterThan(suggested ?? 0);
    expect(adviceInWords(partOf([], { every: null }), advice)).toMatch(/^No limit now; the log suggests/);
    expect(lastsInWords(partOf([]), advice)).toMatch(
      /^9 of 10 are still good after \d+ stage km \(\d+ to \d+\)\.$/,
    );
    const endless = { ...advice, distance: 45_000, bounds: { low: 32_000, high: null } };
    expect(lastsInWords(partOf([]), endless)).toBe('9 of 10 are still good after 45 stage km (32 or more).');
  });

  it('is drawn from all good on downwards, with the lives on the axis', () => {
    const observations: LifeObservation[] = [
      ...failedAt(50_000, 60_000),
      { kind: 'failedBetween', after: 30_000, before: 70_000 },
      { kind: 'goodAt', distance: 90_000 },
    ];
    const drawing = drawLives(partOf([], { lives: { observations, leftOut: NONE } }), advised(observations));
    expect(drawing.points[0]).toMatchObject({ x: 0, y: 1 });
    const shares = drawing.points.map(({ y }) => y);
    expect(shares).toEqual(shares.toSorted((one, other) => other - one));
    for (const { y, low, high } of drawing.points) {
      expect(low).toBeLessThanOrEqual(y);
      expect(high).toBeGreaterThanOrEqual(y);
    }
    expect(drawing.marks).toEqual([
      { x: 50_000, filled: true },
      { x: 60_000, filled: true },
      { x: 70_000, filled: true },
      { x: 90_000, filled: false },
    ]);
    expect(drawing.end).toBeGreaterThan(90_000);
    expect(shareInWords(0.87)).toBe('9 of 10');
  });

  it('says how many more failures it needs, by what the fit itself asks for', () => {
    const wordsOf = (...distances: number[]) => {
      const observations = failedAt(...distances);
      const advice = adviseLimit(observations);
      return advice.ok
        ? 'fitted'
        : unfitInWords({ lives: { observations, leftOut: NONE }, renews: true }, advice);
    };
    expect(wordsOf()).toMatch(/of those watched from new none failed, and 3 are needed\.$/);
    expect(wordsOf(40_000, 50_000)).toMatch(/of those watched from new 2 failed, and 3 are needed\.$/);
    expect(wordsOf(40_000, 50_000, 70_000)).toBe('fitted');
    expect(wordsOf(1, 2, 40_000, 300_000)).toMatch(/^How long it lasts: It fails by chance/);
  });

  it('says of a part that no card fits, such as what a round looks at, how the log comes to know of new ones', () => {
    const wordsOf = (renews: boolean, ...distances: number[]) => {
      const observations = failedAt(...distances);
      const advice = adviseLimit(observations);
      return advice.ok ? 'fitted' : unfitInWords({ lives: { observations, leftOut: NONE }, renews }, advice);
    };
    const how = 'A new one counts from where a finding says that it went on.';
    expect(wordsOf(false)).toContain(how);
    expect(wordsOf(true)).not.toContain(how);
    expect(wordsOf(false, 40_000)).not.toContain(how);
  });

  it('says which parts it could not count', () => {
    const leftOut = { ...NONE, ageUnknown: 3, neverLooked: 1 };
    expect(leftOutInWords({ lives: { observations: [], leftOut } })).toBe(
      'Parts left out: 3 because nobody knows how old they were when the log began; 1 because nobody has looked at them yet.',
    );
    expect(leftOutInWords({ lives: { observations: [], leftOut: NONE } })).toBe('');
  });
});

describe('rows', () => {
  const hose = partOf([1000, 2000], { partId: 'hose', name: 'Hose', place: 'engineBay' });
  const at = (position: string) => ({ at: 1000, eventId: 'e', position });
  const pads = partOf([], { failures: [at('FL'), at('FL inner'), at('RR')] });

  it('counts by part, the most frequent first', () => {
    expect(partRows({ parts: [hose, pads] })).toMatchObject([
      { name: 'Pads', amount: 3, words: '3 times' },
      { name: 'Hose', amount: 2, words: '2 times' },
    ]);
  });

  it('counts by place: the corner that was said, else the place of the card, with the snags', () => {
    const snags = [
      { place: 'frontLeft', times: 2 },
      { place: 'behind the seat', times: 1 },
    ];
    expect(placeRows({ parts: [hose, pads], snags })).toMatchObject([
      { name: 'Front left', amount: 4 },
      { name: 'Engine bay', amount: 2 },
      { name: 'behind the seat', words: 'once' },
      { name: 'Rear right', words: 'once' },
    ]);
  });
});

describe('withLimit', () => {
  const card = {
    ...{ id: 'c', name: 'Pads', instruction: 'Both sides.' },
    intervals: [
      { counter: 'stageMetres', every: 60_000, tolerance: 5000 },
      { counter: 'days', every: 2, tolerance: 0 },
    ],
  } as JobCard;
  const change = { counter: 'stageMetres', every: 45_000, note: ' By the log. ' } as const;

  it('changes that limit alone and leaves a note behind the instruction', () => {
    const changed = withLimit(card, change);
    expect(changed).toMatchObject({ ok: true, card: { instruction: 'Both sides. By the log.' } });
    expect(changed.ok && changed.card.intervals).toEqual([
      { counter: 'stageMetres', every: 45_000, tolerance: 5000 },
      { counter: 'days', every: 2, tolerance: 0 },
    ]);
    expect(changed.ok && 'id' in changed.card).toBe(false);
    expect(card.intervals[0]?.every).toBe(60_000);
  });

  it('adds a limit to a card that has none on that counter', () => {
    const changed = withLimit({ ...card, intervals: [] }, change);
    expect(changed.ok && changed.card.intervals).toEqual([
      { counter: 'stageMetres', every: 45_000, tolerance: 0 },
    ]);
  });

  it('refuses what is no limit and a note that does not fit', () => {
    for (const every of [0, -1, Number.NaN, 1.5, 20_000_000]) {
      expect(withLimit(card, { ...change, every })).toMatchObject({ ok: false });
    }
    expect(withLimit(card, { ...change, note: 'x'.repeat(600) })).toMatchObject({ ok: false });
  });
});
