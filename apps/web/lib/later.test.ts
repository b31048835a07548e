import { expect, it } from 'vitest';
import { fetchAllLater, later } from './later';

it('fetches a part once, however often it is asked for, and has it at hand afterwards', async () => {
  let loads = 0;
  const part = later(async () => {
    loads += 1;
    return 'dialogs';
  });
  expect(part.now()).toBeNull();
  expect(await Promise.all([part.fetch(), part.fetch()])).toEqual(['dialogs', 'dialogs']);
  expect(await part.fetch()).toBe('dialogs');
  expect(part.now()).toBe('dialogs');
  expect(loads).toBe(1);
});

it('tries anew after a failure', async () => {
  let isReached = false;
  const part = later(async () => {
    if (!isReached) throw new Error('no network');
    return 'dialogs';
  });
  await expect(part.fetch()).rejects.toThrow('no network');
  expect(part.now()).toBeNull();
  isReached = true;
  expect(await part.fetch()).toBe('dialogs');
});

it('fetches all parts, and one that cannot be reached does not keep the others', async () => {
  const lost = later(async () => {
    throw new Error('no network');
  });
  const found = later(async () => 'shapes');
  await fetchAllLater();
  expect(found.now()).toBe('shapes');
  expect(lost.now()).toBeNull();
});
