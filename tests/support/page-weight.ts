import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { PAGES_FOLDER } from './screens';

/** The page for an address that is not there: the frame of all pages with a sentence in it. */
export const EMPTY_PAGE = '404.html';
export const BAY_PAGE = 'bay/index.html';
export const TAKE = "I've got it";

/** Gzipped bytes. */
export const MOST_OF_BAY = 230_000;
export const MOST_ABOVE_EMPTY = 90_000;

/** The scripts a page of the build names, without those that only old browsers run. */
export function scriptsOf(page: string): string[] {
  const html = readFileSync(join(PAGES_FOLDER, page), 'utf8');
  const tags = html.match(/<script[^>]*\ssrc="\/[^>]*>/g) ?? [];
  const modern = tags.filter((tag) => !/nomodule/i.test(tag));
  return [...new Set(modern.flatMap((tag) => /src="([^"?]+)/.exec(tag)?.[1] ?? []))];
}

export function zippedBytes(paths: readonly string[]): number {
  return paths.reduce((sum, path) => sum + gzipSync(readFileSync(join(PAGES_FOLDER, path))).length, 0);
}

/** Runs in the page before anything of it: notes when the first job can be taken, the moment it is there. */
export function watchFirstJob(words: string): void {
  const seen = { usable: null as number | null };
  Object.assign(window, { firstJob: seen });
  const observer = new MutationObserver(() => {
    const isThere = [...document.querySelectorAll('button')].some((each) => each.textContent === words);
    if (!isThere) return;
    seen.usable = performance.now();
    observer.disconnect();
  });
  observer.observe(document, { childList: true, subtree: true });
}

export interface AskedScripts {
  /** Milliseconds since the page was asked for. */
  usable: number;
  /** Asked for until the first job could be taken. */
  before: string[];
  after: string[];
}

/** After `watchFirstJob`: every script the page asked for, whether it runs it or only fetches it in advance. */
export async function askedScripts(page: Page): Promise<AskedScripts> {
  const { usable, asked } = await page.evaluate(() => ({
    usable: (window as unknown as { firstJob: { usable: number | null } }).firstJob.usable,
    asked: performance.getEntriesByType('resource').map(({ name, startTime }) => ({ name, startTime })),
  }));
  if (usable === null) throw new Error('No job could be taken.');
  const scripts = asked.flatMap(({ name, startTime }) => {
    const path = new URL(name).pathname;
    return path.endsWith('.js') ? [{ path, isBefore: startTime <= usable }] : [];
  });
  const paths = (isBefore: boolean) => [
    ...new Set(scripts.filter((each) => each.isBefore === isBefore).map(({ path }) => path)),
  ];
  return { usable, before: paths(true), after: paths(false) };
}
