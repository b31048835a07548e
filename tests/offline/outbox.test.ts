import { randomUUID } from 'node:crypto';
import { resolve } from 'node:path';
import { ACTION_VERSION } from '@halfshaft/worklog';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { foundTeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES } from '../support/screens';
import { countKept, openBay, openPhone, raiseSnag, readLog, snagWords } from './phone';
import { expectInOrder, sendLongOutbox } from './send-long-outbox';

const MANY = 10_000;
/** So many are sent here; `long-outbox.prove.ts` sends all. */
const ANSWERED = 1_500;
const PATIENT = { timeout: 15_000 };

const house = keepHouse({ pages: PAGES });

it('sends from two tabs of one phone in the order it was done, each once', async () => {
  const team = await foundTeamAtEvent(house, 'Tabs');
  const { page, context } = await openPhone(house, team.cookie);
  const other = await context.newPage();
  for (const tab of [page, other]) await openBay(tab, team);
  await context.setOffline(true);
  const said: string[] = [];
  for (let round = 1; round <= 4; round += 1) {
    for (const [place, tab] of [page, other].entries()) {
      const words = `Rattle ${round} in tab ${place + 1}`;
      await raiseSnag(tab, words);
      said.push(words);
    }
  }
  for (const tab of [page, other])
    await tab.getByText('8 entries kept on this phone', { exact: false }).waitFor();
  await context.setOffline(false);
  await expect.poll(async () => snagWords(await readLog(team)), { timeout: 30_000 }).toEqual(said);
  for (const tab of [page, other]) await tab.getByText('kept on this phone').waitFor({ state: 'detached' });
  expect(await countKept(page)).toBe(0);
  expect(snagWords(await readLog(team))).toEqual(said);
});

it('says at once when the phone is full, loses nothing else, and keeps it when there is room again', async () => {
  const team = await foundTeamAtEvent(house, 'Quota');
  const { page, context } = await openPhone(house, team.cookie);
  await openBay(page, team);
  await context.setOffline(true);
  await raiseSnag(page, 'Before it was full');
  await expect.poll(() => countKept(page), PATIENT).toBe(1);
  await setFull(page, true);
  await raiseSnag(page, 'No room for this one');
  await page.getByText('This phone has no room to keep 1 entry.', { exact: false }).waitFor();
  await page.getByText('1 entry kept on this phone', { exact: false }).waitFor();
  expect(await countKept(page)).toBe(1);
  await page.screenshot({ path: pictureOf('phone-full') });
  await setFull(page, false);
  await raiseSnag(page, 'Room again');
  await page.getByText('This phone has no room to keep', { exact: false }).waitFor({ state: 'detached' });
  expect(await countKept(page)).toBe(3);
  await page.evaluate(() => {
    const nearlyFull = async () => ({ quota: 6_000_000, usage: 1_000_000 });
    Object.defineProperty(navigator.storage, 'estimate', { value: nearlyFull });
  });
  await raiseSnag(page, 'And one more');
  await page.getByText('There is room for about 5 MB.', { exact: false }).waitFor();
  await context.setOffline(false);
  await expect
    .poll(async () => snagWords(await readLog(team)).sort(), PATIENT)
    .toEqual(['And one more', 'Before it was full', 'No room for this one', 'Room again']);
});

it('takes over what the app before left, of its version and the one before; an older one is told, nothing waits behind it', async () => {
  const team = await foundTeamAtEvent(house, 'Update');
  const { page } = await openPhone(house, team.cookie);
  await openBay(page, team);
  const stamp = { deviceId: 'old phone', deviceTime: Date.now(), by: team.personId };
  const snag = (words: string, deviceSeq: number, version: number, more: object = {}) => {
    const args = { snagId: randomUUID(), entryId: team.entryId, serviceId: 'A', place: 'RR', words, ...more };
    return { kind: 'raiseSnag', args, actionId: randomUUID(), deviceSeq, version, ...stamp };
  };
  const actions = [
    snag('From far too old an app', 1, ACTION_VERSION - 2),
    snag('From the app before', 2, ACTION_VERSION - 1),
    snag('From this app', 3, ACTION_VERSION, { urgent: true }),
  ];
  await page.evaluate(
    ([key, text]) => {
      localStorage.setItem('halfshaft.work.device', JSON.stringify({ deviceId: 'old phone', lastSeq: 3 }));
      localStorage.setItem(key, text);
    },
    [
      `halfshaft.work.${team.teamId}.${team.eventId}.outbox`,
      JSON.stringify({ actions, answered: [] }),
    ] as const,
  );
  await page.reload();
  await expect
    .poll(async () => snagWords(await readLog(team)), PATIENT)
    .toEqual(['From the app before', 'From this app']);
  await page.getByText('This phone runs an old version', { exact: false }).waitFor();
  await expect.poll(() => countKept(page), PATIENT).toBe(0);
  await raiseSnag(page, 'After the update');
  await expect
    .poll(async () => (await readLog(team)).at(-1)?.body)
    .toMatchObject({ words: 'After the update' });
});

it(`opens, counts and sends ${MANY} waiting entries without holding up a thumb`, async () => {
  const { log, longestTask } = await sendLongOutbox(house, { waiting: MANY, answered: ANSWERED });
  expectInOrder(log);
  expect(longestTask).toBeLessThan(1000);
});

/** From here on the browser refuses to store actions, as it does when the phone has no room; or takes them again. */
async function setFull(page: Page, isFull: boolean): Promise<void> {
  await page.evaluate((full) => {
    const kept = window as unknown as { realPut?: IDBObjectStore['put'] };
    const real = kept.realPut ?? IDBObjectStore.prototype.put;
    kept.realPut = real;
    IDBObjectStore.prototype.put = function put(this: IDBObjectStore, ...args: [unknown, IDBValidKey?]) {
      if (full && this.name === 'outbox') throw new DOMException('No room.', 'QuotaExceededError');
      return real.apply(this, args);
    };
  }, isFull);
}

function pictureOf(name: string): string {
  return resolve(import.meta.dirname, `../screenshots/${name}.png`);
}
