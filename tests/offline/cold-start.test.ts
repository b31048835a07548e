import { cloneDatabase, type TestDatabase } from '@halfshaft/store/embedded';
import type { LogEntry } from '@halfshaft/worklog';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { screenshot } from '../browser/chromium';
import { foundTeamAtEvent, joinTeam, type TeamAtEvent } from '../support/event';
import { type House, openHouse } from '../support/house';
import { PAGES } from '../support/screens';
import { bayOf, countKeptReplicas, crash, openPhone, raiseSnag, snagWords, untilKept } from './phone';

/** What a browser says of requests that reach nobody; how many there are is chance. */
const tolerated = [/ERR_INTERNET_DISCONNECTED|ERR_CONNECTION_REFUSED|Failed to load resource/];
const EACH = 15;

let database: TestDatabase;
let house: House;
beforeAll(async () => {
  database = await cloneDatabase(inject('adminUrl'));
  house = await openHouse({ database, pages: PAGES });
});
afterAll(async () => {
  await house.close();
  await database.drop();
});

function openKeepingPhone(cookie: string) {
  return openPhone(house, cookie, { keepsPages: true, tolerated });
}

/** Once with a network: the pages are installed, and the event is on the phone. */
async function visit(page: Page, address: string) {
  await page.goto('/home/');
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.goto(address);
  await page.getByRole('button', { name: 'Snag' }).waitFor();
  await untilKept(page);
}

async function raiseSnags(page: Page, words: readonly string[]) {
  for (const each of words) await raiseSnag(page, each);
}

async function snagsInLog(team: TeamAtEvent): Promise<LogEntry[]> {
  const { entries } = await team.caller.work.pull({ teamId: team.teamId, eventId: team.eventId, since: 0 });
  return entries.filter((entry) => entry.body.kind === 'snagRaised');
}

it('opens without network and server, keeps what two phones do through a killed tab, and sends each once', async () => {
  const team = await foundTeamAtEvent(house);
  const ida = await joinTeam(house, team, 'Ida Fell');
  const address = bayOf(team);
  const phones = [await openKeepingPhone(team.cookie), await openKeepingPhone(ida.cookie)];
  for (const phone of phones) await visit(phone.page, address);

  const port = Number(new URL(house.url).port);
  await house.close();
  for (const { context, page } of phones) {
    await context.setOffline(true);
    await page.close();
  }
  const began = Date.now();

  const said: string[][] = [];
  for (const [place, { context }] of phones.entries()) {
    const words = Array.from({ length: EACH }, (_, index) => `Rattle ${place + 1}-${index + 1} heard`);
    said.push(words);
    const cold = await context.newPage();
    await cold.goto(address);
    await cold.getByRole('button', { name: 'Snag' }).waitFor();
    await cold.getByText('No connection', { exact: false }).first().waitFor();
    await raiseSnags(cold, words.slice(0, 8));
    if (place === 0) await screenshot(cold, 'offline-bay');
    await crash(context, cold);
    const after = await context.newPage();
    await after.goto(address);
    for (const each of words.slice(0, 8)) await after.getByText(each, { exact: false }).first().waitFor();
    await raiseSnags(after, words.slice(8));
    await after.getByText(`${EACH} entries kept on this phone`, { exact: false }).waitFor();
  }

  house = await openHouse({ database, pages: PAGES, port });
  const again = { ...team, caller: house.callAs(team.userId) };
  for (const { context } of phones) await context.setOffline(false);
  await expect.poll(async () => (await snagsInLog(again)).length, { timeout: 60_000 }).toBe(2 * EACH);

  const entries = await snagsInLog(again);
  expect(snagWords(entries).sort()).toEqual(said.flat().sort());
  for (const [place, personId] of [team.personId, ida.personId].entries()) {
    const own = entries.filter((entry) => entry.by === personId);
    // In the order they were made, at the times the phone read, from one device.
    expect(snagWords(own)).toEqual(said[place]);
    expect(new Set(own.map((entry) => entry.deviceId)).size).toBe(1);
    const times = own.map((entry) => entry.deviceTime);
    expect(times).toEqual([...times].sort((one, other) => one - other));
    expect(Math.min(...times)).toBeGreaterThanOrEqual(began);
    expect(own.every((entry) => entry.serverTime !== null && entry.serverTime >= entry.deviceTime)).toBe(
      true,
    );
  }
  for (const { context } of phones) {
    const page = context.pages().at(-1);
    for (const each of said.flat()) await page?.getByText(each, { exact: false }).first().waitFor();
  }
});

it('shows home and its events without a network, once they were seen with one', async () => {
  const team = await foundTeamAtEvent(house, 'Copperbeck');
  const { context, page } = await openKeepingPhone(team.cookie);
  await page.goto('/home/');
  await page.getByText('Copperbeck event').first().waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  // The answers are written a moment after they came.
  await page.waitForTimeout(2500);
  await context.setOffline(true);
  await page.close();
  const cold = await context.newPage();
  await cold.goto('/home/');
  await cold.getByText('Copperbeck event').first().waitFor();
  await screenshot(cold, 'offline-home');
});

it('forgets all of it when a person signs out of a shared phone', async () => {
  const team = await foundTeamAtEvent(house, 'Birch');
  const { page } = await openKeepingPhone(team.cookie);
  await visit(page, bayOf(team));
  await page.goto('/home/');
  await page.getByRole('button', { name: 'Sign out' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Sign out' }).click();
  await page.waitForURL(`${house.url}/`);
  expect(await page.evaluate(countKeptReplicas)).toBe(0);
});
