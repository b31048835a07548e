import { readFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { BrowserContext, Page } from 'playwright-core';
import { closeChromium } from '../browser/start-chromium';
import { startApiProcess } from '../faults/start-process';
import { PAGES_FOLDER } from '../support/screens';
import { bayAddress, openPhone } from './bay-pages';
import { medianOf, ROUNDS } from './median-of';
import { openBench } from './open-bench';

/** "Slow 4G" of Lighthouse 12, docs/throttling.md: 1.6 Mbit/s down, 750 kbit/s up, 150 ms there and back. */
const SLOW_4G = {
  latency: 150,
  downloadThroughput: 1_600_000 / 8,
  uploadThroughput: 750_000 / 8,
  offline: false,
};
const SLOWER_PROCESSOR = 4;
/** The page for an address that is not there: the frame of all pages with a sentence in it. */
const EMPTY = '404.html';

/** The scripts a page of the build asks for, without those that only old browsers run. */
function scriptsOf(page: string): string[] {
  const html = readFileSync(join(PAGES_FOLDER, page), 'utf8');
  const tags = html.match(/<script[^>]*\ssrc="\/_next\/[^>]*>/g) ?? [];
  return tags.filter((tag) => !/nomodule/i.test(tag)).flatMap((tag) => /src="([^"?]+)/.exec(tag)?.[1] ?? []);
}

function zippedBytes(paths: readonly string[]): number {
  return paths.reduce((sum, path) => sum + gzipSync(readFileSync(join(PAGES_FOLDER, path))).length, 0);
}

interface Visit {
  /** Anything at all was painted. */
  painted: number;
  /** The first job can be taken. */
  usable: number;
  shift: number;
  scripts: string[];
}

/** Opens the bay on a slow phone with a slow network. */
async function visit(context: BrowserContext, address: string): Promise<Visit> {
  const page = await context.newPage();
  const scripts: string[] = [];
  page.on('response', (answer) => {
    const { pathname } = new URL(answer.url());
    if (pathname.startsWith('/_next/') && pathname.endsWith('.js')) scripts.push(pathname);
  });
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', SLOW_4G);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER_PROCESSOR });
  await page.addInitScript(watchPaint);
  await page.goto(address, { waitUntil: 'commit' });
  await page.getByRole('button', { name: "I've got it" }).first().waitFor({ timeout: 120_000 });
  const usable = await page.evaluate(() => performance.now());
  await page.waitForTimeout(1000);
  const seen = await page.evaluate(
    () => (window as unknown as { seen: { painted: number; shift: number } }).seen,
  );
  await page.close();
  return { ...seen, usable, scripts };
}

/** Runs in the page before anything of it. */
function watchPaint(): void {
  const seen = { painted: 0, shift: 0 };
  Object.assign(window, { seen });
  new PerformanceObserver((list) => {
    for (const each of list.getEntriesByName('first-contentful-paint')) seen.painted = each.startTime;
  }).observe({ type: 'paint', buffered: true });
  new PerformanceObserver((list) => {
    for (const each of list.getEntries()) seen.shift += (each as PerformanceEntry & { value: number }).value;
  }).observe({ type: 'layout-shift', buffered: true });
}

function print(what: string, visits: readonly Visit[]): void {
  const median = (of: (visit: Visit) => number) => medianOf(visits.map(of));
  console.log(
    `  ${what}: first content ${median(({ painted }) => painted).toFixed(0)} ms, a job can be taken ${median(({ usable }) => usable).toFixed(0)} ms, layout shift at most ${Math.max(...visits.map(({ shift }) => shift)).toFixed(3)}`,
  );
}

async function keepsPages(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
}

const kilobytes = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;
const [bay, empty] = [scriptsOf('bay/index.html'), scriptsOf(EMPTY)];
console.log('Scripts of the bay, gzipped:');
console.log(
  `  ${kilobytes(zippedBytes(bay))} in all; an empty page of the same build has ${kilobytes(zippedBytes(empty))}`,
);
console.log(`  above it: ${kilobytes(zippedBytes(bay) - zippedBytes(empty))}`);

const bench = await openBench({ manyCards: false });
const api = await startApiProcess(bench.urls, PAGES_FOLDER);
try {
  const address = bayAddress(bench);
  const [cold, warm]: [Visit[], Visit[]] = [[], []];
  for (let round = 0; round < ROUNDS; round += 1) {
    const context = await openPhone(bench, api.url);
    cold.push(await visit(context, address));
    const installing = await context.newPage();
    await installing.goto(address);
    await keepsPages(installing);
    await installing.close();
    warm.push(await visit(context, address));
    await context.close();
  }
  const asked = [...new Set(cold.flatMap(({ scripts }) => scripts))];
  console.log(`  asked for on the way: ${kilobytes(zippedBytes(asked))} in ${asked.length} files`);
  console.log(
    `The bay on a processor ${SLOWER_PROCESSOR} times slower than this one (load ${loadavg()[0]?.toFixed(1)}), network as "Slow 4G"; median of ${ROUNDS}:`,
  );
  print('cold, nothing on the phone', cold);
  print('warm, pages and event kept on the phone', warm);
} finally {
  await closeChromium();
  await api.stop();
  await bench.close();
}
process.exit();
