import { describe, expect, it } from 'vitest';
import { eventOf } from './fixtures';
import type { Drive, JobCard, Surface } from './job-card';
import { judgeService } from './judge-service';
import { neededPersonSeconds } from './needed-person-seconds';
import { starterCards } from './starter-cards';
import { usableMinutes } from './usable-minutes';

const DRIVES: Drive[] = ['front', 'rear', 'four'];
const SURFACES: Surface[] = ['gravel', 'tarmac', 'snow'];
const EVERY_SET = DRIVES.flatMap((drive) => SURFACES.map((surface): [Drive, Surface] => [drive, surface]));

const ids = (cards: JobCard[]) => cards.map((card) => card.id);

describe('starterCards', () => {
  it.each(EVERY_SET)(
    '%s drive on %s: what is due at every service fits two people in 20 minutes',
    (drive, surface) => {
      const every = starterCards(drive, surface).filter((card) =>
        card.intervals.some(({ counter, every }) => counter === 'services' && every === 1),
      );
      expect(every.length).toBeGreaterThanOrEqual(7);
      const { personSeconds } = usableMinutes({ allowedSeconds: 1200, people: 2 });
      expect(personSeconds).toBe(32 * 60);
      expect(neededPersonSeconds(every)).toBeLessThanOrEqual(personSeconds);
    },
  );

  it.each(EVERY_SET)('%s drive on %s: five rounds with looks, and jobs without', (drive, surface) => {
    const cards = starterCards(drive, surface);
    expect(new Set(ids(cards)).size).toBe(cards.length);
    expect(cards.every((card) => card.id.startsWith('starter:'))).toBe(true);
    expect(cards.filter((card) => card.kind === 'round')).toHaveLength(5);
    expect(cards.every((card) => card.looks.length > 0 === (card.kind === 'round'))).toBe(true);
    expect(cards.every((card) => card.intervals.length > 0)).toBe(true);
    for (const card of cards) {
      for (const group of [card.looks, card.readings]) {
        expect(new Set(group.map((each) => each.id)).size).toBe(group.length);
      }
    }
  });

  it('looks at a propshaft on rear and four-wheel drive only, at a sump guard off tarmac only', () => {
    const looks = (drive: Drive, surface: Surface) =>
      starterCards(drive, surface).flatMap((card) => card.looks.map((look) => look.id));
    expect(looks('front', 'gravel')).not.toContain('propshaft');
    expect(looks('rear', 'gravel')).toContain('propshaft');
    expect(looks('four', 'tarmac')).toContain('propshaft');
    expect(looks('four', 'tarmac')).not.toContain('guard');
    expect(looks('four', 'gravel')).toContain('guard');
  });

  it('asks a second signature for the wheel nuts and for nothing else', () => {
    const signed = starterCards('four', 'gravel').filter((card) => card.needsSignature);
    expect(ids(signed)).toEqual(['starter:wheel-nuts']);
  });

  it('can be judged: the first service of a day gets its daily work, dust brings the air filter forward', () => {
    const event = eventOf([
      { service: 20 },
      { stage: 'SS1', metres: 20_000, road: 5_000 },
      { stage: 'SS2', metres: 16_000, road: 5_000 },
      { service: 20, road: 5_000 },
      { finish: true },
    ]);
    const judgeAtStart = (dust: number) => {
      const conditions = new Map(['SS1', 'SS2'].map((id) => [id, { dust }]));
      const verdicts = judgeService({
        ...event,
        serviceIndex: 0,
        position: 1,
        cards: starterCards('four', 'gravel'),
        lastDone: new Map(),
        runs: new Map(),
        plannedConditions: conditions,
      });
      return new Map(verdicts.map((each) => [each.cardId, each.verdict]));
    };
    expect(judgeAtStart(0).get('starter:gearbox-oil')).toBe('doNow');
    expect(judgeAtStart(0).get('starter:night-lamps')).toBe('leave');
    expect(judgeAtStart(0).get('starter:air-filter')).toBe('leave');
    // 36 km twice as fast: 72 is more than 60 + 5
    expect(judgeAtStart(1000).get('starter:air-filter')).toBe('doNow');
  });

  it('hands out fresh cards each time', () => {
    const [first] = starterCards('four', 'gravel');
    first?.intervals.push({ counter: 'days', every: 1, tolerance: 0 });
    first?.looks.pop();
    const again = starterCards('four', 'gravel')[0];
    expect(again?.intervals).toHaveLength(1);
    expect(again?.looks.length).toBe((first?.looks.length ?? 0) + 1);
    expect(starterCards('four', 'gravel')[1]?.intervals).toHaveLength(1);
  });
});
