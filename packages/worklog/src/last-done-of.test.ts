import type { ServiceWindow } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { lastDoneOf } from './last-done-of';
import type { Task, TaskRef, TaskState } from './model';
import { emptyState } from './state';
import { taskOf } from './task-of';
import { deepFreeze } from './testing/deep-freeze';

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

const lastDone = (tasks: Task[]) => Object.fromEntries(lastDoneOf(tasks, SERVICES, 'car7', CARRIED));
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
    const done = lastDoneOf([task('nuts', 'A')], [serviceAt('A', 0)], 'car7', CARRIED);
    expect(done.get('nuts')).toEqual({ pointIndex: 0, carried: null });
  });

  it('takes where new parts went on all round, when that was later', () => {
    const fitted = (pointIndex: number) => [{ cardId: 'nuts', pointIndex }];
    const at = (pointIndex: number) =>
      lastDoneOf([task('nuts', 'B')], SERVICES, 'car7', CARRIED, fitted(pointIndex)).get('nuts');
    expect(at(12)).toEqual({ pointIndex: 12, carried: null });
    expect(at(7)).toEqual({ pointIndex: 9, carried: null });
    expect(lastDoneOf([], SERVICES, 'car7', CARRIED, fitted(0)).get('nuts')).toEqual({
      pointIndex: 0,
      carried: null,
    });
  });
});
