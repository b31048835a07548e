import { DEFAULT_PENALTY_RULES, minutesToLose, type PenaltyRules } from '@halfshaft/itinerary';
import { applyAll, emptyState, type LogEntry } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { findVisit } from '../service/visit';
import { CAR, EIGHT_OCLOCK, MIA, replicaOf } from '../work/fixtures';
import {
  earlyInWords,
  latenessInWords,
  secondsInWords,
  toLoseInWords,
  windowInWords,
} from './lateness-in-words';
import { latenessAt, latenessQuestionOf } from './lateness-of';
import { visitTimes } from './visit-times';

const minute = (minutes: number) => EIGHT_OCLOCK + minutes * 60;

/** Each recording: control, minutes after eight, minutes the event held the car. */
function stateOf(...said: [string, number, number?][]) {
  const entries = said.map(([controlId, minutes, heldMinutes = 0], index): LogEntry => {
    const stamp = { actionId: `a${index}`, by: MIA, enteredBy: MIA, deviceId: 'phone', deviceTime: 0 };
    const body = { kind: 'timeRecorded' as const, entryId: CAR, controlId, heldMinutes };
    return {
      ...stamp,
      flags: [],
      seq: index + 1,
      serverTime: 0,
      body: { ...body, writtenAt: minute(minutes) },
    };
  });
  return applyAll(emptyState, entries);
}

function timesAt(letter: string, state = stateOf(), rules: Partial<PenaltyRules> = {}) {
  const replica = replicaOf(MIA, { penaltyRules: { ...DEFAULT_PENALTY_RULES, ...rules } });
  const visit = findVisit(replica, CAR, letter);
  if (!visit) throw new Error(`no Service ${letter} in the fixture`);
  return visitTimes(replica, state, visit);
}

// Service A: in due at minute 40, out at 60 (20 minutes). Service B: in at 120, out at 130.
describe('visitTimes', () => {
  it('stands by the plan until a time is recorded', () => {
    const { recordedIn, inAt, dueOut } = timesAt('A');
    expect({ recordedIn, inAt, dueOut }).toEqual({ recordedIn: null, inAt: minute(40), dueOut: minute(60) });
  });

  it('counts the working time from the actual in-time: late in, late out', () => {
    const late = timesAt('A', stateOf(['TC1A', 46]));
    expect(late).toMatchObject({
      dueIn: minute(40),
      inAt: minute(46),
      dueOut: minute(66),
      workSeconds: 1200,
    });
  });

  it('keeps the printed out-time where the event does, which shortens the work', () => {
    const late = timesAt('A', stateOf(['TC1A', 46]), { serviceOut: 'asPlanned' });
    expect(late).toMatchObject({ dueOut: minute(60), workSeconds: 14 * 60 });
  });

  it('is due later at the next service for what was lost before it', () => {
    expect(timesAt('B', stateOf(['TC1A', 46], ['TC1B', 66])).dueIn).toBe(minute(126));
  });
});

describe('the words of lateness', () => {
  const wordsAt = (index: number, ...said: [string, number, number?][]) => {
    const replica = replicaOf();
    const [entry] = replica.entries;
    if (!entry) throw new Error('no car in the fixture');
    const question = latenessQuestionOf(replica, stateOf(...said), entry);
    const at = latenessAt(question, index);
    return { words: at ? latenessInWords(at, replica.penaltyRules) : [], question };
  };

  it('tells ours from the event’s, with the penalty for ours', () => {
    expect(wordsAt(2, ['TC1A', 46, 4]).words).toEqual([
      '6 min late: 2 ours, 4 the event’s.',
      'Penalty by the event’s rules: 20 s.',
    ]);
    expect(wordsAt(2, ['TC1A', 41]).words[0]).toBe('1 min late: all of it ours.');
    expect(wordsAt(2, ['TC1A', 41, 9]).words).toEqual([
      '1 min late: all of it the event’s.',
      'No penalty by the event’s rules.',
    ]);
  });

  it('says on time, early as penalised, and what was passed', () => {
    expect(wordsAt(2, ['TC1A', 40]).words).toEqual(['On time.', 'No penalty by the event’s rules.']);
    expect(wordsAt(2, ['TC1A', 38]).words).toEqual([
      '2 min early, which is penalised here.',
      'Penalty by the event’s rules: 2 min.',
    ]);
    expect(wordsAt(2, ['TC1A', 56]).words.at(-1)).toBe(
      'More lateness at one control than the event allows: out of time by its rules.',
    );
  });

  it('says what may still be lost', () => {
    const { question } = wordsAt(2, ['TC1A', 46]);
    expect(toLoseInWords(minutesToLose(question)[0])).toBe(
      'Minutes still to lose: 24, 15 at one control, does not reset any more.',
    );
    const unlimited = { ...question, rules: { ...question.rules, maxLateMinutesInTotal: null } };
    expect(toLoseInWords(minutesToLose(unlimited)[0])).toBe('The event sets no limit to lateness here.');
  });

  it('says when to hand in the card, and whether early is allowed', () => {
    expect(windowInWords(minute(40), DEFAULT_PENALTY_RULES, 'UTC')).toBe(
      'Hand in the card 08:40:00–08:40:59. Enter the zone from 08:39:00.',
    );
    expect(earlyInWords({ roles: ['finish'] }, DEFAULT_PENALTY_RULES)).toBe(
      'Arriving early is allowed here.',
    );
    expect(earlyInWords({ roles: ['serviceIn'] }, DEFAULT_PENALTY_RULES)).toBe(
      'Arriving early is penalised here: 1 min a minute.',
    );
    expect(earlyInWords({ roles: ['serviceOut'] }, DEFAULT_PENALTY_RULES)).toBe(
      'Leaving early is penalised here: 1 min a minute.',
    );
    expect(secondsInWords(90)).toBe('1 min 30 s');
  });
});
