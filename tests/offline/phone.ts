import type { LogEntry, PushedAction } from '@halfshaft/worklog';
import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { openPage, type PageOptions } from '../browser/chromium';
import type { TeamAtEvent } from '../support/event';
import type { House } from '../support/house';

/** What a browser says of requests that reach nobody or are refused; how many there are is chance. */
const TOLERATED = [/ERR_INTERNET_DISCONNECTED|ERR_CONNECTION_REFUSED|ERR_FAILED|Failed to load resource/];

/** A phone of its own, signed in. */
export function openPhone(
  house: Pick<House, 'url'>,
  cookie: string,
  options: Pick<PageOptions, 'keepsPages' | 'tolerated'> = {},
) {
  const size = { width: 360, height: 740 };
  return openPage({ ...size, baseUrl: house.url, cookie, tolerated: TOLERATED, ...options });
}

export function bayOf(team: TeamAtEvent): string {
  const query = new URLSearchParams({ team: team.teamId, event: team.eventId, car: team.entryId, at: 'A' });
  return `/bay/?${query}`;
}

/** The bay is on the screen, and on the phone with all that comes behind its list. */
export async function openBay(page: Page, team: TeamAtEvent): Promise<void> {
  await page.goto(bayOf(team));
  await page.getByRole('button', { name: 'Raise a snag' }).waitFor();
  // Where links lead to is fetched last.
  await page.waitForFunction(() =>
    performance.getEntriesByType('resource').some(({ name }) => name.includes('_rsc=')),
  );
}

/** Once with a network: the pages are installed, and the event is on the phone. */
export async function visit(page: Page, address: string): Promise<void> {
  await page.goto('/home/');
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.goto(address);
  await page.getByRole('button', { name: 'Raise a snag' }).waitFor();
  await untilKept(page);
}

/** The pages and the event are on the phone, so that they open without a network. */
export async function untilKept(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await expect.poll(() => page.evaluate(countKeptReplicas)).toBeGreaterThan(0);
}

/** Runs in the page. */
export function countKeptReplicas(): Promise<number> {
  return new Promise((done, fail) => {
    const asked = indexedDB.open('halfshaft');
    asked.onerror = () => fail(asked.error);
    asked.onsuccess = () => {
      const counted = asked.result.transaction('replicas').objectStore('replicas').count();
      counted.onsuccess = () => done(counted.result);
    };
  });
}

export async function raiseSnag(page: Page, words: string): Promise<void> {
  await page.getByRole('button', { name: 'Raise a snag' }).click();
  await page.getByLabel('What is wrong?').fill(words);
  await page.getByRole('button', { name: 'Raise the snag' }).click();
  await page.getByText(words, { exact: false }).first().waitFor();
}

/** The phone is in the hands of someone else's session from here on, as after signing in elsewhere in the browser. */
export async function takeOver(context: BrowserContext, house: House, cookie: string): Promise<void> {
  await context.clearCookies();
  const pairs = cookie.split('; ').filter(Boolean);
  await context.addCookies(
    pairs.map((pair) => {
      const [name = '', ...value] = pair.split('=');
      return { name, value: value.join('='), url: house.url };
    }),
  );
}

/** As when a phone's memory runs out: no farewell, nothing is written that was not written already. */
export async function crash(context: BrowserContext, page: Page): Promise<void> {
  const crashed = page.waitForEvent('crash');
  const session = await context.newCDPSession(page);
  void session.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
}

/** Nothing that is done reaches the server, while everything else does. */
export async function holdBack(page: Page): Promise<() => Promise<void>> {
  const address = '**/trpc/work.push**';
  await page.route(address, (route) => route.abort());
  return () => page.unroute(address);
}

export async function readLog(team: TeamAtEvent): Promise<LogEntry[]> {
  const all: LogEntry[] = [];
  for (;;) {
    const since = all.at(-1)?.seq ?? 0;
    const { entries } = await team.caller.work.pull({ teamId: team.teamId, eventId: team.eventId, since });
    all.push(...entries);
    if (entries.length === 0) return all;
  }
}

export function snagWords(entries: readonly LogEntry[]): string[] {
  return entries.flatMap(({ body }) => (body.kind === 'snagRaised' ? [body.words] : []));
}

/** How many actions the phone's own database holds. */
export function countKept(page: Page): Promise<number> {
  return askOutbox<number>(page, 'count');
}

/** The actions that the phone's own database holds, in the order in which they were done. */
export async function readKept(page: Page): Promise<PushedAction[]> {
  const kept = await askOutbox<{ action: PushedAction }[]>(page, 'getAll');
  const actions = kept.map(({ action }) => action);
  return actions.sort((one, other) => one.deviceSeq - other.deviceSeq);
}

/** Counted in the page itself, since ten thousand of them are a lot to hand over. */
function askOutbox<Answer>(page: Page, question: 'count' | 'getAll'): Promise<Answer> {
  return page.evaluate(
    (ask) =>
      new Promise<Answer>((done, fail) => {
        const asked = indexedDB.open('halfshaft');
        asked.onerror = () => fail(asked.error);
        asked.onsuccess = () => {
          const answered = asked.result.transaction('outbox').objectStore('outbox')[ask]();
          answered.onsuccess = () => {
            asked.result.close();
            done(answered.result as Answer);
          };
        };
      }),
    question,
  );
}
