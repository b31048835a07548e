import { ACTION_VERSION, type LogEntry } from '@halfshaft/worklog';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { foundTeamAtEvent, type TeamAtEvent } from '../support/event';
import type { House } from '../support/house';
import { countKept, holdBack, openBay, openPhone, raiseSnag, readLog } from './phone';

const THUMB = 'Said in the middle of it';

/**
 * A phone with so many waiting entries is opened, one more is made by hand, the network comes back, and so many of them
 * are sent. Prints how long it took.
 */
export async function sendLongOutbox(
  house: House,
  { waiting, answered }: { waiting: number; answered: number },
) {
  const team = await foundTeamAtEvent(house, 'Long');
  const { page } = await openPhone(house, team.cookie);
  await openBay(page, team);
  const letGo = await holdBack(page);
  await fillOutbox(page, team, waiting);
  const began = Date.now();
  await page.reload();
  await page.getByText(`${waiting} entries`, { exact: false }).first().waitFor();
  const opened = Date.now() - began;
  await watchTasks(page);
  await raiseSnag(page, THUMB);
  await page
    .getByText(`${waiting + 1} entries`, { exact: false })
    .first()
    .waitFor();
  const letGoAt = Date.now();
  await letGo();
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
  const left = waiting + 1 - answered;
  await expect.poll(() => countKept(page), { timeout: 300_000, interval: 250 }).toBeLessThanOrEqual(left);
  const seconds = (Date.now() - letGoAt) / 1000;
  const perSecond = (waiting + 1 - (await countKept(page))) / seconds;
  const longestTask = await page.evaluate(() => (window as unknown as { longest: number }).longest);
  console.info(
    `${waiting} waiting entries: counted ${opened} ms after loading; ${Math.round(perSecond)} a second sent and answered, for ${seconds.toFixed(1)} s; longest task of the page ${Math.round(longestTask)} ms`,
  );
  return { page, log: await readLog(team), longestTask };
}

/** In the order they were made: stages said to be driven and not driven in turn, and at the very end the one by hand. */
export function expectInOrder(log: readonly LogEntry[]): void {
  const stages = log.filter(({ body }) => body.kind !== 'snagRaised');
  expect(stages.map(({ body }) => body.kind === 'stageConfirmed' && body.driven)).toEqual(
    stages.map((_, at) => at % 2 === 1),
  );
  expect(stages).toEqual(log.slice(0, stages.length));
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
