import { requireNumber } from '../require-number';

/**
 * When the failures of one thing came, in distance since it was first run. `stoppedAt` says why the record ends: at a
 * distance (the log ends, the season ends), or at its last failure (written down only because it failed).
 */
export type EventHistory =
  | { stoppedAt: 'distance'; events: readonly number[]; end: number }
  | { stoppedAt: 'failure'; events: readonly number[] };

/** A history as the formulas want it. */
export interface ReadHistory {
  end: number;
  failures: number;
  /** The events whose place is left to chance: at the end of a record that stopped at a failure, the last one is not. */
  counted: number[];
  stoppedAt: 'distance' | 'failure';
}

/**
 * The events in order, and which of them count.
 *
 * @throws RangeError when an event is not above 0 or lies beyond the end
 */
export function readHistory(functionName: string, history: EventHistory): ReadHistory {
  for (const event of history.events) requireNumber(functionName, 'an event', event, 'positive');
  const events = history.events.toSorted((a, b) => a - b);
  const last = events.at(-1) ?? 0;
  if (history.stoppedAt === 'failure') {
    return { end: last, failures: events.length, counted: events.slice(0, -1), stoppedAt: 'failure' };
  }
  requireNumber(functionName, 'end', history.end, 'positive');
  if (last > history.end) {
    throw new RangeError(`${functionName}: an event at ${last} lies beyond the end at ${history.end}.`);
  }
  return { end: history.end, failures: events.length, counted: events, stoppedAt: 'distance' };
}
