import 'fake-indexeddb/auto';
import { getEventListeners } from 'node:events';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { LEASE_MILLIS, turnByLease } from './lease';
import type { Turn } from './take-turn';

const { signal } = new AbortController();

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.unstubAllGlobals();
});

/** A tab that keeps its turn until it is let go. */
function begin(tab: string, now: () => number) {
  let give: () => void = () => undefined;
  const over = new Promise<void>((resolve) => {
    give = resolve;
  });
  let turn: Turn | null = null;
  const work = async (mine: Turn) => {
    turn = mine;
    await over;
  };
  const done = turnByLease(tab, now)('place', work, signal);
  return { give, done, turn: () => turn };
}

describe('turnByLease', () => {
  it('lets one tab send, and the other once it has given way', async () => {
    const now = () => 1_000_000;
    const one = begin('one', now);
    await vi.waitFor(() => expect(one.turn()).not.toBeNull());
    const two = begin('two', now);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(two.turn()).toBeNull();
    one.give();
    await one.done;
    await vi.waitFor(() => expect(two.turn()).not.toBeNull(), { timeout: 4000 });
    two.give();
    await two.done;
    // However long it waited, nothing of its looking again is left.
    expect(getEventListeners(signal, 'abort')).toHaveLength(0);
  });

  it('passes over a tab that fell silent; that one learns so before it sends on', async () => {
    let now = 1_000_000;
    const one = begin('one', () => now);
    await vi.waitFor(() => expect(one.turn()).not.toBeNull());
    expect(await one.turn()?.holds()).toBe(true);
    now += LEASE_MILLIS;
    const two = begin('two', () => now);
    await vi.waitFor(() => expect(two.turn()).not.toBeNull());
    expect(await one.turn()?.holds()).toBe(false);
    one.give();
    await one.done;
    expect(await two.turn()?.holds()).toBe(true);
    two.give();
    await two.done;
  });

  it('does not wait for a turn written before the clock was set back', async () => {
    let now = 9_000_000;
    const one = begin('one', () => now);
    await vi.waitFor(() => expect(one.turn()).not.toBeNull());
    now = 1_000;
    const two = begin('two', () => now);
    await vi.waitFor(() => expect(two.turn()).not.toBeNull());
    for (const tab of [one, two]) tab.give();
    await Promise.all([one.done, two.done]);
  });
});
