import type { EventReplica } from '@halfshaft/contract';
import { applyAll, type EntryBody, emptyState, type LogEntry } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { findVisit } from '../service/visit';
import { CAR, EIGHT_OCLOCK, entryOf, MIA, replicaOf, SMALL_ITINERARY } from '../work/fixtures';
import { latenessQuestionOf, timesOfEntry } from './lateness-of';
import { roadTimeInWords } from './road-time-in-words';
import { nextRoadTime, roadHome, roadTimes, roadTo } from './road-times';

const minute = (minutes: number) => EIGHT_OCLOCK + minutes * 60;
/** The stage is 13 minutes after the start, Service A in at minute 40; 24 minutes of target time from the stage. */
const points = SMALL_ITINERARY.points.map((point) =>
  point.kind === 'control' && point.id === 'TC1A' ? { ...point, allowedSeconds: 24 * 60 } : point,
);
const small = replicaOf(MIA, { itinerary: { ...SMALL_ITINERARY, points } });
const fromFinish = replicaOf(MIA, {
  itinerary: { ...SMALL_ITINERARY, points, roadTimedFrom: 'stageFinish' },
});
const [car = entryOf()] = small.entries;

function stateOf(...bodies: EntryBody[]) {
  const entries = bodies.map((body, index): LogEntry => {
    const stamp = { actionId: `a${index}`, by: MIA, enteredBy: MIA, deviceId: 'phone', deviceTime: 0 };
    return { ...stamp, flags: [], body, seq: index + 1, serverTime: 0 };
  });
  return applyAll(emptyState, entries);
}
const time = (controlId: string, minutes: number, finish?: true): EntryBody => ({
  kind: 'timeRecorded',
  entryId: CAR,
  controlId,
  writtenAt: minute(minutes),
  heldMinutes: 0,
  ...(finish ? { finish } : {}),
});
const start = time('SS1', 15);
const finish = time('SS1', 23, true);

function visitAt(letter: string, replica: EventReplica = small) {
  const visit = findVisit(replica, CAR, letter);
  if (!visit) throw new Error(`no Service ${letter} in the fixture`);
  return visit;
}
const toA = (state = stateOf(), replica = small) =>
  roadTimes(replica, state, car, roadTo(visitAt('A', replica)));
const wordsOf = (state: ReturnType<typeof stateOf>) =>
  toA(state).map((each) => roadTimeInWords(each, latenessQuestionOf(small, state, car)));
const dueAtService = (state: ReturnType<typeof stateOf>, replica: EventReplica) =>
  ((timesOfEntry(replica, state, car)[2]?.dueAt ?? 0) - EIGHT_OCLOCK) / 60;

describe('roadTimes', () => {
  it('are the controls, starts and finishes between two services', () => {
    expect(toA().map(({ title }) => title)).toEqual(['TC0', 'Start of SS1', 'Finish of SS1']);
    const toB = roadTimes(small, stateOf(), car, roadTo(visitAt('B')));
    expect(toB.map(({ title }) => title)).toEqual(['Start of SS2', 'Finish of SS2']);
  });

  it('end at the finish, after the last service only', () => {
    expect(roadHome(visitAt('A'), small)).toBeNull();
    const home = roadHome(visitAt('B'), small);
    expect(home && roadTimes(small, stateOf(), car, home).map(({ title }) => title)).toEqual(['TC3']);
  });

  it('leave out a stage that was not driven, but keep what was written of it', () => {
    const dropped: EntryBody = {
      kind: 'stageConfirmed',
      entryId: CAR,
      stageId: 'SS1',
      driven: false,
      conditions: {},
    };
    expect(toA(stateOf(dropped)).map(({ title }) => title)).toEqual(['TC0']);
    expect(toA(stateOf(start, dropped)).map(({ title }) => title)).toEqual(['TC0', 'Start of SS1']);
  });

  it('tell how they stand to what was due', () => {
    expect(wordsOf(stateOf())).toEqual(['due 08:00', 'due 08:13', 'about 08:20']);
    expect(wordsOf(stateOf(time('TC0', 2), start, finish))).toEqual([
      '08:02, 2 late',
      '08:15, as due',
      '08:23, 8 min on the stage',
    ]);
    expect(wordsOf(stateOf(start))[1]).toBe('08:15, 2 min later than due');
    expect(wordsOf(stateOf(finish))[2]).toBe('08:23');
  });
});

describe('what follows from the start or the finish of a stage', () => {
  it('counts from the one the itinerary says', () => {
    expect(dueAtService(stateOf(start, finish), small)).toBe(15 + 24);
    expect(dueAtService(stateOf(start, finish), fromFinish)).toBe(23 + 24);
    expect(dueAtService(stateOf(finish), fromFinish)).toBe(23 + 24);
  });

  it('makes nothing of a finish where the road is timed from the start, or the timetable counts', () => {
    expect(dueAtService(stateOf(finish), small)).toBe(40);
    const rules = { ...fromFinish.penaltyRules, timing: 'scheduled' as const };
    expect(dueAtService(stateOf(finish), { ...fromFinish, penaltyRules: rules })).toBe(40);
  });
});

describe('nextRoadTime', () => {
  it.each([
    ['nothing written, before the start', stateOf(), -5, 'TC0'],
    ['nothing written, on the stage', stateOf(), 16, 'Start of SS1'],
    ['the start written', stateOf(start), 15, 'Finish of SS1'],
    ['the start written, the clock unknown', stateOf(start), null, 'Finish of SS1'],
    ['an earlier one left out', stateOf(start), 90, 'Finish of SS1'],
    ['all written', stateOf(time('TC0', 0), start, finish), 30, undefined],
  ])('%s', (_, state, now, title) => {
    expect(nextRoadTime(toA(state), now === null ? null : minute(now))?.title).toBe(title);
  });
});
