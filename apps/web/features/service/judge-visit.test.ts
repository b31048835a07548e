import type { EventReplica } from '@halfshaft/contract';
import {
  applyAll,
  type EntryBody,
  emptyState,
  type FactPlace,
  type LogEntry,
  taskIdOf,
} from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { CAR, cardOf, entryOf, MIA, NUTS, OIL, replicaOf, taskAt } from '../work/fixtures';
import { crewRepairsAfter } from './crew-repairs';
import { judgeVisit } from './judge-visit';
import { snagsOfCar } from './snags-of-car';
import { reasonNamesOf } from './time-in-words';
import { findVisit, serviceNow } from './visit';
import { wearRowsOf } from './wear-rows';

const PADS = '00000000-0000-4000-8000-00000000000c';
const pads = cardOf(PADS, { intervals: [{ counter: 'stageMetres', every: 25_000, tolerance: 0 }] });
const replica = replicaOf(MIA, { entries: [entryOf({ cards: [cardOf(NUTS), cardOf(OIL), pads] })] });

function visitAt(letter: string) {
  const visit = findVisit(replica, CAR, letter);
  if (!visit) throw new Error(`no Service ${letter} in the fixture`);
  return visit;
}

function stateOf(...bodies: EntryBody[]) {
  const entries = bodies.map((body, index): LogEntry => {
    const stamp = { actionId: `a${index}`, by: MIA, enteredBy: MIA, deviceId: 'phone', deviceTime: 0 };
    return { ...stamp, flags: [], body, seq: index + 1, serverTime: 0 };
  });
  return applyAll(emptyState, entries);
}

const done = (cardId: string, serviceId: string): EntryBody => ({
  kind: 'done',
  task: taskAt(cardId, serviceId),
  needsSignature: false,
  findings: [],
  readings: [],
});

describe('findVisit', () => {
  it('knows planned in-time and out-time of the car', () => {
    const { inAt, outAt, service } = visitAt('A');
    expect(service.allowedSeconds).toBe(1200);
    expect(outAt - inAt).toBe(1200);
  });

  it('is null for a car or service that is not there', () => {
    expect(findVisit(replica, CAR, 'Z')).toBeNull();
    expect(findVisit(replica, MIA, 'A')).toBeNull();
    expect(findVisit(replica, null, null)).toBeNull();
  });
});

describe('serviceNow', () => {
  it('is the one on or next, and the last after the event', () => {
    const { entry, outAt } = visitAt('A');
    expect(serviceNow(replica, emptyState, entry, 0)?.id).toBe('A');
    expect(serviceNow(replica, emptyState, entry, outAt)?.id).toBe('A');
    expect(serviceNow(replica, emptyState, entry, outAt + 1)?.id).toBe('B');
    expect(serviceNow(replica, emptyState, entry, outAt + 999_999)?.id).toBe('B');
  });
});

describe('a part changed on the road', () => {
  const shafts = cardOf(PADS, { name: 'Our driveshafts', fitsNewPart: true, intervals: [] });
  const look = cardOf(OIL, { name: 'Newly fitted', starterId: 'starter:look-at-new-part', intervals: [] });
  const cars = replicaOf(MIA, { entries: [entryOf({ cards: [shafts, look] })] });
  const verdictAt = (letter: string, state = emptyState, replica = cars) => {
    const visit = findVisit(replica, CAR, letter);
    if (!visit) throw new Error(`no Service ${letter} in the fixture`);
    const found = judgeVisit(replica, state, visit).find(({ card }) => card.id === OIL);
    return [found?.judged.verdict, ...(found?.judged.reasons.map(({ reason }) => reason.code) ?? [])];
  };
  const fitted = (at: FactPlace): EntryBody => ({
    kind: 'factRecorded',
    factId: 'f1',
    entryId: CAR,
    at,
    fact: { kind: 'fitted', cardId: PADS, position: 'FL', words: '' },
  });

  it('is looked at once it has been driven for a stage, and not before', () => {
    const atA = stateOf(fitted({ kind: 'service', serviceId: 'A' }));
    expect(verdictAt('B')[0]).toBe('leave');
    expect(verdictAt('A', atA)[0]).toBe('leave');
    expect(verdictAt('B', atA)).toEqual(['doNow', 'newlyFitted', 'lasts']);
    expect(verdictAt('B', stateOf(fitted({ kind: 'road', afterStageId: 'SS2' })))[0]).toBe('doNow');
  });

  it('calls for no look where the card fits no new part', () => {
    const refreshed = { ...shafts, fitsNewPart: false };
    const others = replicaOf(MIA, { entries: [entryOf({ cards: [refreshed, look] })] });
    const atA = stateOf(fitted({ kind: 'service', serviceId: 'A' }));
    expect(verdictAt('B', atA, others)[0]).toBe('leave');
  });
});

