import { beforeEach, expect, it, vi } from 'vitest';

async function freshPage() {
  vi.resetModules();
  vi.useFakeTimers();
  return import('./first-screen');
}
let page: Awaited<ReturnType<typeof freshPage>>;
beforeEach(async () => {
  page = await freshPage();
  return () => vi.useRealTimers();
});

it('waits until the screen stands and the parts of the page are here, and from then on for nothing', async () => {
  const ran: string[] = [];
  page.behindFirstScreen(() => ran.push('links'));
  const takeBack = page.behindFirstScreen(() => ran.push('left meanwhile'));
  takeBack();
  const { later } = await import('./later');
  let bring = () => {};
  later(
    () =>
      new Promise<void>((done) => {
        bring = done;
      }),
  );
  page.firstScreenStands();
  await vi.runAllTimersAsync();
  expect(ran).toEqual([]);
  expect(page.hasFirstScreen()).toBe(false);
  bring();
  await vi.runAllTimersAsync();
  expect(ran).toEqual(['links']);
  expect(page.hasFirstScreen()).toBe(true);
  page.behindFirstScreen(() => ran.push('at once'));
  expect(ran).toEqual(['links', 'at once']);
});

it('does not wait for ever for a page that never says so', async () => {
  const ran: string[] = [];
  page.behindFirstScreen(() => ran.push('worker'));
  await vi.runAllTimersAsync();
  expect(ran).toEqual(['worker']);
});
