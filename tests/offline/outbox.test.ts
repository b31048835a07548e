import { randomUUID } from 'node:crypto';
import { resolve } from 'node:path';
import { ACTION_VERSION } from '@halfshaft/worklog';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { foundTeamAtEvent, type TeamAtEvent } from '../support/event';
import { type House, openHouse } from '../support/house';
import { countKept, holdBack, openBay, openPhone, PAGES, raiseSnag, readLog, snagWords } from './phone';

const MANY = 10_000;
/** So many are sent here; the others go the same way. */
const ANSWERED = 1_500;
const PATIENT = { timeout: 15_000 };

let house: House;
beforeAll(async () => {
  house = await openHouse({ pages: PAGES });
});
afterAll(() => house.close());

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
  const team = await foundTeamAtEvent(house, 'Long');
  const { page } = await openPhone(house, team.cookie);
  await openBay(page, team);
  await holdBack(page);
  await fillOutbox(page, team, MANY);
  const began = Date.now();
  await page.reload();
  await page.getByText(`${MANY} entries`, { exact: false }).first().waitFor();
  const opened = Date.now() - began;
  await watchTasks(page);
  await raiseSnag(page, 'Said in the middle of it');
  const reacted = Date.now();
  await page
    .getByText(`${MANY + 1} entries`, { exact: false })
    .first()
    .waitFor();
  await page.unroute('**/trpc/work.push**');
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
  await expect
    .poll(() => countKept(page), { timeout: 90_000, interval: 500 })
    .toBeLessThanOrEqual(MANY - ANSWERED);
  const log = await readLog(team);
  const perSecond = Math.round((1000 * log.length) / (Date.now() - reacted));
  const longest = await page.evaluate(() => (window as unknown as { longest: number }).longest);
  console.info(
    `${MANY} waiting entries: counted ${opened} ms after loading; ${perSecond} a second sent and answered; longest task of the page ${Math.round(longest)} ms`,
  );
  // In the order it was made: stages said to be driven and not driven in turn.
  expect(log.map(({ body }) => body.kind === 'stageConfirmed' && body.driven)).toEqual(
    log.map((_, at) => at % 2 === 1),
  );
  expect(longest).toBeLessThan(1000);
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

/** As if made one by one without coverage: stages said to be driven and not driven in turn. */
async function fillOutbox(page: Page, team: TeamAtEvent, count: number): Promise<void> {
  const { teamId, eventId, entryId, personId } = team;
  await page.evaluate(
    async ({ place, entryId, personId, count, version }) => {
      const database = await new Promise<IDBDatabase>((done) => {
        const asked = indexedDB.open('halfshaft');
        asked.onsuccess = () => done(asked.result);
      });
      const change = database.transaction(['outbox', 'marks'], 'readwrite');
      const marks = change.objectStore('marks');
      const device = await new Promise<{ deviceId: string }>((done) => {
        const asked = marks.get('device');
        asked.onsuccess = () => done(asked.result);
      });
      const stamp = { deviceId: device.deviceId, deviceTime: Date.now(), by: personId, version };
      const whose = { owner: personId, ownerName: 'Long Founder', eventName: 'Long event', place };
      for (let deviceSeq = 1; deviceSeq <= count; deviceSeq += 1) {
        const args = { entryId, stageId: 'SS1', driven: deviceSeq % 2 === 0, conditions: {} };
        const action = { kind: 'confirmStage', args, actionId: crypto.randomUUID(), deviceSeq, ...stamp };
        change
          .objectStore('outbox')
          .put({ action, words: 'Long Founder confirmed SS1', ...whose }, action.actionId);
      }
      marks.put({ ...device, lastSeq: count }, 'device');
      await new Promise((done) => {
        change.oncomplete = done;
      });
      database.close();
    },
    { place: `${teamId}.${eventId}`, entryId, personId, count, version: ACTION_VERSION },
  );
}

/** Notes the longest time for which the page could not have answered a tap. */
async function watchTasks(page: Page): Promise<void> {
  await page.evaluate(() => {
    const noted = window as unknown as { longest: number };
    noted.longest = 0;
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) noted.longest = Math.max(noted.longest, duration);
    }).observe({ type: 'longtask', buffered: true });
  });
}
