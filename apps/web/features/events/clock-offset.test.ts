import { describe, expect, it } from 'vitest';
import { EIGHT_OCLOCK, MIA, replicaOf } from '../work/fixtures';
import { likelyMinutes, offsetInWords, readClockOffset } from './clock-offset';

const RECEIVED = 1_000_000;
/** The fixture's event stands in UTC; the server said eight o'clock when the event came. */
const event = replicaOf(MIA, { serverTime: EIGHT_OCLOCK * 1000, clockOffsetSeconds: 0 });
const after = (seconds: number) => ({ receivedAt: RECEIVED, pressedAt: RECEIVED + seconds * 1000 });
const { timeZone } = event.itinerary;

describe('readClockOffset', () => {
  it('is what the control shows minus what ours shows, the minute having just begun', () => {
    expect(
      readClockOffset(event, { text: likelyMinutes(EIGHT_OCLOCK, timeZone)[1] ?? '', ...after(25) }),
    ).toBe(35);
    expect(
      readClockOffset(event, { text: likelyMinutes(EIGHT_OCLOCK, timeZone)[0] ?? '', ...after(12) }),
    ).toBe(-12);
  });

  it('takes seconds where they are shown, rounds ours, and corrects what was set before', () => {
    const [minute = ''] = likelyMinutes(EIGHT_OCLOCK, timeZone);
    expect(readClockOffset(event, { text: `${minute}:45`, ...after(40.4) })).toBe(5);
    const ahead = { ...event, clockOffsetSeconds: 35 };
    expect(readClockOffset(ahead, { text: `${minute}:45`, ...after(20) })).toBe(25);
    expect(
      readClockOffset({ ...event, clockOffsetSeconds: 86_400 }, { text: `${minute}:45`, ...after(40) }),
    ).toBe(86_405);
  });

  it('takes the nearer way over midnight', () => {
    const atNight = replicaOf(MIA, { serverTime: Date.UTC(2026, 5, 13, 23, 59, 50) });
    const utc = { ...atNight, itinerary: { ...atNight.itinerary, timeZone: 'UTC' } };
    expect(readClockOffset(utc, { text: '0:00', ...after(0) })).toBe(10);
  });

  it.each(['', 'now', '24:00', '10:60', '10:23:60', '1023'])('is no time of day: %j', (text) => {
    expect(readClockOffset(event, { text, ...after(0) })).toBeNull();
  });
});

describe('offsetInWords', () => {
  it('says which is ahead', () => {
    expect(offsetInWords(0)).toBe('The event’s clock is taken to be the same as ours.');
    expect(offsetInWords(95)).toBe('The event’s clock is 1 min 35 s ahead of ours.');
    expect(offsetInWords(-12)).toBe('The event’s clock is 12 s behind ours.');
  });
});
