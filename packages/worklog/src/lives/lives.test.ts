import { describe, expect, it } from 'vitest';
import type { CarFact, FactPlace, RecordedFact } from '../car-fact';
import type { Finding } from '../model';
import { taskIdOf } from '../task-id-of';
import { deepFreeze } from '../testing/deep-freeze';
import { ROUTE } from '../testing/route';
import { carLivesOf, distanceOf } from './car-lives';
import { loggedByCard } from './logged-by-card';
import type { DoneCard, LoggedEvent } from './logged-event';
import { lifeQuestionOf, partIdOf, partOfId, type WatchedPart } from './part-of';
import { partRecordsOf } from './part-records';
import { wayDriven } from './way-driven';

// Of the route: start 0, SS1 1, Service A 2-3, SS3 4, Service B 5-6; stages of 10 km, roads of 1 km.
const ON_SS1: FactPlace = { kind: 'road', afterStageId: 'SS1' };
const ON_SS3: FactPlace = { kind: 'road', afterStageId: 'SS3' };
const BEFORE_START: FactPlace = { kind: 'road', afterStageId: null };
const AT_A: FactPlace = { kind: 'service', serviceId: 'A' };
const OUT = { kind: 'out', forDay: false, cause: null, cardId: null, words: '' } as const;
const BACK: CarFact = { kind: 'restarted', words: '' };
const BELT: WatchedPart = { cardId: 'belt', lookId: null };
const HOSE: WatchedPart = { cardId: 'corner', lookId: 'hose' };

function factsOf(...said: [FactPlace, CarFact][]): RecordedFact[] {
  return said.map(([at, fact], index) => ({
    ...{ factId: `f${index}`, entryId: 'car7', at, fact, withdrawn: false },
    ...{ recordedBy: 'mia', changedBy: 'mia', changedSeq: index + 1 },
  }));
}

function eventOf(more: Partial<LoggedEvent>): LoggedEvent {
  const empty = { stages: [], times: [], workedAt: [], done: [], facts: [] };
  return deepFreeze({ eventId: 'larchwater', itinerary: ROUTE, isOver: true, ...empty, ...more });
}

const said = (stageId: string, driven = true) => ({ stageId, driven });
const stageKilometres = (more: Partial<LoggedEvent>) =>
  wayDriven(eventOf(more)).counted.stageMetres.map((metres) => metres / 1000);

describe('how far the car got', () => {
  it('W1: counts a stage that was said to be driven, from the point behind it', () => {
    expect(stageKilometres({ stages: [said('SS1')] })).toEqual([0, 0, 10, 10, 10, 10, 10]);
    expect(wayDriven(eventOf({ stages: [said('SS1')] })).counted).toMatchObject({
      totalMetres: [0, 0, 11_000, 11_000, 11_000, 11_000, 11_000],
      stages: [0, 0, 1, 1, 1, 1, 1],
    });
  });

  it('W2: never counts a stage that was said not to be driven, even where the car came later', () => {
    expect(stageKilometres({ stages: [said('SS1', false), said('SS3')] })).toEqual([0, 0, 0, 0, 0, 10, 10]);
  });

  it.each<[string, Partial<LoggedEvent>]>([
    ['a later stage', { stages: [said('SS3')] }],
    ['work at a later service', { workedAt: ['B'] }],
    ['a time at a later control', { times: [{ controlId: 'TC3A' }] }],
    ['the finish of the stage itself', { times: [{ controlId: 'SS3', finish: true }] }],
    ['a fact at a later service', { facts: factsOf([{ kind: 'service', serviceId: 'B' }, BACK]) }],
  ])('W3: counts a stage nobody spoke of when the log has the car beyond it: %s', (_, more) => {
    expect(stageKilometres(more)).toEqual([0, 0, 10, 10, 10, 20, 20]);
  });

  it('W3: does not count a stage nobody spoke of that nothing shows to be passed', () => {
    expect(stageKilometres({ workedAt: ['A'] })).toEqual([0, 0, 10, 10, 10, 10, 10]);
    expect(stageKilometres({ workedAt: ['A'], times: [{ controlId: 'SS3' }] }).at(-1)).toBe(10);
    expect(stageKilometres({}).at(-1)).toBe(0);
  });

  it('W4: stands still while the car is out, and does not count the stage it stopped on', () => {
    const out = { facts: factsOf([ON_SS3, OUT]), workedAt: ['A', 'B'] };
    expect(stageKilometres(out)).toEqual([0, 0, 10, 10, 10, 10, 10]);
    expect(stageKilometres({ ...out, stages: [said('SS3')] }).at(-1)).toBe(20);
    expect(wayDriven(eventOf(out)).halts).toMatchObject([{ kind: 'out', point: 5 }]);
  });

  it('W4: goes on from where it was said to start again', () => {
    const facts = factsOf([ON_SS1, OUT], [AT_A, BACK]);
    expect(stageKilometres({ facts, workedAt: ['B'] })).toEqual([0, 0, 0, 0, 0, 10, 10]);
  });

  it('W5: takes a stage driven after the car was out as a restart nobody wrote down', () => {
    const way = wayDriven(eventOf({ facts: factsOf([ON_SS1, OUT]), stages: [said('SS3')] }));
    expect(way.halts).toMatchObject([
      { kind: 'out', point: 2 },
      { kind: 'restarted', point: 4 },
    ]);
    expect(way.counted.stageMetres.at(-1)).toBe(10_000);
  });

  it('W6: of several words that the car is out, keeps the first place and the last cause', () => {
    const mended: CarFact = { ...OUT, cause: 'mechanical', cardId: 'belt' };
    for (const facts of [
      factsOf([ON_SS1, OUT], [ON_SS3, mended]),
      factsOf([ON_SS3, OUT], [ON_SS1, mended]),
    ]) {
      expect(wayDriven(eventOf({ facts })).halts).toMatchObject([
        { kind: 'out', point: 2, fact: { cause: 'mechanical', cardId: 'belt' } },
      ]);
    }
  });

  it.each<[boolean, string, Partial<LoggedEvent>]>([
    [true, 'the last stage was driven', { stages: [said('SS3')] }],
    [
      true,
      'the last stage was called off and the one before driven',
      {
        stages: [said('SS1'), said('SS3', false)],
      },
    ],
    [true, 'the event still runs', { isOver: false }],
    [false, 'the log ends before the last stage', { workedAt: ['A'] }],
    [false, 'the car was out at the end', { facts: factsOf([ON_SS3, OUT]), stages: [said('SS3')] }],
  ])('W7: finished is %s when %s', (finished, _, more) => {
    expect(wayDriven(eventOf(more)).finished).toBe(finished);
  });
});

