import type { BrowserContext, Page } from 'playwright-core';
import { onTestFinished } from 'vitest';
import { startChromium } from './start-chromium';
import { watchPage } from './watch-page';

export interface PageOptions {
  readonly width: number;
  readonly height: number;
  readonly baseUrl: string;
  readonly colorScheme?: 'light' | 'dark';
  /** Of who is signed in, as a browser sends it; left away or empty, nobody is. */
  readonly cookie?: string;
  /** Whether the page may install its service worker. Off unless asked for: it would fetch every page anew for each test. */
  readonly keepsPages?: boolean;
  /** Complaints that this test provokes on purpose; each must be seen, every other one fails the test. */
  readonly expected?: readonly RegExp[];
  /** Complaints that may come or not: a browser writes of a refused request only when it travelled alone. */
  readonly tolerated?: readonly RegExp[];
}

export interface OpenPage {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What the page has complained of so far, one readable line each. */
  readonly complaints: readonly string[];
}

/**
 * Opens a page with its own cookies and storage. Call it inside a test: when the test ends the page is closed, and the
 * test fails if the page wrote a console error, threw, or broke its content security policy.
 */
export async function openPage(options: PageOptions): Promise<OpenPage> {
  const browser = await startChromium();
  const context = await browser.newContext({
    viewport: { width: options.width, height: options.height },
    colorScheme: options.colorScheme ?? 'light',
    baseURL: options.baseUrl,
    serviceWorkers: options.keepsPages ? 'allow' : 'block',
  });
  await context.addCookies(cookiesOf(options));
  const complaints: string[] = [];
  const tolerated = options.tolerated ?? [];
  await watchPage(context, (line) => {
    if (!tolerated.some((pattern) => pattern.test(line))) complaints.push(line);
  });
  onTestFinished(async () => {
    await context.close();
    refuseComplaints(complaints, options.expected ?? []);
  });
  return { page: await context.newPage(), context, complaints };
}

function cookiesOf({ cookie = '', baseUrl }: PageOptions) {
  const pairs = cookie.split('; ').filter(Boolean);
  return pairs.map((pair) => {
    const [name = '', ...value] = pair.split('=');
    return { name, value: value.join('='), url: baseUrl };
  });
}

/** Throws a sentence for complaints that were not expected, and for expected ones that never came. */
export function refuseComplaints(complaints: readonly string[], expected: readonly RegExp[]): void {
  const unexpected = complaints.filter((line) => !expected.some((pattern) => pattern.test(line)));
  const missing = expected.filter((pattern) => !complaints.some((line) => pattern.test(line)));
  if (unexpected.length > 0) throw new Error(`The page complained:\n${unexpected.join('\n')}`);
  if (missing.length > 0)
    throw new Error(`The page was expected to complain of ${missing.join(', ')} and did not.`);
}
