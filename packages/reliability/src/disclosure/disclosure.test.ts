import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mayRelease as decide } from './may-release';
import { poolEvents } from './pool-events';
import { countTeams, keyOfPart, type Release, type SharedPart } from './shared-part';

function partsOf(teams: string, event = 'spring', content = 'first'): SharedPart[] {
  return [...teams].map((team) => ({ team, event, content }));
}

describe('pooling events', () => {
  it('puts events together until five teams share, and leaves the rest waiting', () => {
    const parts = [
      ...partsOf('abc', 'spring'),
      ...partsOf('bcde', 'summer'),
      ...partsOf('abcdef', 'autumn'),
      ...partsOf('ab', 'winter'),
    ];
    expect(poolEvents([], ['spring', 'summer', 'autumn', 'winter'], parts)).toEqual([
      ['spring', 'summer'],
      ['autumn'],
    ]);
  });

  it('never moves an event out of its pool, whatever is taken back', () => {
    const pools = [['spring', 'summer']];
    const parts = [...partsOf('a', 'spring'), ...partsOf('abcdef', 'autumn')];
    expect(poolEvents(pools, ['spring', 'summer', 'autumn'], parts)).toEqual([
      ['spring', 'summer'],
      ['autumn'],
    ]);
  });

  it('counts a team once, however many events it shares', () => {
    const parts = [...partsOf('abcd', 'spring'), ...partsOf('abcd', 'summer')];
    expect(poolEvents([], ['spring', 'summer'], parts)).toEqual([]);
  });
});

describe('what may be told', () => {
  const five = partsOf('abcde');

  it('tells nothing of four teams, and something of five', () => {
    expect(mayRelease(partsOf('abcd'), [])).toBe('tooFew');
    expect(mayRelease(five, [])).toBe('anew');
    expect(mayRelease(five.toReversed(), [five])).toBe('asBefore');
  });

  it('keeps the figures when a sixth team comes: the difference would be that team alone', () => {
    expect(mayRelease(partsOf('abcdef'), [five])).toBe('keepBefore');
    expect(mayRelease(partsOf('abcdefghij'), [five])).toBe('anew');
  });

  it('keeps the figures when one team corrects what it shared', () => {
    const corrected = [...partsOf('abcd'), ...partsOf('e', 'spring', 'second')];
    expect(mayRelease(corrected, [five])).toBe('keepBefore');
  });

  it('shows nothing any more when one team takes its part back', () => {
    expect(mayRelease(partsOf('abcdef'), [partsOf('abcdefg')])).toBe('withhold');
    expect(mayRelease(partsOf('abcd'), [five])).toBe('withhold');
  });

  it('looks at all that was ever told, not at the last one only', () => {
    const ten = partsOf('abcdefghij');
    // Five have gone since the last: but beside the first the sixth would stand alone.
    expect(mayRelease(partsOf('abcdef'), [five, ten])).toBe('withhold');
  });

  it('refuses what adding and subtracting several earlier ones would lay bare', () => {
    const ten = partsOf('abcdefghij');
    const third = partsOf('fghijk');
    // Each differs from each other by five teams and more, but first + third − second is team k.
    expect(mayRelease(third, [five, ten])).toBe('withhold');
  });
});

function mayRelease(now: SharedPart[], earlier: Release[]) {
  return decide(now, earlier, earlier.at(-1) ?? null);
}

/** Teams come, correct and take back, and after each change what may be told is told. */
const history = fc.array(
  fc.record({
    team: fc.constantFrom(...'abcdefghijklmno'),
    event: fc.constantFrom('spring', 'summer'),
    content: fc.constantFrom('none', 'first', 'second'),
  }),
  { minLength: 10, maxLength: 120 },
);

function releasesOf(changes: readonly SharedPart[]): Release[] {
  const shared = new Map<string, SharedPart>();
  const releases: Release[] = [];
  for (const change of changes) {
    const key = `${change.team} ${change.event}`;
    if (change.content === 'none') shared.delete(key);
    else shared.set(key, change);
    const now = [...shared.values()];
    if (mayRelease(now, releases) === 'anew') releases.push(now);
  }
  return releases;
}

it('leaves no sum of figures about one to four teams, however releases are added and subtracted', () => {
  let told = 0;
  fc.assert(
    fc.property(history, fc.array(fc.integer({ min: -2, max: 2 }), { maxLength: 12 }), (changes, factors) => {
      const releases = releasesOf(changes);
      told += releases.length;
      const weights = new Map<string, { part: SharedPart; weight: number }>();
      for (const [place, release] of releases.entries()) {
        for (const part of release) {
          const before = weights.get(keyOfPart(part))?.weight ?? 0;
          weights.set(keyOfPart(part), { part, weight: before + (factors[place] ?? 0) });
        }
      }
      const left = [...weights.values()].filter(({ weight }) => weight !== 0).map(({ part }) => part);
      expect(left.length === 0 || countTeams(left) >= 5).toBe(true);
    }),
    { numRuns: 500 },
  );
  expect(told).toBeGreaterThan(500);
});
