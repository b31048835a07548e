import { describe, expect, it } from 'vitest';
import { changesInWords, issuedInWords, whoAccepts } from './bulletin-words';

const car = (changes: string[], jobs: string[]) => ({ carNumber: '7', changes, jobs });

describe('changesInWords', () => {
  it.each([
    [[], [], 'It changes nothing in your itinerary.'],
    [['SS2 is cancelled.'], [], 'It changes 1 thing for you.'],
    [
      ['SS2 is cancelled.'],
      [car(['TC3 is later.'], ['Pads: no longer due.']), car([], [])],
      'It changes 3 things for you.',
    ],
  ])('of %j and %j says "%s"', (changes, cars, words) => {
    expect(changesInWords({ changes, cars })).toBe(words);
  });
});

describe('issuedInWords', () => {
  it('goes by the zone of the event', () => {
    expect(issuedInWords(1_781_331_180_999, 'Europe/Vienna')).toBe('issued Sat 13 Jun 2026, 08:13');
    expect(issuedInWords(1_781_331_180_999, 'Europe/London')).toBe('issued Sat 13 Jun 2026, 07:13');
  });
});

describe('whoAccepts', () => {
  const person = (
    name: string,
    membership: { role: 'admin' | 'manager' | 'mechanic'; ends?: true } | null,
  ) => ({
    personId: name,
    name,
    initials: '',
    membership: membership && {
      membershipId: name,
      role: membership.role,
      eventId: null,
      revokedAt: membership.ends ? 1 : null,
    },
  });

  it('names those who manage the team, and nobody who left or only helps', () => {
    const [ida, ned] = [person('Ida', { role: 'admin' }), person('Ned', { role: 'manager' })];
    const others = [
      person('Joss', { role: 'mechanic' }),
      person('Una', { role: 'manager', ends: true }),
      person('Kit', null),
    ];
    expect(whoAccepts([ida, ...others, ned])).toBe('A manager accepts it for the team: Ida or Ned.');
    expect(whoAccepts([...others, ned])).toBe('A manager accepts it for the team: Ned.');
    expect(whoAccepts(others)).toBe('A manager accepts it for the team.');
  });
});
