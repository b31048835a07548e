import { describe, expect, it } from 'vitest';
import { eventClockAhead, eventSeconds } from './event-seconds';

const source = { serverTime: 1_781_331_180_400, clockOffsetSeconds: 3 };

describe('eventSeconds', () => {
  it('is the server clock plus the offset at the moment the event arrived', () => {
    expect(eventSeconds(source, 5_000, 5_000)).toBe(1_781_331_183);
  });

  it('goes on with the time elapsed on this device, whatever that clock shows', () => {
    expect(eventSeconds(source, 5_000, 5_000 + 599)).toBe(1_781_331_183);
    expect(eventSeconds(source, 5_000, 5_000 + 600)).toBe(1_781_331_184);
    expect(eventSeconds(source, 9_999_999_999_000, 9_999_999_999_000 + 60_000)).toBe(1_781_331_243);
  });

  it('takes an event clock that runs behind the server', () => {
    expect(eventSeconds({ serverTime: 10_000, clockOffsetSeconds: -4 }, 0, 0)).toBe(6);
  });
});

describe('eventClockAhead', () => {
  it('is what to add to the clock of this device', () => {
    expect(eventClockAhead({ serverTime: 60_000, clockOffsetSeconds: 2 }, 50_000)).toBe(12_000);
  });
});
