import type { PushedAction } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { FakeStorage, MIA, NUTS, nextId, taskAt } from './fixtures';
import { Outbox } from './outbox';

function actionOf(deviceSeq: number): PushedAction {
  const stamp = { deviceId: 'phone', deviceSeq, deviceTime: 1_000, version: 1, by: MIA };
  return { kind: 'takeTask', args: { task: taskAt(NUTS) }, actionId: nextId(), ...stamp };
}

describe('Outbox', () => {
  it('lists in the order of the device and forgets what was answered', () => {
    const outbox = new Outbox(new FakeStorage(), 'box');
    const [second, first] = [actionOf(2), actionOf(1)];
    outbox.add(second);
    outbox.add(first);
    expect(outbox.list()).toEqual([first, second]);
    outbox.settle([first.actionId]);
    expect(outbox.list()).toEqual([second]);
  });

  it('puts back what another tab overwrote in the same instant', () => {
    const storage = new FakeStorage();
    const one = new Outbox(storage, 'box');
    const mine = actionOf(1);
    one.add(mine);
    const theirs = actionOf(2);
    storage.write('box', { actions: [theirs], answered: [] });
    one.refresh();
    expect(new Outbox(storage, 'box').list()).toEqual([mine, theirs]);
  });

  it('does not put back what another tab got answered', () => {
    const storage = new FakeStorage();
    const one = new Outbox(storage, 'box');
    const two = new Outbox(storage, 'box');
    const mine = actionOf(1);
    one.add(mine);
    two.settle([mine.actionId]);
    one.refresh();
    expect(one.list()).toEqual([]);
    expect(new Outbox(storage, 'box').list()).toEqual([]);
  });

  it.each([null, 'text', { actions: 7 }, { actions: [{ kind: 'takeTask' }] }])(
    'takes %j in storage for nothing',
    (stored) => {
      const storage = new FakeStorage();
      storage.write('box', stored);
      expect(new Outbox(storage, 'box').list()).toEqual([]);
    },
  );
});
