import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planTelling, type SharedCopy, type ShareLevel, type ToldRelease } from './plan-telling';
import { countTeams, keyOfPart } from './shared-part';

const EVENTS = ['spring', 'summer', 'autumn'];

/** Teams written as letters: small ones share sums, capitals rows too. */
function copiesOf(teams: string, event = 'spring', sharedAt = 1): SharedCopy[] {
  return [...teams].map((letter) => ({
    ...{
      team: letter.toLowerCase(),
      event,
      content: `${letter.toLowerCase()} ${event} ${sharedAt}`,
      sharedAt,
    },
    level: letter === letter.toLowerCase() ? 'totals' : 'rows',
  }));
}

const teamsIn = (parts: readonly { team: string }[] | null) =>
  parts?.map(({ team }) => team).join('') ?? null;

function told(copies: SharedCopy[], before: readonly ToldRelease[] = []) {
  const { pools, added } = planTelling(copies, before, EVENTS);
  const seen = pools.map((pool) => [pool.events.join('+'), teamsIn(pool.totals), teamsIn(pool.rows)]);
  return { seen, all: [...before, ...added] };
}

describe('what an organiser is told', () => {
  it('tells sums from five teams on, and rows of five that agreed to rows', () => {
    expect(told(copiesOf('abCD')).seen).toEqual([]);
    expect(told(copiesOf('abCDe')).seen).toEqual([['spring', 'abcde', null]]);
    expect(told(copiesOf('ABCDE')).seen).toEqual([['spring', 'abcde', 'abcde']]);
  });

  it('lists no rows where the rest of the sums would be one team’s', () => {
    expect(told(copiesOf('ABCDEf')).seen).toEqual([['spring', 'abcdef', null]]);
    expect(told(copiesOf('ABCDEfghij')).seen).toEqual([['spring', 'abcdefghij', 'abcde']]);
  });

  it('keeps what it told when one more comes, and tells anew when five have', () => {
    const first = told(copiesOf('abcde'));
    const second = told(copiesOf('abcdef'), first.all);
    expect(second.seen).toEqual([['spring', 'abcde', null]]);
    expect(second.all).toEqual(first.all);
    expect(told(copiesOf('abcdefghij'), first.all).seen).toEqual([['spring', 'abcdefghij', null]]);
  });

  it('keeps what it told of a copy that was replaced, until it is taken back', () => {
    const first = told(copiesOf('abcde'));
    const replaced = [...copiesOf('abcde'), ...copiesOf('e', 'spring', 2)];
    expect(told(replaced, first.all).seen).toEqual([['spring', 'abcde', null]]);
    const takenBack = [...copiesOf('abcd'), ...copiesOf('e', 'spring', 2)];
    expect(told(takenBack, first.all).seen).toEqual([['spring', null, null]]);
  });

  it('shows no row any more of whoever takes the rows back but leaves the sums', () => {
    const first = told(copiesOf('ABCDE'));
    expect(told(copiesOf('aBCDE'), first.all).seen).toEqual([['spring', 'abcde', null]]);
  });

  it('puts events together that have too few each', () => {
    const copies = [...copiesOf('abc'), ...copiesOf('cde', 'summer'), ...copiesOf('ab', 'autumn')];
    expect(told(copies).seen).toEqual([['spring+summer', 'abccde', null]]);
  });
});

const change = fc.record({
  team: fc.constantFrom(...'abcdefghijklmnop'),
  event: fc.constantFrom(...EVENTS),
  level: fc.constantFrom<ShareLevel | 'nothing'>('nothing', 'totals', 'totals', 'rows', 'rows'),
});

it('never lets sums and rows, told at whatever times, be put together to fewer than five teams', () => {
  const seen = { totals: 0, rows: 0 };
  fc.assert(
    fc.property(
      fc.array(change, { minLength: 20, maxLength: 150 }),
      fc.array(fc.integer({ min: -2, max: 2 }), { minLength: 12, maxLength: 12 }),
      (changes, factors) => {
        let copies: SharedCopy[] = [];
        let all: readonly ToldRelease[] = [];
        for (const [at, { team, event, level }] of changes.entries()) {
          const isOwn = (copy: SharedCopy) => copy.team === team && copy.event === event;
          if (level === 'nothing') copies = copies.filter((copy) => !isOwn(copy));
          else copies = [...copies, { team, event, level, content: `${at}`, sharedAt: at }];
          const plan = planTelling(copies, all, EVENTS);
          all = [...all, ...plan.added];
          const there = new Set(copies.map(({ content }) => content));
          for (const pool of plan.pools) {
            for (const part of [...(pool.totals ?? []), ...(pool.rows ?? [])]) {
              expect(there.has(part.content)).toBe(true);
            }
          }
        }
        for (const { kind } of all) seen[kind] += 1;
        const weights = new Map<string, { team: string; weight: number }>();
        for (const [place, { parts }] of all.entries()) {
          for (const part of parts) {
            const weight = (weights.get(keyOfPart(part))?.weight ?? 0) + (factors[place % 12] ?? 0);
            weights.set(keyOfPart(part), { team: part.team, weight });
          }
        }
        const left = [...weights].filter(([, { weight }]) => weight !== 0);
        const teams = countTeams(left.map(([key, { team }]) => ({ team, event: '', content: key })));
        expect(left.length === 0 || teams >= 5).toBe(true);
      },
    ),
    { numRuns: 300 },
  );
  expect(seen.totals).toBeGreaterThan(200);
  expect(seen.rows).toBeGreaterThan(20);
});
