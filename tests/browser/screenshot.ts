import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';

/** Takes a picture of the whole page into tests/screenshots/<name>.png and returns its path. */
export async function screenshot(page: Page, name: string): Promise<string> {
  const path = fileURLToPath(new URL(`../screenshots/${name}.png`, import.meta.url));
  await page.screenshot({ path, fullPage: true });
  return path;
}
