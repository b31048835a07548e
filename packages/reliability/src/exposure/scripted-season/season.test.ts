import { describe, expect, it } from 'vitest';
import { recurrencesOf, timesSeen } from '../car-failures';
import { exposuresOf } from '../exposures-of';
import { inLine } from '../fixtures';
import { SEASON_PARTS, scriptSeason } from './fixtures';

const CARS = Array.from({ length: 60 }, (_, index) => scriptSeason(2026 + index, `car ${index + 1}`));

describe('a scripted season of 60 cars whose exposures are known by construction', () => {
  it.each(SEASON_PARTS)('gathers every exposure of $cardId exactly', (question) => {
    for (const { history, lines } of CARS) {
      expect(exposuresOf([history], [question]).map(inLine)).toEqual(lines.get(question.cardId));
    }
  });

  it.each(SEASON_PARTS)('sees every failure of $cardId once, where it was seen', (question) => {
    for (const { history, seenAt } of CARS) {
      const before = history.ranBefore.stageMetres ?? 0;
      const expected = seenAt.get(question.cardId) ?? [];
      expect(recurrencesOf([history], question)[0]?.events.map((at) => at + before)).toEqual(expected);
      expect(timesSeen(history, question)).toMatchObject({
        times: expected.length,
        lastAt: expected.at(-1) ?? null,
      });
    }
  });

  it('holds the metre at which each failure really came between the last good place and where it was seen', () => {
    let held = 0;
    for (const { history, truths } of CARS) {
      const failed = exposuresOf([history], SEASON_PARTS).filter(({ ending }) => ending === 'failed');
      expect(failed).toHaveLength(truths.length);
      for (const { cardId, position, metre, seenAt } of truths) {
        const own = failed.filter((each) => each.cardId === cardId && each.position === position);
        const exposure = own.find(({ to }) => to === seenAt);
        expect(exposure?.goodTo).toBeLessThan(metre);
        expect(exposure?.to).toBeGreaterThanOrEqual(metre);
        held += 1;
      }
    }
    expect(held).toBeGreaterThan(500);
  });

  it('has every kind of beginning and ending in it', () => {
    const all = CARS.flatMap(({ history }) => exposuresOf([history], SEASON_PARTS));
    const endings = ['failed', 'modified', 'notFinished', 'replaced', 'restarted', 'running', 'withdrawn'];
    expect([...new Set(all.map(({ ending }) => ending))].sort()).toEqual(endings);
    const origins = ['carried', 'new', 'repaired', 'resumed', 'unknown'];
    expect([...new Set(all.map(({ origin }) => origin))].sort()).toEqual(origins);
  });
});