const finding = (
  grade: Finding['grade'],
  position: string | null,
  lookId: string | null = null,
): Finding => ({
  ...{ grade, position, lookId },
  words: '',
});
const done = (cardId: string, serviceId: string, ...findings: Finding[]): DoneCard => ({
  ...{ cardId, serviceId },
  findings,
});
const place = { point: 2, cardId: 'belt', position: 'FL' };

describe('what the log says of a part', () => {
  it('M1: a card that is done is a look, with what was found', () => {
    const log = eventOf({ done: [done('belt', 'B', finding('needsWork', 'FL')), done('other', 'A')] });
    expect(partRecordsOf(log, BELT)).toEqual([
      { kind: 'closed', point: 5, cardId: 'belt', findings: [{ position: 'FL', grade: 'needsWork' }] },
    ]);
  });

  it('M2: a look of a round is a part of its own: it hears of its own findings only', () => {
    const round = done('corner', 'A', finding('needsWork', 'FL', 'hose'), finding('watch', 'FR', 'arm'));
    const log = eventOf({ done: [round] });
    expect(partRecordsOf(log, HOSE)).toMatchObject([
      { kind: 'closed', cardId: 'corner~hose', findings: [{ position: 'FL', grade: 'needsWork' }] },
    ]);
    expect(partRecordsOf(log, { cardId: 'corner', lookId: null })).toMatchObject([{ findings: [] }]);
  });

  it('M2: says where a new part went on for a finding, and of which look', () => {
    const boot = { ...finding('needsWork', 'FL', 'hose'), newPart: true } as const;
    const log = eventOf({ done: [done('corner', 'A', boot, finding('needsWork', 'FR', 'hose'))] });
    expect(partRecordsOf(log, HOSE)).toEqual([
      {
        ...{ kind: 'closed', point: 2, cardId: 'corner~hose' },
        findings: [
          { position: 'FL', grade: 'needsWork', newPart: true },
          { position: 'FR', grade: 'needsWork' },
        ],
      },
    ]);
    expect(partRecordsOf(log, { cardId: 'corner', lookId: 'arm' })).toMatchObject([{ findings: [] }]);
  });

  it('M3: a card done at home is a look that found all in order, at the start', () => {
    const log = eventOf({ facts: factsOf([BEFORE_START, { kind: 'prepared', cardIds: ['belt'] }]) });
    expect(partRecordsOf(log, BELT)).toEqual([{ kind: 'closed', point: 0, cardId: 'belt', findings: [] }]);
  });

  it.each([
    ['planned', 'preventive'],
    ['damagedByAnother', 'preventive'],
    [undefined, null],
  ] as const)('M4: a new part because %s says that the old one was good: %s', (because, expected) => {
    const fact: CarFact = { kind: 'fitted', cardId: 'belt', position: 'FL', words: '', because };
    expect(partRecordsOf(eventOf({ facts: factsOf([ON_SS1, fact]) }), BELT)).toEqual([
      { kind: 'fitted', ...place, because: expected },
    ]);
  });

  it.each([
    ['wornOut', 'here'],
    ['broke', 'sinceLastPoint'],
  ] as const)('M4: a new part because %s says that the old one failed %s', (because, where) => {
    const fact: CarFact = { kind: 'fitted', cardId: 'belt', position: 'FL', words: '', because };
    expect(partRecordsOf(eventOf({ facts: factsOf([ON_SS1, fact]) }), BELT)).toEqual([
      { kind: 'broke', ...place, where },
      { kind: 'fitted', ...place, because: null },
    ]);
  });

  it('M5: a new part of another kind ends the design, after the failure that led to it', () => {
    const other: CarFact = { kind: 'fitted', cardId: 'belt', position: 'FL', words: '', otherKind: true };
    const modified = { kind: 'modified', ...place, newPart: true };
    expect(partRecordsOf(eventOf({ facts: factsOf([ON_SS1, other]) }), BELT)).toEqual([modified]);
    const broken = eventOf({ facts: factsOf([ON_SS1, { ...other, because: 'broke' }]) });
    expect(partRecordsOf(broken, BELT)).toEqual([
      { kind: 'broke', ...place, where: 'sinceLastPoint' },
      modified,
    ]);
    const altered: CarFact = { kind: 'modified', cardId: 'belt', position: 'FL', words: '' };
    expect(partRecordsOf(eventOf({ facts: factsOf([ON_SS1, altered]) }), BELT)).toEqual([
      { kind: 'modified', ...place, newPart: false },
    ]);
  });

  it('M6: an incident is a failure of the part that was said to break in it, at the wheel that was tapped', () => {
    const incident = { kind: 'incident', code: 'hardLanding', place: 'frontLeft', words: '' } as const;
    const named: CarFact = { ...incident, brokenCardId: 'belt' };
    expect(partRecordsOf(eventOf({ facts: factsOf([ON_SS1, named], [ON_SS1, incident]) }), BELT)).toEqual([
      { kind: 'broke', ...place, where: 'sinceLastPoint' },
    ]);
    const inside: CarFact = { ...named, place: 'engineBay' };
    expect(partRecordsOf(eventOf({ facts: factsOf([AT_A, inside]) }), BELT)).toMatchObject([
      { position: null, where: 'here' },
    ]);
  });

  it('M7: a lasting repair is one at the places the task had left as temporary', () => {
    const task = { serviceId: 'A', source: { kind: 'card', cardId: 'belt' } } as const;
    const madeGood = (entryId: string): CarFact => ({
      ...{ kind: 'madeGood', of: taskIdOf({ entryId, ...task }) },
      words: '',
    });
    const found = done('belt', 'A', finding('temporaryRepair', 'FL'), finding('needsWork', 'FR'));
    const repairs = (entryId: string) =>
      partRecordsOf(eventOf({ done: [found], facts: factsOf([ON_SS3, madeGood(entryId)]) }), BELT).slice(1);
    expect(repairs('car7')).toEqual([{ kind: 'madeGood', point: 5, cardId: 'belt', position: 'FL' }]);
    expect(repairs('another event')).toMatchObject([{ kind: 'madeGood', position: null }]);
  });

  it('M8: at one point what was closed comes before the facts, and those in the order of the log', () => {
    const fitted: CarFact = { kind: 'fitted', cardId: 'belt', position: 'FL', words: '' };
    const altered: CarFact = { kind: 'modified', cardId: 'belt', position: 'FL', words: '' };
    const facts = factsOf([AT_A, fitted], [AT_A, altered]).toReversed();
    const log = eventOf({ facts, done: [done('belt', 'A', finding('needsWork', 'FL'))] });
    expect(partRecordsOf(log, BELT).map(({ kind }) => kind)).toEqual(['closed', 'fitted', 'modified']);
  });

  it('passes over what belongs to a stage or service that the itinerary no longer has', () => {
    const gone: FactPlace = { kind: 'road', afterStageId: 'SS99' };
    const fitted: CarFact = { kind: 'fitted', cardId: 'belt', position: null, words: '' };
    const log = eventOf({ done: [done('belt', 'Z')], facts: factsOf([gone, fitted], [gone, OUT]) });
    expect(partRecordsOf(log, BELT)).toEqual([]);
    expect(wayDriven(log).halts).toEqual([]);
  });
});

