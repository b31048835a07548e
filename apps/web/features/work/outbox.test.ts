import type { PushedAction } from '@halfshaft/worklog';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { FakeBox, FakeDisk, KAI, MIA, NUTS, nextId, taskAt } from './fixtures';
import { Outbox } from './outbox';
import type { WaitingAction } from './waiting-action';

const PLACE = 'team.event';

function waitingOf(outbox: Outbox, owner = MIA): WaitingAction {
  const stamp = { deviceId: outbox.deviceId, deviceSeq: outbox.nextSeq(), deviceTime: 1_000, version: 1 };
  const action: PushedAction = {
    kind: 'takeTask',
    args: { task: taskAt(NUTS) },
    actionId: nextId(),
    ...stamp,
    by: owner,
  };
  return { action, place: PLACE, eventName: 'Small event', owner, ownerName: 'Mia', words: 'Mia took it' };
}

async function openTab(disk: FakeDisk): Promise<{ outbox: Outbox; box: FakeBox }> {
  const box = new FakeBox(disk);
  const outbox = new Outbox({ box, place: PLACE, newId: nextId, onChange: () => undefined });
  await outbox.open();
  box.hear((change) => outbox.hear(change));
  return { outbox, box };
}

const seqs = (outbox: Outbox) => outbox.list().map(({ action }) => action.deviceSeq);
const ids = (outbox: Outbox) => outbox.list().map(({ action }) => action.actionId);

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('Outbox', () => {
  it('shows an action only once it is on the disk', async () => {
    const disk = new FakeDisk();
    const { outbox } = await openTab(disk);
    const adding = outbox.add(waitingOf(outbox));
    expect([outbox.list().length, outbox.listEntering().length]).toEqual([0, 1]);
    await adding;
    expect([outbox.list().length, outbox.listEntering().length, disk.waiting.size]).toEqual([1, 0, 1]);
    const { outbox: reloaded } = await openTab(disk);
    expect(ids(reloaded)).toEqual(ids(outbox));
  });

  it('counts on across two tabs that act in the same instant, and both see both', async () => {
    const disk = new FakeDisk();
    const [one, two] = [await openTab(disk), await openTab(disk)];
    const [first, second] = [waitingOf(one.outbox), waitingOf(two.outbox)];
    expect(first.action.deviceSeq).toBe(second.action.deviceSeq);
    await Promise.all([one.outbox.add(first), two.outbox.add(second)]);
    expect(seqs(one.outbox)).toEqual([1, 2]);
    expect(ids(two.outbox)).toEqual(ids(one.outbox));
  });

  it('lets go of what another tab got answered', async () => {
    const disk = new FakeDisk();
    const [one, two] = [await openTab(disk), await openTab(disk)];
    const mine = waitingOf(one.outbox);
    await one.outbox.add(mine);
    await two.outbox.settle({ ids: [mine.action.actionId], notices: [] });
    expect(one.outbox.list()).toEqual([]);
    expect(disk.waiting.size).toBe(0);
  });

  it('tells what the disk refused, loses nothing else, and keeps it when there is room again', async () => {
    const disk = new FakeDisk();
    const { outbox } = await openTab(disk);
    await outbox.add(waitingOf(outbox));
    disk.isFull = true;
    await outbox.add(waitingOf(outbox));
    expect([outbox.list().length, outbox.looseCount, disk.waiting.size]).toEqual([2, 1, 1]);
    disk.isFull = false;
    await outbox.add(waitingOf(outbox));
    await vi.advanceTimersByTimeAsync(0);
    expect(seqs(outbox)).toEqual([1, 2, 3]);
    expect([outbox.looseCount, disk.waiting.size]).toEqual([0, 3]);
    expect([...disk.waiting.values()].map(({ action }) => action.deviceSeq).sort()).toEqual([1, 2, 3]);
  });

  it('does not wait for ever for a disk that gives no answer, and keeps it under the number it was shown with', async () => {
    const disk = new FakeDisk();
    const { outbox, box } = await openTab(disk);
    let answer: () => void = () => undefined;
    const keep = box.keep.bind(box);
    vi.spyOn(box, 'keep').mockImplementationOnce(async (waiting, fixed) => {
      await new Promise<void>((resolve) => {
        answer = resolve;
      });
      return keep({ ...waiting, action: { ...waiting.action, deviceSeq: 7 } }, fixed);
    });
    const adding = outbox.add(waitingOf(outbox));
    await vi.advanceTimersByTimeAsync(3000);
    await adding;
    expect([seqs(outbox), outbox.looseCount]).toEqual([[1], 1]);
    answer();
    await vi.advanceTimersByTimeAsync(0);
    expect([seqs(outbox), outbox.looseCount]).toEqual([[1], 0]);
    expect([...disk.waiting.values()].map(({ action }) => action.deviceSeq)).toEqual([1]);
  });

  it('hides what was answered although the disk would not let go of it', async () => {
    const disk = new FakeDisk();
    const { outbox } = await openTab(disk);
    const mine = waitingOf(outbox);
    await outbox.add(mine);
    disk.isFull = true;
    await outbox.settle({ ids: [mine.action.actionId], notices: [] });
    await outbox.refresh();
    expect(outbox.list()).toEqual([]);
  });

  it("keeps apart whose they are, and each one's notices", async () => {
    const disk = new FakeDisk();
    const { outbox } = await openTab(disk);
    const [mias, kais] = [waitingOf(outbox), waitingOf(outbox, KAI)];
    await outbox.add(mias);
    await outbox.add(kais);
    expect(outbox.listOf(KAI).map(({ action }) => action.actionId)).toEqual([kais.action.actionId]);
    const { actionId: id } = mias.action;
    const notice = { id, place: PLACE, owner: MIA, kind: 'refused', sentence: 'No.', action: null } as const;
    await outbox.settle({ ids: [id], notices: [notice] });
    expect([outbox.noticesOf(MIA).length, outbox.noticesOf(KAI).length]).toEqual([1, 0]);
    const { outbox: reloaded } = await openTab(disk);
    expect(reloaded.noticesOf(MIA)).toEqual([notice]);
    await reloaded.dismiss(id);
    await Promise.resolve();
    expect((await openTab(disk)).outbox.noticesOf(MIA)).toEqual([]);
  });
});
