import { loadavg } from 'node:os';
import type { BrowserContext, Page } from 'playwright-core';
import { closeChromium } from '../browser/start-chromium';
import { startApiProcess } from '../faults/start-process';
import {
  askedScripts,
  BAY_PAGE,
  EMPTY_PAGE,
  MOST_ABOVE_EMPTY,
  MOST_OF_BAY,
  scriptsOf,
  TAKE,
  watchFirstJob,
  zippedBytes,
} from '../support/page-weight';
import { PAGES_FOLDER } from '../support/screens';
import { bayAddress, openPhone } from './bay-pages';
import { medianOf, ROUNDS } from './median-of';
import { openBench } from './open-bench';
import { weighParts } from './weigh-parts';

/** "Slow 4G" of Lighthouse 12, docs/throttling.md: 1.6 Mbit/s down, 750 kbit/s up, 150 ms there and back. */
const SLOW_4G = {
  latency: 150,
  downloadThroughput: 1_600_000 / 8,
  uploadThroughput: 750_000 / 8,
  offline: false,
};
const SLOWER_PROCESSOR = 4;
/** Long enough for what is fetched behind the first screen to be asked for. */
const AFTERWARDS_MILLIS = 5000;
interface Visit {
  /** Anything at all was painted. */
  painted: number;
  /** The first job can be taken. */
  usable: number;
  shift: number;
  before: string[];
  after: string[];
}

/** Opens the bay on a slow phone with a slow network. */
async function visit(context: BrowserContext, address: string): Promise<Visit> {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', SLOW_4G);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER_PROCESSOR });
  await page.addInitScript(watchPaint);
  await page.addInitScript(watchFirstJob, TAKE);
  await page.goto(address, { waitUntil: 'commit' });
  await page.getByRole('button', { name: TAKE }).first().waitFor({ timeout: 120_000 });
  await page.waitForTimeout(AFTERWARDS_MILLIS);
  const seen = await page.evaluate(
    () => (window as unknown as { seen: { painted: number; shift: number } }).seen,
  );
  const asked = await askedScripts(page);
  await page.close();
  return { ...seen, ...asked };
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
function printParts(what: string, paths: readonly string[]): void {
  const { framework, libraries, ours } = weighParts(paths);
  console.log(
    `  ${what}: ${kilobytes(zippedBytes(paths))} in ${paths.length} files (framework ${kilobytes(framework)}, libraries ${kilobytes(libraries)}, ours ${kilobytes(ours)})`,
  );
}

const [bay, empty] = [scriptsOf(BAY_PAGE), scriptsOf(EMPTY_PAGE)];
const above = zippedBytes(bay) - zippedBytes(empty);
console.log(`Scripts the page of the bay names, gzipped; at most ${kilobytes(MOST_OF_BAY)}:`);
printParts('bay', bay);
printParts('an empty page of the same build', empty);
console.log(`  above it: ${kilobytes(above)}; at most ${kilobytes(MOST_ABOVE_EMPTY)}`);

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
  const every = (of: (visit: Visit) => string[]) => [...new Set(cold.flatMap(of))];
  console.log('Scripts a browser asks for in a cold opening, gzipped:');
  const before = every((visit) => visit.before);
  printParts('until a job can be taken', before);
  const after = every((visit) => visit.after).filter((path) => !before.includes(path));
  printParts('behind it (dialogs, checks, pages that links lead to)', after);
  console.log(`  apart from the page, the service worker: ${kilobytes(zippedBytes(['/service-worker.js']))}`);
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