describe('what the managers expect of the stages', () => {
  const lamps = cardOf(OIL, { name: 'Lamps on', starterId: 'starter:night-lamps', intervals: [] });
  const verdictAt = (planned: EventReplica['plannedConditions'], state = emptyState) => {
    const entries = [entryOf({ cards: [lamps] })];
    const event = replicaOf(MIA, { entries, plannedConditions: planned });
    const visit = findVisit(event, CAR, 'A');
    if (!visit) throw new Error('no Service A in the fixture');
    return judgeVisit(event, state, visit)[0]?.judged.verdict;
  };

  it('puts the lamps on before a stage that will be dark, unless the crew has seen it otherwise', () => {
    expect(verdictAt({})).toBe('leave');
    expect(verdictAt({ SS1: { night: 500 } })).toBe('leave');
    expect(verdictAt({ SS2: { night: 500 } })).toBe('doNow');
    const seen: EntryBody = {
      kind: 'stageConfirmed',
      entryId: CAR,
      stageId: 'SS2',
      driven: true,
      conditions: {},
    };
    expect(verdictAt({ SS2: { night: 500 } }, stateOf(seen))).toBe('leave');
  });

  it('wears a card the faster', () => {
    const dusty = cardOf(PADS, {
      intervals: [{ counter: 'stageMetres', every: 31_000, tolerance: 0 }],
      conditionFactors: { dust: 2000 },
    });
    const at = (planned: EventReplica['plannedConditions']) => {
      const event = replicaOf(MIA, { entries: [entryOf({ cards: [dusty] })], plannedConditions: planned });
      const visit = findVisit(event, CAR, 'A');
      return visit ? judgeVisit(event, emptyState, visit)[0]?.judged.verdict : null;
    };
    expect(at({})).toBe('leave');
    expect(at({ SS2: { dust: 1000 } })).toBe('doNow');
  });
});

describe('judgeVisit', () => {
  const verdicts = (letter: string, state = emptyState) =>
    Object.fromEntries(
      judgeVisit(replica, state, visitAt(letter)).map(({ card, judged, task }) => [
        card.id,
        `${judged.verdict}, ${task.state}`,
      ]),
    );

  it('keeps a card done here in its place, shown as done', () => {
    expect(verdicts('A')[PADS]).toBe('doNow, open');
    expect(verdicts('A', stateOf(done(PADS, 'A')))[PADS]).toBe('doNow, done');
  });

  it('counts what was done at an earlier service', () => {
    expect(verdicts('B')[PADS]).toBe('doNow, open');
    expect(verdicts('B', stateOf(done(PADS, 'A')))[PADS]).toBe('leave, open');
  });

  it('still shows an earlier service after later work, without counting that work', () => {
    expect(verdicts('A', stateOf(done(PADS, 'B')))).toEqual(verdicts('A'));
  });

  it('takes a stage that was not driven off the wear', () => {
    const notDriven = stateOf({
      kind: 'stageConfirmed',
      entryId: CAR,
      stageId: 'SS1',
      driven: false,
      conditions: {},
    });
    expect(verdicts('A', notDriven)[PADS]).toBe('leave, open');
  });
});

