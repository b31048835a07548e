import { formatClock } from '@halfshaft/itinerary';
import { cloneDatabase, type TestDatabase } from '@halfshaft/store/embedded';
import type { LogEntry, PushedAction } from '@halfshaft/worklog';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { type OpenPage, screenshot } from '../browser/chromium';
import { type ApiProcess, startApiProcess } from '../faults/start-process';
import { foundTeamAtEvent, ITINERARY, joinTeam, type TeamAtEvent } from '../support/event';
import { type House, openHouse } from '../support/house';
import { PAGES_FOLDER } from '../support/screens';
import { bayOf, crash, openPhone, raiseSnag, readKept, readLog, snagWords, visit } from './phone';

/** Of each phone: one claim of the same job, the others facts. */
const EACH = 15;
/** The official clock of the event is this much ahead of ours, and one phone that much ahead of all. */
const OFFSET_SECONDS = 75;
const FAST_MILLIS = 7 * 60_000;
const PATIENT = { timeout: 90_000 };

let database: TestDatabase;
/** Only to make accounts and to read the log: the phones speak to a process that can be killed. */
let house: House;
let api: ApiProcess;
beforeAll(async () => {
  database = await cloneDatabase(inject('adminUrl'));
  house = await openHouse({ database });
  api = await startApiProcess(database, PAGES_FOLDER);
});
afterAll(async () => {
  await api.stop();
  await house.close();
  await database.drop();
});

/** On the same database, at the address the phones know. */
async function startAgain(): Promise<void> {
  api = await startApiProcess(database, PAGES_FOLDER, Number(new URL(api.url).port));
}

/** The clock of a phone is wrong from here on, in each of its pages. */
async function setClockAhead(context: BrowserContext, millis: number): Promise<void> {
  await context.addInitScript((ahead) => {
    const right = Date.now;
    Date.now = () => right() + ahead;
  }, millis);
}

async function openCold({ context }: OpenPage, address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  await page.getByRole('button', { name: 'Raise a snag' }).waitFor();
  return page;
}

/** Takes the first job, then says one thing after the other; half way its tab is killed. Without any network. */
async function workAlone(
  phone: OpenPage,
  address: string,
  words: readonly string[],
): Promise<PushedAction[]> {
  const cold = await openCold(phone, address);
  await cold.getByText('No connection', { exact: false }).first().waitFor();
  await cold
    .getByRole('button', { name: /got it/ })
    .first()
    .click();
  await cold.getByText('1 entry kept on this phone', { exact: false }).waitFor();
  const half = Math.ceil(words.length / 2);
  for (const each of words.slice(0, half)) await raiseSnag(cold, each);
  await screenshot(cold, 'offline-bay');
  await crash(phone.context, cold);
  const after = await openCold(phone, address);
  for (const each of words.slice(0, half)) await after.getByText(each, { exact: false }).first().waitFor();
  for (const each of words.slice(half)) await raiseSnag(after, each);
  await after.getByText(`${EACH} entries kept on this phone`, { exact: false }).waitFor();
  return readKept(after);
}

/** Each entry as its phone made it, with the time that the phone's own clock read; the server's clock beside it. */
function expectAsMade(
  log: readonly LogEntry[],
  made: readonly PushedAction[],
  personId: string,
  backAt: number,
) {
  expect(log).toMatchObject(
    made.map(({ actionId, deviceId, deviceTime }) => ({
      ...{ actionId, deviceId, deviceTime, by: personId, enteredBy: personId, flags: [] },
    })),
  );
  for (const { serverTime } of log) {
    expect(serverTime).toBeGreaterThanOrEqual(backAt);
    expect(serverTime).toBeLessThanOrEqual(Date.now());
  }
}

/** The phone shows all of it, and has nothing left to send. */
async function expectSent(page: Page, words: readonly string[]): Promise<void> {
  for (const each of words) await page.getByText(each, { exact: false }).first().waitFor();
  await page.getByText('kept on this phone').waitFor({ state: 'detached' });
  expect(await readKept(page)).toEqual([]);
}