describe('carLivesOf', () => {
  const belt = { readings: [], place: 'engineBay' as const, intervals: [], fitsNewPart: true };
  const question = lifeQuestionOf(belt, BELT);

  it('joins the events of a car, with the way of each and where it was out', () => {
    const facts = factsOf([ON_SS3, { ...OUT, cause: 'offRoad' }]);
    const lives = carLivesOf(
      { carId: 'heron', carried: {}, events: [eventOf({ workedAt: ['B'] }), eventOf({ facts })] },
      [question],
    );
    expect(lives.events.map(({ finished }) => finished)).toEqual([true, false]);
    expect(lives.events[1]?.records).toMatchObject([
      { kind: 'out', point: 5, cause: 'offRoad', cardId: null },
    ]);
    expect(distanceOf(lives)).toMatchObject({ stages: 3, stageMetres: 30_000 });
  });

  it('knows the age of a part at first only where doing the card means a new one', () => {
    const log = { carId: 'heron', events: [], carried: { belt: { stageMetres: 41_000, stages: 4 } } };
    expect(carLivesOf(log, [question]).carried).toEqual([
      { cardId: 'belt', position: null, age: { stageMetres: 41_000 } },
    ]);
    expect(carLivesOf(log, [lifeQuestionOf({ ...belt, fitsNewPart: false }, BELT)]).carried).toEqual([]);
  });
});