describe('judgeVisit, of a car that is out', () => {
  const outAfter = (afterStageId: string): EntryBody => ({
    kind: 'factRecorded',
    factId: 'out',
    entryId: CAR,
    at: { kind: 'road', afterStageId },
    fact: { kind: 'out', forDay: false, cause: 'mechanical', cardId: null, words: '' },
  });
  const idsAt = (letter: string, ...bodies: EntryBody[]) =>
    judgeVisit(replica, stateOf(...bodies), visitAt(letter)).map(({ card }) => card.id);

  it('asks for nothing from there on, and leaves the services before as they were', () => {
    expect(idsAt('B').length).toBeGreaterThan(0);
    expect(idsAt('B', outAfter('SS2'))).toEqual([]);
    expect(idsAt('A', outAfter('SS2'))).toEqual(idsAt('A'));
  });

  it('keeps what somebody has closed there already', () => {
    expect(idsAt('B', done(NUTS, 'B'), outAfter('SS2'))).toEqual([NUTS]);
  });
});

describe('judgeVisit, with what happened', () => {
  const LOOK = '00000000-0000-4000-8000-00000000001d';
  const never = [{ counter: 'events' as const, every: 100, tolerance: 0 }];
  const look = cardOf(LOOK, { starterId: 'starter:after-a-hard-landing', intervals: never });
  const called = replicaOf(MIA, { entries: [entryOf({ cards: [cardOf(OIL), look] })] });
  const landed: EntryBody = {
    kind: 'factRecorded',
    factId: 'landed',
    entryId: CAR,
    at: { kind: 'road', afterStageId: 'SS1' },
    fact: { kind: 'incident', code: 'hardLanding', place: null, words: '' },
  };
  const lookAt = (letter: string, ...bodies: EntryBody[]) => {
    const visit = findVisit(called, CAR, letter);
    const each = visit && judgeVisit(called, stateOf(...bodies), visit).find(({ card }) => card.id === LOOK);
    if (!each) throw new Error('The card is not judged.');
    const words = each.judged.reasons.flatMap(({ source, reason }) =>
      source === 'trigger' ? [reason.words] : [],
    );
    return { verdict: each.judged.verdict, overdue: each.judged.overdue, task: each.task.state, words };
  };
  const wire = {
    lookId: null,
    position: null,
    grade: 'temporaryRepair' as const,
    words: 'strap on the guard',
  };

  it('makes a card due that no limit brings up, with the reason, until it is done', () => {
    expect(lookAt('A')).toMatchObject({ verdict: 'leave', words: [] });
    expect(lookAt('A', landed)).toMatchObject({
      verdict: 'doNow',
      overdue: false,
      words: ['hard landing on SS1'],
    });
    expect(lookAt('B', landed)).toMatchObject({ verdict: 'doNow', overdue: true });
    expect(lookAt('B', landed, done(LOOK, 'A'))).toMatchObject({ verdict: 'leave', words: [] });
  });

  it('keeps it in its place when it is done here', () => {
    expect(lookAt('A', landed, done(LOOK, 'A'))).toMatchObject({ verdict: 'doNow', task: 'done' });
  });

  it('asks for a look at a temporary repair at every service until it is made good', () => {
    const closed = { ...done(LOOK, 'A'), findings: [wire] } as EntryBody;
    expect(lookAt('B', landed, closed)).toMatchObject({
      verdict: 'doNow',
      words: ['temporary repair at Service A: strap on the guard'],
    });
    const madeGood: EntryBody = {
      ...landed,
      factId: 'good',
      at: { kind: 'service', serviceId: 'A' },
      fact: { kind: 'madeGood', of: taskIdOf(taskAt(LOOK)), words: '' },
    };
    expect(lookAt('B', landed, closed, madeGood)).toMatchObject({ verdict: 'leave', words: [] });
  });
});

