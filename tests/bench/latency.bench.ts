import { availableParallelism, loadavg } from 'node:os';
import type { Page } from 'playwright-core';
import { closeChromium } from '../browser/start-chromium';
import { startApiProcess } from '../faults/start-process';
import { PAGES_FOLDER } from '../support/screens';
import { bayAddress, openPhone } from './bay-pages';
import { type Bench, openBench } from './open-bench';
import { openSubscribers } from './subscribers';

const CLAIMS = 1000;
/** With two phones that have a screen, 300. */
const SUBSCRIBERS = 298;
const CLAIMS_ALONE = 100;

async function openBay(bench: Bench, url: string): Promise<Page> {
  const page = await (await openPhone(bench, url)).newPage();
  await page.goto(bayAddress(bench));
  await page.getByRole('button', { name: "I've got it" }).first().waitFor();
  return page;
}

/** Runs in the page: presses the button of the job with this title, and tells when. */
function press([title, button]: readonly [string, string]): number {
  const job = [...document.querySelectorAll('li')].find(
    (li) => li.querySelector('h3')?.textContent === title,
  );
  const pressed = [...(job?.querySelectorAll('button') ?? [])].find((each) => each.textContent === button);
  if (!pressed) throw new Error(`There is no "${button}" at ${title}.`);
  pressed.click();
  return performance.timeOrigin + performance.now();
}

/** Runs in the page: when the job with this title offered this button. */
function offers([title, button]: readonly [string, string]): Promise<number> {
  const isThere = () =>
    [...document.querySelectorAll('li')]
      .find((li) => li.querySelector('h3')?.textContent === title)
      ?.textContent?.includes(button);
  return new Promise((done) => {
    const look = () => {
      if (!isThere()) return;
      watch.disconnect();
      done(performance.timeOrigin + performance.now());
    };
    const watch = new MutationObserver(look);
    watch.observe(document.body, { subtree: true, childList: true, characterData: true });
    look();
  });
}

/** Milliseconds from a tap on one phone to the change on the other, claim by claim; each is let go of again. */
async function measure(
  here: Page,
  there: Page,
  titles: readonly string[],
  claims: number,
): Promise<number[]> {
  const times: number[] = [];
  for (let at = 0; at < claims; at += 1) {
    const title = titles[at % titles.length] ?? '';
    for (const [button, then] of [
      ["I've got it", 'Let it go'],
      ['Let it go', "I've got it"],
    ] as const) {
      await here.evaluate(offers, [title, button] as const);
      const changed = there.evaluate(offers, [title, then] as const);
      const pressed = await here.evaluate(press, [title, button] as const);
      const millis = (await changed) - pressed;
      if (button === "I've got it") times.push(millis);
    }
  }
  return times;
}

function print(what: string, times: readonly number[]): void {
  const sorted = times.toSorted((one, other) => one - other);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]?.toFixed(0);
  console.log(`  ${what}: p50 ${at(0.5)} ms, p95 ${at(0.95)} ms, p99 ${at(0.99)} ms, most ${at(1)} ms`);
}

const bench = await openBench({ manyCards: false });
const apis = [
  await startApiProcess(bench.urls, PAGES_FOLDER),
  await startApiProcess(bench.urls, PAGES_FOLDER),
];
const urls = apis.map(({ url }) => url);
try {
  const [here, there] = [await openBay(bench, urls[0] ?? ''), await openBay(bench, urls[1] ?? '')];
  const titles = await here.getByRole('listitem').getByRole('heading', { level: 3 }).allTextContents();
  const jobs = titles.filter((title, at) => titles.indexOf(title) === at).slice(0, 5);
  console.log(
    `From a tap to the change on another phone, both in Chromium, each at its own API process; ${availableParallelism()} processors for everything, load ${loadavg()[0]?.toFixed(1)} at the start.`,
  );
  await measure(here, there, jobs, 20);
  print(`nobody else, ${CLAIMS_ALONE} claims`, await measure(here, there, jobs, CLAIMS_ALONE));
  const others = await openSubscribers(bench, urls, SUBSCRIBERS);
  print(
    `${SUBSCRIBERS} more that take in each change, ${CLAIMS} claims`,
    await measure(here, there, jobs, CLAIMS),
  );
  const { entries, pulls } = others.counts();
  console.log(
    `  They were brought ${entries} entries, and asked ${pulls} times for what was missing; load ${loadavg()[0]?.toFixed(1)} at the end.`,
  );
  others.close();
} finally {
  await closeChromium();
  for (const api of apis) await api.stop();
  await bench.close();
}
process.exit();