describe('lifeQuestionOf', () => {
  it('counts by the limit of the card if that is one of driving, else by stage metres', () => {
    const limitedBy = (...counters: ('services' | 'totalMetres' | 'stages')[]) => {
      const intervals = counters.map((counter) => ({ counter, every: 1, tolerance: 0 }));
      return lifeQuestionOf({ readings: [], place: 'body', intervals, fitsNewPart: false }, BELT).counter;
    };
    expect(limitedBy('services', 'totalMetres')).toBe('totalMetres');
    expect(limitedBy('stages')).toBe('stages');
    expect(limitedBy('services')).toBe('stageMetres');
    expect(limitedBy()).toBe('stageMetres');
  });

  it('has one part at each wheel of a card for all corners, and a look never renews', () => {
    const corner = { readings: [], place: 'allCorners' as const, intervals: [], fitsNewPart: true };
    expect(lifeQuestionOf(corner, HOSE)).toMatchObject({
      cardId: 'corner~hose',
      positions: ['FL', 'FR', 'RL', 'RR'],
      ...{ doneRenews: false, shows: 'whenLooked' },
    });
    expect(lifeQuestionOf(corner, { ...HOSE, lookId: null })).toMatchObject({
      ...{ doneRenews: true, shows: 'atOnce' },
    });
    expect(partOfId(partIdOf(HOSE))).toEqual(HOSE);
    expect(partOfId(partIdOf(BELT))).toEqual(BELT);
  });
});

describe('the log of many parts', () => {
  it('gives each part what it is given when it is asked about alone, from the whole log', () => {
    const task = taskIdOf({ entryId: 'car7', serviceId: 'A', source: { kind: 'card', cardId: 'belt' } });
    const incident: CarFact = {
      ...{ kind: 'incident', code: 'hardLanding', place: 'frontLeft', words: '', brokenCardId: 'corner' },
    };
    const logged = eventOf({
      done: [
        done('corner', 'A', finding('needsWork', 'FL', 'hose')),
        done('belt', 'A', finding('temporaryRepair', 'FL')),
        done('corner', 'B'),
      ],
      facts: factsOf(
        [BEFORE_START, { kind: 'prepared', cardIds: ['belt', 'corner', 'belt'] }],
        [ON_SS1, incident],
        [ON_SS1, { kind: 'modified', cardId: 'corner', position: 'FL', words: '' }],
        [AT_A, { kind: 'fitted', cardId: 'belt', position: 'FL', words: '', because: 'broke' }],
        [ON_SS3, { kind: 'madeGood', of: task, words: '' }],
        [ON_SS3, OUT],
      ),
    });
    const parts = [BELT, HOSE, { cardId: 'corner', lookId: null }, { cardId: 'never', lookId: null }];
    for (const part of parts) {
      const cut = loggedByCard(logged)(part.cardId);
      expect(partRecordsOf(cut, part)).toEqual(partRecordsOf(logged, part));
    }
    expect(partRecordsOf(logged, BELT)).toHaveLength(5);
    expect(loggedByCard(logged)('never')).toMatchObject({ done: [], facts: [] });
  });
});
