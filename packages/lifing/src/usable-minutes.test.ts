import { describe, expect, it } from 'vitest';
import { neededPersonSeconds } from './needed-person-seconds';
import { usableMinutes } from './usable-minutes';

describe('usableMinutes', () => {
  it('leaves two people 16 of 20 minutes, and 60 % of that as it usually turns out', () => {
    expect(usableMinutes({ allowedSeconds: 1200, people: 2 })).toEqual({
      clockSeconds: 960,
      personSeconds: 1920,
      likelyPersonSeconds: 1152,
    });
  });

  it('takes the team’s own set-up, close-up and pace', () => {
    const time = {
      allowedSeconds: 1800,
      people: 3,
      setUpSeconds: 300,
      closeUpSeconds: 200,
      pacePerMille: 333,
    };
    // 1300 × 3 = 3900; 3900 × 0.333 = 1298.7, cut
    expect(usableMinutes(time)).toEqual({
      clockSeconds: 1300,
      personSeconds: 3900,
      likelyPersonSeconds: 1298,
    });
  });

  it('is nothing in a service shorter than its set-up, or without people', () => {
    expect(usableMinutes({ allowedSeconds: 200, people: 4 }).clockSeconds).toBe(0);
    expect(usableMinutes({ allowedSeconds: 1200, people: 0 }).personSeconds).toBe(0);
  });

  it('refuses amounts that cannot be', () => {
    expect(() => usableMinutes({ allowedSeconds: -1, people: 2 })).toThrow(/usableMinutes: allowedSeconds/);
    expect(() => usableMinutes({ allowedSeconds: 1200, people: 1.5 })).toThrow(/usableMinutes: people/);
  });
});

describe('neededPersonSeconds', () => {
  it('adds clock seconds times people', () => {
    expect(neededPersonSeconds([])).toBe(0);
    expect(
      neededPersonSeconds([
        { seconds: 180, people: 2 },
        { seconds: 120, people: 1 },
      ]),
    ).toBe(480);
  });

  it('refuses amounts that cannot be', () => {
    expect(() => neededPersonSeconds([{ seconds: -1, people: 1 }])).toThrow(/neededPersonSeconds: seconds/);
  });
});
