import { type ServiceWindow, servicesOf } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import type { CarFact, FactPlace, RecordedFact } from './car-fact';
import { lastDoneOf } from './last-done-of';
import type { Task, TaskRef, TaskState } from './model';
import { emptyState } from './state';
import { taskOf } from './task-of';
import { deepFreeze } from './testing/deep-freeze';
import { ROUTE } from './testing/route';

const BEFORE_START: FactPlace = { kind: 'road', afterStageId: null };
const BEHIND_SS3: FactPlace = { kind: 'road', afterStageId: 'SS3' };

function serviceAt(id: string, inIndex: number): ServiceWindow {
  const controls = { inControl: `TC${inIndex}`, outControl: `TC${inIndex + 1}`, name: `Service ${id}` };
  const place = { inIndex, outIndex: inIndex + 1, leg: 1, section: 1, allowedSeconds: 1_200 };
  return { id, kind: 'service', ...controls, ...place };
}

const SERVICES = deepFreeze([serviceAt('A', 4), serviceAt('B', 9), serviceAt('C', 14)]);
const CARRIED = deepFreeze({ nuts: { stages: 3 }, pads: { stageMetres: 41_000 } });

function task(cardId: string, serviceId: string, state: TaskState = 'done', entryId = 'car7'): Task {
  return { ...taskOf(emptyState, { entryId, serviceId, source: { kind: 'card', cardId } }, null), state };
}

const NUTS = { id: 'nuts', place: 'engineBay' as const, readings: [] };
const CAR = { entryId: 'car7', cards: [NUTS], carried: CARRIED };

function factAt(at: FactPlace, fact: CarFact, entryId = 'car7'): RecordedFact {
  const who = { recordedBy: 'mia', changedBy: 'mia', changedSeq: 1, withdrawn: false };
  return { factId: JSON.stringify([at, fact]), entryId, at, fact, ...who };
}

/** Of the route: start 0, SS1 1, Service A 2-3, SS3 4, Service B 5-6. */
function onRoute(facts: RecordedFact[], tasks: Task[] = [], untilIndex = 6) {
  const until = { itinerary: ROUTE, services: servicesOf(ROUTE), untilIndex };
  return Object.fromEntries(lastDoneOf({ tasks, facts }, until, CAR));
}

function lastDone(tasks: Task[], services = SERVICES) {
  const until = { itinerary: ROUTE, services, untilIndex: 20 };
  return Object.fromEntries(lastDoneOf({ tasks, facts: [] }, until, CAR));
}
const BROUGHT = {
  nuts: { pointIndex: null, carried: { stages: 3 } },
  pads: { pointIndex: null, carried: { stageMetres: 41_000 } },
};

describe('lastDoneOf', () => {
  it('starts from the wear each card brought along', () => {
    expect(lastDone([])).toEqual(BROUGHT);
  });

  it('takes the in-control of the service where it was done, and forgets what was brought', () => {
    expect(lastDone([task('nuts', 'B')])).toEqual({ ...BROUGHT, nuts: { pointIndex: 9, carried: null } });
  });

  it('takes the latest service on the way, in whatever order the tasks come', () => {
    const tasks = [task('nuts', 'A'), task('nuts', 'C'), task('nuts', 'B')];
    for (const some of [tasks, [...tasks].reverse()]) {
      expect(lastDone(some).nuts).toEqual({ pointIndex: 14, carried: null });
    }
  });

  it('counts a card that brought nothing along', () => {
    expect(lastDone([task('belt', 'A')])).toEqual({ ...BROUGHT, belt: { pointIndex: 4, carried: null } });
  });

  it.each<TaskState>(['open', 'claimed', 'underWay', 'carriedOver', 'notNeeded'])(
    'does not count what is %s',
    (state) => {
      expect(lastDone([task('nuts', 'B', state)])).toEqual(BROUGHT);
    },
  );

  it('passes over other cars, snags, and services the itinerary no longer has', () => {
    const repair: TaskRef = { entryId: 'car7', serviceId: 'B', source: { kind: 'snag', snagId: 'nuts' } };
    const done: Task[] = [
      task('nuts', 'B', 'done', 'car9'),
      task('nuts', 'D'),
      { ...taskOf(emptyState, repair, null), state: 'done' },
    ];
    expect(lastDone(done)).toEqual(BROUGHT);
  });

  it('counts a service whose in-control is the first point of all', () => {
    expect(lastDone([task('nuts', 'A')], [serviceAt('A', 0)]).nuts).toEqual({ pointIndex: 0, carried: null });
  });

  it('takes where new parts went on all round, when that was later', () => {
    const fitted = factAt(BEHIND_SS3, { kind: 'fitted', cardId: 'nuts', position: null, words: '' });
    expect(onRoute([fitted], [task('nuts', 'A')]).nuts).toEqual({ pointIndex: 5, carried: null });
    expect(onRoute([fitted], [task('nuts', 'A')], 4).nuts).toEqual({ pointIndex: 2, carried: null });
  });

  it('takes what was done at home as done at the start, and forgets what was brought', () => {
    const prepared = factAt(BEFORE_START, { kind: 'prepared', cardIds: ['nuts', 'belt'] });
    const atStart = { pointIndex: 0, carried: null };
    expect(onRoute([prepared])).toEqual({ ...BROUGHT, nuts: atStart, belt: atStart });
    expect(onRoute([{ ...prepared, withdrawn: true }])).toEqual(BROUGHT);
    expect(onRoute([{ ...prepared, entryId: 'car9' }])).toEqual(BROUGHT);
  });

  it('takes work at a service after the preparation as the later one', () => {
    const prepared = factAt(BEFORE_START, { kind: 'prepared', cardIds: ['nuts'] });
    expect(onRoute([prepared], [task('nuts', 'B')]).nuts).toEqual({ pointIndex: 5, carried: null });
  });

  it('does not count yet what was done farther along the route than asked for', () => {
    const prepared = factAt(BEHIND_SS3, { kind: 'prepared', cardIds: ['nuts'] });
    expect(onRoute([prepared], [], 4)).toEqual(BROUGHT);
    expect(onRoute([prepared], [], 5).nuts).toEqual({ pointIndex: 5, carried: null });
  });
});