describe('judgeVisit, with what was read', () => {
  const CHANGE = '00000000-0000-4000-8000-00000000002d';
  const spec = { id: 'pads', kind: 'wear', unit: 'mm', decimals: 1, required: false } as const;
  const round = cardOf(OIL, {
    name: 'Front corners',
    starterId: 'starter:front-corners',
    readings: [{ ...spec, name: 'Pad thickness', positions: ['FL', 'FR'], low: 30, high: null }],
  });
  const change = cardOf(CHANGE, {
    name: 'Front brake pads: change',
    starterId: 'starter:front-pads',
    intervals: [{ counter: 'stageMetres', every: 150_000, tolerance: 0 }],
    readings: [{ ...spec, name: 'New pad thickness', positions: ['FL', 'FR'], low: null, high: null }],
  });
  const cars = replicaOf(MIA, { entries: [entryOf({ cards: [round, change] })] });
  const read = (cardId: string, serviceId: string, FL: number, FR: number): EntryBody => ({
    ...(done(cardId, serviceId) as Extract<EntryBody, { kind: 'done' }>),
    readings: [
      { readingId: 'pads', position: 'FL', value: FL },
      { readingId: 'pads', position: 'FR', value: FR },
    ],
  });
  const padsAt = (letter: string, cardId: string, ...bodies: EntryBody[]) => {
    const visit = findVisit(cars, CAR, letter);
    const each = visit && judgeVisit(cars, stateOf(...bodies), visit).find(({ card }) => card.id === cardId);
    if (!each) throw new Error('The card is not judged.');
    const words = each.judged.reasons.flatMap(({ source, reason }) =>
      source === 'reading' ? [reason.words] : [],
    );
    return {
      verdict: each.judged.verdict,
      task: each.task.state,
      words,
      last: [...each.lastRead.values()].map((last) => last.words),
    };
  };

  it('read at the corner: the job that changes the part is due, with the reason', () => {
    // 10 km before Service A, 20 to B and none after it: one reading at A says nothing yet.
    expect(padsAt('B', CHANGE, read(OIL, 'A', 60, 50))).toMatchObject({
      verdict: 'leave',
      words: ['Pad thickness FR: 5.0 mm at Service A, limit 3.0: not known yet how fast it wears'],
    });
    expect(padsAt('B', CHANGE, read(OIL, 'A', 60, 50), read(OIL, 'B', 45, 29))).toMatchObject({
      verdict: 'doNow',
      words: ['Pad thickness FR: 2.9 mm now, past its limit 3.0'],
    });
  });

  it('stays in its place when it is done here, and says nothing more afterwards', () => {
    const worn = [read(OIL, 'A', 60, 29)];
    expect(padsAt('A', CHANGE, ...worn, read(CHANGE, 'A', 100, 100))).toMatchObject({
      verdict: 'doNow',
      task: 'done',
    });
    expect(padsAt('B', CHANGE, ...worn, read(CHANGE, 'A', 100, 100))).toMatchObject({ verdict: 'leave' });
  });

  it('knows what was read last, for beside the box', () => {
    expect(padsAt('B', OIL, read(OIL, 'A', 60, 50)).last).toEqual([
      'last 6.0 at Service A',
      'last 5.0 at Service A',
    ]);
    expect(padsAt('B', OIL, read(OIL, 'A', 60, 50), done(CHANGE, 'A')).last).toEqual([
      'new part',
      'new part',
    ]);
  });
});

describe('a new part without the card done', () => {
  const fitted = (serviceId: string): EntryBody => ({
    kind: 'factRecorded',
    factId: 'belt',
    entryId: CAR,
    at: { kind: 'service', serviceId },
    fact: { kind: 'fitted', cardId: PADS, position: null, words: '' },
  });
  const verdictAt = (letter: string, ...bodies: EntryBody[]) =>
    judgeVisit(replica, stateOf(...bodies), visitAt(letter)).find(({ card }) => card.id === PADS)?.judged
      .verdict;

  it('counts from where it went on', () => {
    // Every 25 stage km: 10 before Service A, 30 at Service B.
    expect(verdictAt('A')).toBe('doNow');
    expect(verdictAt('A', fitted('A'))).toBe('leave');
    expect(verdictAt('B')).toBe('doNow');
    expect(verdictAt('B', fitted('A'))).toBe('leave');
  });
});

