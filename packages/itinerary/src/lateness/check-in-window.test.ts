import { describe, expect, it } from 'vitest';
import { checkInWindow } from './check-in-window';
import { DEFAULT_PENALTY_RULES } from './penalty-rules';
import { serviceOutAt } from './service-out-at';

const clock = (hours: number, minutes: number, seconds = 0) => hours * 3600 + minutes * 60 + seconds;

describe('checkInWindow', () => {
  // Source: Motorsport UK National Competition Rules 2026, chapter 13.
  it('for due 11:13 is entered from 11:12:00 and on time from 11:13:00 to 11:13:59', () => {
    expect(checkInWindow(clock(11, 13), DEFAULT_PENALTY_RULES)).toEqual({
      mayEnterFrom: clock(11, 12),
      onTimeFrom: clock(11, 13),
      onTimeUntil: clock(11, 13, 59),
    });
  });

  it('cuts the seconds of a car due on the half minute', () => {
    expect(checkInWindow(clock(11, 13, 30), DEFAULT_PENALTY_RULES).onTimeFrom).toBe(clock(11, 13));
  });
});

describe('serviceOutAt', () => {
  const ask = (inWrittenAt: number, serviceOut: 'fullTime' | 'asPlanned') =>
    serviceOutAt({
      service: { allowedSeconds: 1800 },
      inWrittenAt,
      plannedOutAt: clock(13, 18),
      rules: { serviceOut },
    });

  it('is late where the car came in late, by the minute written', () => {
    expect(ask(clock(12, 48), 'fullTime')).toBe(clock(13, 18));
    expect(ask(clock(12, 54, 50), 'fullTime')).toBe(clock(13, 24));
  });

  it('stays where the event says so, and is never before the car is in', () => {
    expect(ask(clock(12, 54), 'asPlanned')).toBe(clock(13, 18));
    expect(ask(clock(13, 25), 'asPlanned')).toBe(clock(13, 25));
  });
});
