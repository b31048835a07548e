import { applyAll, type EntryBody, emptyState, type LogEntry } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { CAR, cardOf, entryOf, MIA, NUTS, OIL, replicaOf, taskAt } from '../work/fixtures';
import { homePreparation } from './home-preparation';

const ENGINE = '00000000-0000-4000-8000-00000000000d';
const engine = cardOf(ENGINE, { intervals: [{ counter: 'stageMetres', every: 900_000, tolerance: 0 }] });
const entry = entryOf({ cards: [cardOf(NUTS), cardOf(OIL), engine] });
const replica = replicaOf(MIA, { entries: [entry] });

const PREPARED: EntryBody = {
  kind: 'factRecorded',
  factId: 'f1',
  entryId: CAR,
  at: { kind: 'road', afterStageId: null },
  fact: { kind: 'prepared', cardIds: [NUTS, OIL] },
};
const DONE: EntryBody = {
  kind: 'done',
  task: taskAt(NUTS),
  needsSignature: false,
  findings: [],
  readings: [],
};

function preparationAfter(...bodies: EntryBody[]) {
  const entries = bodies.map((body, index): LogEntry => {
    const stamp = { actionId: `a${index}`, by: MIA, enteredBy: MIA, deviceId: 'phone', deviceTime: 0 };
    return { ...stamp, flags: [], body, seq: index + 1, serverTime: 0 };
  });
  return homePreparation(replica, applyAll(emptyState, entries), entry);
}

describe('homePreparation', () => {
  it('asks for what falls due by the first service, and for nothing that lasts', () => {
    const asked = preparationAfter();
    expect(asked?.kind === 'asked' && asked.cards.map(({ id }) => id)).toEqual([NUTS, OIL]);
  });

  it('says who told it, and which action takes it back', () => {
    expect(preparationAfter(PREPARED)).toEqual({ kind: 'told', count: 2, by: MIA, actionId: 'a0' });
    expect(preparationAfter(DONE, PREPARED)).toMatchObject({ kind: 'told', actionId: 'a1' });
  });

  it('asks nothing once work of the event is done', () => {
    expect(preparationAfter(DONE)).toBeNull();
  });
});