describe('crewRepairsAfter', () => {
  const repaired = (serviceId: string): EntryBody => ({
    ...(done(NUTS, serviceId) as Extract<EntryBody, { kind: 'done' }>),
    findings: [{ lookId: null, position: 'FL', grade: 'temporaryRepair', words: 'wire round the hanger' }],
  });
  const linesAt = (letter: string, ...bodies: EntryBody[]) =>
    crewRepairsAfter(replica, stateOf(...bodies), visitAt(letter)).map(
      ({ title, why }) => `${title}: ${why}`,
    );

  it('asks the crew to look at what was repaired for a time, here or before, until it is made good', () => {
    const line = 'Look at the temporary repair: Wheel nuts: made at Service A: FL wire round the hanger';
    expect(linesAt('A')).toEqual([]);
    expect(linesAt('A', repaired('A'))).toEqual([line]);
    expect(linesAt('B', repaired('A'))).toEqual([line]);
    expect(linesAt('A', repaired('B'))).toEqual([]);
    const good: EntryBody = {
      kind: 'factRecorded',
      factId: 'good',
      entryId: CAR,
      at: { kind: 'service', serviceId: 'A' },
      fact: { kind: 'madeGood', of: taskIdOf(taskAt(NUTS)), words: '' },
    };
    expect(linesAt('A', repaired('A'), good)).toEqual([]);
  });
});

describe('wearRowsOf', () => {
  it('draws do now and if time from when it was last done to where the limit is passed', () => {
    const visit = visitAt('B');
    const cards = judgeVisit(replica, stateOf(done(NUTS, 'A')), visit);
    const rows = wearRowsOf(replica.itinerary, visit, cards, reasonNamesOf(replica, visit.inAt));
    // SS1 10 km + road 5 km to Service A; SS2 20 km + 5 km to Service B; 5 km to the finish.
    expect(rows.find((row) => row.id === PADS)).toMatchObject({
      fromMetres: 0,
      limitMetres: 30_000,
      toMetres: 45_000,
      verdict: 'doNow',
    });
    expect(rows.find((row) => row.id === NUTS)?.fromMetres).toBe(15_000);
  });
});

describe('snagsOfCar', () => {
  const snag = (snagId: string, urgent = false, entryId = CAR): EntryBody => ({
    kind: 'snagRaised',
    snagId,
    entryId,
    serviceId: 'A',
    place: 'boot',
    words: snagId,
    urgent,
  });
  const repair = (snagId: string, serviceId: string) =>
    ({ entryId: CAR, serviceId, source: { kind: 'snag', snagId } }) as const;
  const closed = (snagId: string, serviceId: string): EntryBody => ({
    kind: 'done',
    task: repair(snagId, serviceId),
    needsSignature: false,
    findings: [],
    readings: [],
  });
  const ids = (letter: string, ...bodies: EntryBody[]) =>
    snagsOfCar(stateOf(...bodies), CAR, letter).map((each) => each.snag.id);

  it('puts urgent ones first and leaves out other cars', () => {
    expect(ids('A', snag('one'), snag('two', true), snag('three', false, 'another car'))).toEqual([
      'two',
      'one',
    ]);
  });

  it('shows one settled here, and not one settled elsewhere', () => {
    expect(ids('A', snag('one'), closed('one', 'A'))).toEqual(['one']);
    expect(ids('B', snag('one'), closed('one', 'A'))).toEqual([]);
  });

  it('keeps one that was carried over open at the next service', () => {
    const carried: EntryBody = {
      kind: 'carriedOver',
      task: repair('one', 'A'),
      needsSignature: false,
      reason: 'no time',
    };
    const [next] = snagsOfCar(stateOf(snag('one'), carried), CAR, 'B');
    expect(next?.task).toMatchObject({ id: taskIdOf(repair('one', 'B')), state: 'open' });
  });
});
