import { expect, it, vi } from 'vitest';
import { KAI, NUTS, taskAt } from './fixtures';

const task = taskAt(NUTS);
const tooLong = { task, reason: 'x'.repeat(301) };

it('lets arguments pass as they are until the shapes have come, then trims them and names what is wrong', async () => {
  // A copy of its own: other tests that share their modules may have fetched the shapes already.
  vi.resetModules();
  const { ACTION_SHAPES, checkArgs } = await import('./check-args');
  expect(checkArgs('dropTask', tooLong)).toEqual({ ok: true, args: tooLong });
  await ACTION_SHAPES.fetch();
  expect(checkArgs('takeTask', { task })).toEqual({ ok: true, args: { task } });
  expect(checkArgs('dropTask', { task, reason: ' no time ' })).toEqual({
    ok: true,
    args: { task, reason: 'no time' },
  });
  expect(checkArgs('dropTask', tooLong)).toEqual({
    ok: false,
    sentence: 'The reason is longer than 300 characters. Shorten it.',
  });
  const time = { entryId: KAI, controlId: 'TC1', writtenAt: 60, heldMinutes: 1.5 };
  expect(checkArgs('recordTime', time)).toMatchObject({ ok: false });
});
