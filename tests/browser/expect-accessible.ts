import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { runAxe } from './run-axe';
import { screenshot } from './screenshot';

/**
 * Takes a picture under this name (not with `TEST_PICTURES=no`, as `npm test` has it: nobody looks at those there); fails
 * on anything the accessibility check finds (by these rules of it, all when left away), or when the page is wider than its
 * screen.
 */
export async function expectAccessible(page: Page, name: string, rules?: readonly string[]): Promise<void> {
  // A page that is just being opened has its title a moment after its text.
  await page.waitForFunction(() => document.title !== '');
  if (process.env.TEST_PICTURES !== 'no') await screenshot(page, name);
  expect(await runAxe(page, rules), name).toEqual([]);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(overflow, `${name}: wider than the screen by`).toBeLessThanOrEqual(0);
}
