import type { BrowserContext } from 'playwright-core';
import { startChromium } from '../browser/start-chromium';
import type { Bench } from './open-bench';

/** A phone of the team's founder, with nothing on it yet. */
export async function openPhone(bench: Bench, url: string): Promise<BrowserContext> {
  const browser = await startChromium();
  const context = await browser.newContext({ viewport: { width: 360, height: 740 }, baseURL: url });
  // What starts these files names functions by a helper that pages do not have.
  await context.addInitScript('globalThis.__name = (given) => given;');
  const pairs = bench.cookie.split('; ').map((pair) => pair.split('='));
  await context.addCookies(pairs.map(([name = '', ...rest]) => ({ name, value: rest.join('='), url })));
  return context;
}

export function bayAddress({ teamId, eventId, entryId }: Bench): string {
  return `/bay/?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: 'A' })}`;
}
