import { type Itinerary, minutesToLose, PENALTY_PRESETS, parseItineraryTable } from '@halfshaft/itinerary';
import { applyAll, emptyState, type LogEntry } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { CAR, entryOf, MIA, replicaOf } from '../work/fixtures';
import { latenessQuestionOf } from './lateness-of';
import { stretchInWords } from './stretch-in-words';

const TABLE = `TC/SS;Location;SS km;Road km;Target time;First car due
MTC0;Start;;;;09:00
TC1;Au;;9;0:12;09:12
MTC1;Service in;;20;0:39;09:51
MTC2;Service out;;;0:30;10:21
TC2;Tal;;15;0:20;10:41
SS2;Tal;8;;;10:44
TC2A;Regroup in;;20;0:40;11:24
TC2B;Regroup out;;;0:10;11:34
MTC3;Finish;;20;0:30;12:04
`;

function readTable(): Itinerary {
  const read = parseItineraryTable(TABLE, {
    timeZone: 'Europe/Vienna',
    startDate: '2026-06-12',
    roadTimedFrom: 'stageStart',
  });
  if (!read.ok) throw new Error('the table does not read');
  return read.itinerary;
}
const itinerary = readTable();

/** What the screen lists after the car was written at TC1 so many minutes late, by one of the published settings. */
function listAfter(lateMinutes: number, presetId: string): string[] {
  const preset = PENALTY_PRESETS.find(({ id }) => id === presetId);
  if (!preset) throw new Error(`no preset ${presetId}`);
  const entry = entryOf();
  const event = replicaOf(MIA, { itinerary, penaltyRules: preset.rules, entries: [entry] });
  const writtenAt = (itinerary.points[1]?.firstCarAt ?? 0) + lateMinutes * 60;
  const stamp = { actionId: 'a1', by: MIA, enteredBy: MIA, deviceId: 'phone', deviceTime: 0 };
  const body = { kind: 'timeRecorded' as const, entryId: CAR, controlId: 'TC1', writtenAt, heldMinutes: 0 };
  const entries: LogEntry[] = [{ ...stamp, flags: [], seq: 1, serverTime: 0, body }];
  const question = latenessQuestionOf(event, applyAll(emptyState, entries), entry);
  return minutesToLose(question).map((stretch) => {
    const { where, minutes } = stretchInWords(stretch, itinerary);
    return `${where} ${minutes}`;
  });
}

describe('what may still be lost, as the screen lists it', () => {
  // Source: Motorsport UK National Competition Rules 2026, chapter 13: 30 minutes past the timetable, counted anew at
  // main time controls.
  it('follows the British national code of 2026', () => {
    expect(listAfter(12, 'british')).toEqual([
      'Section 1, MTC1. Minutes still to lose: 18, resets at MTC1 (main control).',
      'Section 1, MTC2 to TC2A. Minutes still to lose: 30, resets at MTC3 (main control).',
      'Section 2, TC2B to MTC3. Minutes still to lose: 30, resets at MTC3 (main control).',
    ]);
  });

  // Source: North American winter rally-sprint competitor bulletin 2017: 15 minutes at one control and 30 in all,
  // counted anew at each main control.
  it('follows the winter rally-sprint of 2017', () => {
    expect(listAfter(12, 'winterSprint')[0]).toBe(
      'Section 1, MTC1. Minutes still to lose: 18, 15 at one control, resets at MTC1 (main control).',
    );
    expect(listAfter(20, 'winterSprint')[0]).toBe(
      'Section 1, MTC1. Minutes still to lose: 10, resets at MTC1 (main control).',
    );
  });

  // Source of the reset: published answers of a hill rally on lateness; the figures are common practice.
  it('follows a hill rally with its reset at service out', () => {
    expect(listAfter(12, 'serviceOut').slice(0, 2)).toEqual([
      'Section 1, MTC1. Minutes still to lose: 18, 15 at one control, resets at MTC2 (service out).',
      'Section 1, MTC2 to TC2A. Minutes still to lose: 30, 15 at one control, does not reset any more.',
    ]);
  });

  // Common practice, no source.
  it('follows what most events have: reset at regroups and legs', () => {
    expect(listAfter(12, 'common')).toEqual([
      'Section 1, MTC1 to TC2A. Minutes still to lose: 18, 15 at one control, resets at TC2B (regroup).',
      'Section 2, TC2B to MTC3. Minutes still to lose: 30, 15 at one control, does not reset any more.',
    ]);
  });
});
