import { type Itinerary, parseItineraryTable } from '@halfshaft/itinerary';
import { applyAll, emptyState, type LogEntry } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_TABLE } from '../itinerary/example-table';
import { CAR, EIGHT_OCLOCK, entryOf, MIA, replicaOf } from '../work/fixtures';
import { actualInWords } from './actual-in-words';
import { momentInWords, serviceMoments } from './service-moments';

function readExample(): Itinerary {
  const read = parseItineraryTable(EXAMPLE_TABLE, {
    timeZone: 'Europe/Vienna',
    startDate: '2026-06-12',
    roadTimedFrom: 'stageStart',
  });
  if (!read.ok) throw new Error('the example does not read');
  return read.itinerary;
}

const entry = entryOf({ startPosition: 5 });
const example = replicaOf(MIA, { itinerary: readExample(), entries: [entry] });
const moments = serviceMoments(example, emptyState, entry);
const inAt = Date.UTC(2026, 5, 12, 8, 53) / 1000;

describe('serviceMoments', () => {
  it("are those of the car's own start position, in the event's zone", () => {
    expect(moments).toHaveLength(1);
    expect(moments[0]).toMatchObject({ inAt, inClock: '10:53', outClock: '11:13', outAt: inAt + 1200 });
  });
});

describe('momentInWords', () => {
  it.each([
    [-3 * 86_400, 'next, in 3 days'],
    [-125 * 60, 'next, in 2 h 5 min'],
    [-42 * 60 - 30, 'next, in 42 min'],
    [0, 'now, out in 20 min'],
    [61, 'now, out in 18 min'],
    [1199, 'now, out in 0 min'],
    [1200, 'past'],
  ])('%i s after the in-time says %s', (seconds, words) => {
    const kind = words.split(',')[0];
    expect(momentInWords(moments, 0, inAt + seconds)).toEqual({ kind, words });
  });

  it('says nothing without a clock, nor of a service that is not there', () => {
    expect(momentInWords(moments, 0, null)).toBeNull();
    expect(momentInWords(moments, 9, inAt)).toBeNull();
  });
});

// Service A by plan: in at minute 40, out at 60. Service B: in at 120, out at 130. Minutes after eight. No target times
// are printed, so that what is early makes nothing after it earlier.
const small = replicaOf();
const [car = entryOf()] = small.entries;
const minute = (minutes: number) => EIGHT_OCLOCK + minutes * 60;

function stateOf(...said: [controlId: string, minutes: number, heldMinutes?: number][]) {
  const entries = said.map(([controlId, minutes, heldMinutes = 0], index): LogEntry => {
    const stamp = { actionId: `a${index}`, by: MIA, enteredBy: MIA, deviceId: 'phone', deviceTime: 0 };
    const body = { kind: 'timeRecorded' as const, entryId: CAR, controlId, heldMinutes };
    const writtenAt = minute(minutes);
    return { ...stamp, flags: [], seq: index + 1, serverTime: 0, body: { ...body, writtenAt } };
  });
  return applyAll(emptyState, entries);
}

describe('services by the times written so far', () => {
  it.each([
    ['25 min late in, still there', stateOf(['TC1A', 65]), 84, ['now, out in 1 min', null]],
    ['overrunning', stateOf(['TC1A', 40]), 64, ['now, over by 4 min', null]],
    ['out early', stateOf(['TC1A', 40], ['TC1B', 55]), 56, ['past', 'next, in 64 min']],
    ['in early', stateOf(['TC1A', 38]), 38, ['now, out in 20 min', null]],
    ['all of it by plan', stateOf(), 64, ['past', 'next, in 56 min']],
  ])('%s', (_, state, now, words) => {
    const all = serviceMoments(small, state, car);
    expect(all.map((__, index) => momentInWords(all, index, minute(now))?.words ?? null)).toEqual(words);
  });

  it.each([
    ['nothing written', stateOf(), [[], []]],
    [
      'late in',
      stateOf(['TC1A', 44]),
      [
        ['planned 08:40 – 09:00', 'in 08:44, 4 late'],
        ['planned 10:00 – 10:10', '4 min later by the times so far'],
      ],
    ],
    [
      'late by the event’s doing, and out on time',
      stateOf(['TC1A', 44, 3], ['TC1B', 64]),
      [
        ['planned 08:40 – 09:00', 'in 08:44, 4 late, 3 of it the event’s', 'out 09:04, on time'],
        ['planned 10:00 – 10:10', '4 min later by the times so far'],
      ],
    ],
    [
      'late before, on time here',
      stateOf(['TC0', 5], ['TC1A', 45]),
      [['planned 08:40 – 09:00', 'in 08:45, on time']],
    ],
    ['on time', stateOf(['TC1A', 40]), [['planned 08:40 – 09:00', 'in 08:40, on time'], []]],
    ['early', stateOf(['TC1A', 38]), [['planned 08:40 – 09:00', 'in 08:38, 2 early']]],
    [
      'all of it the event’s',
      stateOf(['TC1A', 44, 9]),
      [['planned 08:40 – 09:00', 'in 08:44, 4 late, the event’s']],
    ],
  ])('in words: %s', (_, state, words) => {
    const told = serviceMoments(small, state, car).map((moment) => actualInWords(small, state, moment));
    expect(told.slice(0, words.length)).toEqual(words);
  });
});
