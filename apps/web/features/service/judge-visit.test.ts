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
  const shafts = cardOf(PADS, { name: 'Driveshafts', starterId: 'starter:driveshafts', intervals: [] });
  const look = cardOf(OIL, { name: 'Newly fitted', starterId: 'starter:look-at-new-part', intervals: [] });
  const cars = replicaOf(MIA, { entries: [entryOf({ cards: [shafts, look] })] });
  const verdictAt = (letter: string, state = emptyState) => {
    const visit = findVisit(cars, CAR, letter);
    if (!visit) throw new Error(`no Service ${letter} in the fixture`);
    const found = judgeVisit(cars, state, visit).find(({ card }) => card.id === OIL);
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