/** The event goes by the control's clock as before, and the log says what the wrong phone's clock read, on that one. */
async function expectClocks(page: Page, team: TeamAtEvent, made: PushedAction | undefined): Promise<void> {
  const { teamId, eventId, caller } = team;
  expect((await caller.event.get({ teamId, eventId })).clockOffsetSeconds).toBe(OFFSET_SECONDS);
  const read = Math.floor((made?.deviceTime ?? 0) / 1000) + OFFSET_SECONDS;
  await page.goto(`/log/?team=${teamId}&event=${eventId}`);
  const line = page.getByText(`the phone's clock said`, { exact: false });
  await line
    .filter({ hasText: formatClock(read, ITINERARY.timeZone) })
    .first()
    .waitFor();
}

it('keeps what two phones do without network and server, one with a wrong clock, and sends each once', async () => {
  const team = await foundTeamAtEvent(house);
  const { teamId, eventId, personId } = team;
  const ida = await joinTeam(house, team, 'Ida Fell');
  await team.caller.event.setClockOffset({ teamId, eventId, clockOffsetSeconds: OFFSET_SECONDS });
  const address = bayOf(team);
  const right = await openPhone(api, team.cookie, { keepsPages: true });
  const fast = await openPhone(api, ida.cookie, { keepsPages: true });
  await setClockAhead(fast.context, FAST_MILLIS);
  for (const { page } of [right, fast]) await visit(page, address);

  await api.kill();
  for (const { context, page } of [right, fast]) {
    await context.setOffline(true);
    await page.close();
  }
  const began = Date.now();
  const wordsOf = (phone: number) =>
    Array.from({ length: EACH - 1 }, (_, at) => `Rattle ${phone}-${at + 1} heard`);
  const madeRight = await workAlone(right, address, wordsOf(1));
  const madeFast = await workAlone(fast, address, wordsOf(2));
  const ended = Date.now();
  for (const [made, ahead] of [
    [madeRight, 0],
    [madeFast, FAST_MILLIS],
  ] as const) {
    const times = made.map(({ deviceTime }) => deviceTime);
    expect(Math.min(...times)).toBeGreaterThanOrEqual(began + ahead);
    expect(Math.max(...times)).toBeLessThanOrEqual(ended + ahead);
    expect(made).toHaveLength(EACH);
  }

  // Killed once more as soon as the log has what the first phone sent, which may not have heard of it by then.
  await startAgain();
  await right.context.setOffline(false);
  await expect
    .poll(async () => (await readLog(team)).length, { ...PATIENT, interval: 20 })
    .toBeGreaterThan(0);
  await api.kill();
  await startAgain();
  await fast.context.setOffline(false);
  await expect.poll(async () => (await readLog(team)).length, PATIENT).toBe(2 * EACH - 1);

  const log = await readLog(team);
  const ofPerson = (id: string) => log.filter(({ by }) => by === id);
  expectAsMade(ofPerson(personId), madeRight, personId, ended);
  // The job was taken: its second claim alone is not in the log, and its author is told in words.
  expectAsMade(ofPerson(ida.personId), madeFast.slice(1), ida.personId, ended);
  expect(snagWords(log).sort()).toEqual([...wordsOf(1), ...wordsOf(2)].sort());
  const [told, untold] = [fast, right].map(({ context }) => context.pages().at(-1));
  if (!told || !untold) throw new Error('A phone has no page.');
  await told.getByText('Not taken: Take', { exact: false }).waitFor();
  await told.getByText('Team Founder has it already.', { exact: false }).waitFor();
  await screenshot(told, 'refused-after-offline');
  for (const page of [told, untold]) {
    await expectSent(page, [...wordsOf(1), ...wordsOf(2)]);
    expect(await page.getByText('Not taken', { exact: false }).count()).toBe(page === told ? 1 : 0);
    await expectClocks(page, team, madeFast[1]);
  }
}, 300_000);
