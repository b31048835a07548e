import type { EventReplica } from '@halfshaft/contract';
import { formatClock } from '@halfshaft/itinerary';
import { secondsInWords } from '../control/lateness-in-words';
import { type EventClockSource, eventClockAhead } from './event-seconds';

const MILLIS_IN_SECOND = 1000;
const SECONDS_IN_MINUTE = 60;
const SECONDS_IN_DAY = 86_400;
const SHOWN = /^(\d{1,2})\s*[:.h]\s*(\d{2})(?:\s*[:.]\s*(\d{2}))?$/;

/** What a control's clock shows, and what this device knew at that moment; both in milliseconds of its own clock. */
export interface ShownClock {
  text: string;
  pressedAt: number;
  receivedAt: number;
}

/**
 * The event's offset, in whole seconds, so that its clock shows what the control's clock showed when the button was pressed.
 * Without seconds the minute is taken to have just begun. The clocks are taken to be less than half a day apart. Null where
 * the text is no time of day.
 *
 * @example
 * readClockOffset(event, { text: '10:23', pressedAt, receivedAt }) // 35
 */
export function readClockOffset(
  event: EventClockSource & Pick<EventReplica, 'itinerary'>,
  { text, pressedAt, receivedAt }: ShownClock,
): number | null {
  const shown = secondOfDay(text.trim());
  if (shown === null) return null;
  const now = Math.round((pressedAt + eventClockAhead(event, receivedAt)) / MILLIS_IN_SECOND);
  const { timeZone } = event.itinerary;
  const minute = secondOfDay(formatClock(now, timeZone)) ?? 0;
  const ours = minute + (now % SECONDS_IN_MINUTE);
  const half = SECONDS_IN_DAY / 2;
  const away = ((((shown - ours + half) % SECONDS_IN_DAY) + SECONDS_IN_DAY) % SECONDS_IN_DAY) - half;
  return event.clockOffsetSeconds + away;
}

/** The two minutes that a control's clock most likely turns to next, by ours. `now` in seconds since the epoch. */
export function likelyMinutes(now: number, timeZone: string): string[] {
  const begun = now - (now % SECONDS_IN_MINUTE);
  return [begun, begun + SECONDS_IN_MINUTE].map((at) => formatClock(at, timeZone));
}

/** How the clocks stand to each other, for a person. */
export function offsetInWords(seconds: number): string {
  if (seconds === 0) return 'The event’s clock is taken to be the same as ours.';
  const size = secondsInWords(Math.abs(seconds));
  return `The event’s clock is ${size} ${seconds > 0 ? 'ahead of' : 'behind'} ours.`;
}

function secondOfDay(text: string): number | null {
  const [, hours, minutes, seconds = '0'] = SHOWN.exec(text) ?? [];
  if (hours === undefined || minutes === undefined) return null;
  const [hour, minute, second] = [Number(hours), Number(minutes), Number(seconds)];
  return hour < 24 && minute < 60 && second < 60 ? (hour * 60 + minute) * 60 + second : null;
}
