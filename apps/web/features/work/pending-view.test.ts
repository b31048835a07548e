import { ACTION_VERSION, type PushedAction, taskIdOf } from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import { emptyLog } from './confirmed-log';
import { CAR, MIA, NUTS, nextId, replicaOf, taskAt } from './fixtures';
import { PendingView } from './pending-view';

const replica = replicaOf();
const stamp = { deviceId: 'phone', deviceTime: 1_000, version: ACTION_VERSION, by: MIA };
const MANY = 1000;

function stages(count: number): PushedAction[] {
  return Array.from({ length: count }, (_, index) => ({
    ...stamp,
    kind: 'confirmStage',
    args: { entryId: CAR, stageId: 'SS1', driven: index % 2 === 0, conditions: {} },
    actionId: nextId(),
    deviceSeq: index + 1,
  }));
}

/** A view whose slices are run by hand, on a clock that goes on by a millisecond at each look. */
function openView() {
  const slices: (() => void)[] = [];
  let now = 0;
  let ready = 0;
  const view = new PendingView({
    onReady: () => {
      ready += 1;
    },
    now: () => {
      now += 1;
      return now;
    },
    later: (run) => slices.push(run),
  });
  const runAll = () => {
    let ran = 0;
    for (let slice = slices.shift(); slice; slice = slices.shift()) {
      slice();
      ran += 1;
    }
    return ran;
  };
  return { view, runAll, ready: () => ready };
}

it('works out a long queue in many short slices and gives the same as at once', () => {
  const actions = stages(MANY);
  const { view, runAll, ready } = openView();
  expect(view.over(emptyLog, replica, actions).pending).toEqual([]);
  expect(runAll()).toBeGreaterThan(MANY / 10);
  expect(ready()).toBe(1);
  const shown = view.over(emptyLog, replica, actions);
  expect(shown.pending.map(({ actionId, seq }) => [actionId, seq])).toEqual(
    actions.map(({ actionId }, index) => [actionId, index + 1]),
  );
  expect([...shown.state.stages.values()]).toMatchObject([{ stageId: 'SS1', driven: false }]);
});

it('shows what was tapped meanwhile at once, on what was known before', () => {
  const actions = stages(MANY);
  const { view, runAll } = openView();
  view.over(emptyLog, replica, actions);
  runAll();
  const take: PushedAction = {
    ...stamp,
    kind: 'takeTask',
    args: { task: taskAt(NUTS) },
    actionId: nextId(),
    deviceSeq: MANY + 1,
  };
  const newer = { ...replica };
  const holderIn = (state: ReturnType<typeof view.over>['state']) =>
    state.tasks.get(taskIdOf(taskAt(NUTS)))?.holder;
  const shown = view.over(emptyLog, newer, [...actions, take]);
  expect(holderIn(shown.state)).toBe(MIA);
  runAll();
  expect(holderIn(view.over(emptyLog, newer, [...actions, take]).state)).toBe(MIA);
});

it('decides nothing twice while nothing below has changed, and leaves what it has shown as it was', () => {
  const actions = stages(3);
  const { view } = openView();
  const two = view.over(emptyLog, replica, actions.slice(0, 2));
  const three = view.over(emptyLog, replica, actions);
  expect([two.pending.length, three.pending.length]).toEqual([2, 3]);
  expect(three.pending[0]).toBe(two.pending[0]);
  expect(two.state.actions.size).toBe(2);
  expect(view.over(emptyLog, replica, actions).state).toBe(three.state);
});
