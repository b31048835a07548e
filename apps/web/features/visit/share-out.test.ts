import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Shareable, shareOut } from './share-out';

interface Named extends Shareable {
  name: string;
}

function piece(name: string, minutes: number, own: Partial<Named> = {}): Named {
  return { name, seconds: minutes * 60, people: 1, mustDo: true, ...own };
}

const names = (work: readonly Named[], people: number) =>
  shareOut(work, people).map((share) => share.work.map((each) => each.name).join(' '));

const anyWork = fc.array(
  fc.record({
    name: fc.string(),
    seconds: fc.integer({ min: 0, max: 3600 }),
    people: fc.integer({ min: 1, max: 4 }),
    mustDo: fc.boolean(),
  }),
  { maxLength: 20 },
);

describe('shareOut', () => {
  it('gives the longest first to whoever has least', () => {
    expect(names([piece('a', 2), piece('b', 4), piece('c', 3), piece('d', 5)], 2)).toEqual(['a d', 'b c']);
  });

  it('gives work for two to two people', () => {
    expect(names([piece('nuts', 3, { people: 2 }), piece('front', 4), piece('rear', 4)], 3)).toEqual([
      'nuts front',
      'rear',
      'nuts',
    ]);
  });

  it('shares out do now before if time, however long that is', () => {
    const shares = shareOut([piece('long', 60, { mustDo: false }), piece('one', 5), piece('two', 4)], 2);
    expect(shares.map((share) => share.work.map((each) => each.name))).toEqual([['one'], ['long', 'two']]);
  });

  it('gives work for two to one person when there is only one', () => {
    expect(shareOut([piece('nuts', 3, { people: 2 })], 1)).toMatchObject([{ seconds: 180 }]);
  });

  it('leaves a person without work when there is none left', () => {
    expect(names([piece('a', 2)], 3)).toEqual(['a', '', '']);
    expect(shareOut([], 2)).toEqual([
      { work: [], seconds: 0 },
      { work: [], seconds: 0 },
    ]);
  });

  it('gives every piece to exactly as many people as it needs, or to all', () => {
    fc.assert(
      fc.property(anyWork, fc.integer({ min: 1, max: 6 }), (work, people) => {
        const shares = shareOut(work, people);
        for (const each of work) {
          const holders = shares.filter((share) => share.work.includes(each)).length;
          expect(holders).toBe(Math.min(each.people, people));
        }
        for (const share of shares) {
          expect(share.seconds).toBe(share.work.reduce((sum, each) => sum + each.seconds, 0));
        }
      }),
    );
  });

  it('never leaves two people further apart than the longest piece', () => {
    fc.assert(
      fc.property(anyWork, fc.integer({ min: 1, max: 6 }), (drawn, people) => {
        const work = drawn.map((each) => ({ ...each, people: 1, mustDo: true }));
        const seconds = shareOut(work, people).map((share) => share.seconds);
        const longest = Math.max(0, ...work.map((each) => each.seconds));
        expect(Math.max(...seconds) - Math.min(...seconds)).toBeLessThanOrEqual(longest);
      }),
    );
  });

  it('does not change what it is given', () => {
    const work = Object.freeze([Object.freeze(piece('a', 1)), Object.freeze(piece('b', 2))]);
    expect(names(work, 1)).toEqual(['a b']);
  });

  it.each([0, -1, 1.5, Number.NaN])('throws a sentence for %d people', (people) => {
    expect(() => shareOut([], people)).toThrow(/^shareOut: people must be a whole number from 1/);
  });

  it('throws a sentence for a piece of half a second or for nobody', () => {
    expect(() => shareOut([piece('a', 1, { seconds: 0.5 })], 1)).toThrow(/^shareOut: seconds/);
    expect(() => shareOut([piece('a', 1, { people: 0 })], 1)).toThrow(/^shareOut: people of a piece/);
  });
});
