import { emptyState, type LogEntry } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { CAR, EIGHT_OCLOCK, KAI, MIA, NUTS, replicaOf, taskAt } from '../work/fixtures';
import { filterLog } from './filter-log';
import { logLineOf } from './log-line';

const replica = replicaOf();
const eight = EIGHT_OCLOCK * 1000;
const entry: LogEntry = {
  seq: 7,
  actionId: 'a',
  by: KAI,
  enteredBy: MIA,
  deviceId: 'phone',
  deviceTime: eight - 60_000,
  serverTime: eight,
  flags: [{ code: 'heldByAnother', personId: MIA }],
  body: { kind: 'done', task: taskAt(NUTS), needsSignature: true, findings: [], readings: [] },
};

describe('logLineOf', () => {
  it('says who did what, and apart from it who typed it and what stood against it', () => {
    expect(logLineOf(entry, replica, emptyState)).toEqual({
      seq: 7,
      day: 'Sat 13 Jun 2026',
      clock: '08:00',
      sentence: "Kai closed 'Wheel nuts' at Service A.",
      found: [],
      remarks: ['entered by Mia', 'Mia had it at the time'],
      car: 'Car 14',
      photo: null,
      isWaiting: false,
    });
  });

  it('tells the time of the phone only when it is more than a minute off', () => {
    const late = { ...entry, flags: [], enteredBy: KAI, deviceTime: eight - 60_001 };
    expect(logLineOf(late, replica, emptyState).remarks).toEqual(["the phone's clock said 07:58"]);
    const dayBefore = { ...late, deviceTime: eight - 86_400_000 };
    expect(logLineOf(dayBefore, replica, emptyState).remarks).toEqual([
      "the phone's clock said Fri 12 Jun 2026, 08:00",
    ]);
  });

  it('shows the official clock, and the time of the phone while nothing has been sent', () => {
    const ahead = replicaOf(MIA, { clockOffsetSeconds: 60 });
    expect(logLineOf(entry, ahead, emptyState).clock).toBe('08:01');
    expect(logLineOf({ ...entry, serverTime: null }, replica, emptyState)).toMatchObject({
      clock: '07:59',
      isWaiting: true,
    });
  });

  it('calls the place of a snag by its name', () => {
    const said = {
      snagId: 's',
      entryId: CAR,
      serviceId: null,
      place: 'frontLeft',
      words: 'knocks',
      urgent: true,
    };
    const line = logLineOf({ ...entry, body: { kind: 'snagRaised', ...said } }, replica, emptyState);
    expect(line.sentence).toBe('Kai raised an urgent snag (Front left): knocks.');
  });
});

describe('filterLog', () => {
  const log: LogEntry[] = [
    entry,
    { ...entry, seq: 8, enteredBy: KAI },
    {
      ...entry,
      seq: 9,
      body: { kind: 'claimed', task: { ...taskAt(NUTS), entryId: 'other' }, needsSignature: false },
    },
  ];
  const seqs = (car: string | null, person: string | null) =>
    filterLog(log, { car, person }).map(({ seq }) => seq);

  it('is newest first', () => {
    expect(seqs(null, null)).toEqual([9, 8, 7]);
  });

  it('filters by car, and by who did it or typed it', () => {
    expect(seqs(CAR, null)).toEqual([8, 7]);
    expect(seqs(null, MIA)).toEqual([9, 7]);
    expect(seqs(CAR, MIA)).toEqual([7]);
  });
});
