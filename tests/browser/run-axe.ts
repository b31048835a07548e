import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';

// The short form: each page reads it anew, and that takes half the time of the package's own `source`.
const SOURCE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/**
 * Runs the accessibility check on the page as it stands; returns one readable line for each element at fault, none when
 * all is well. The check's source goes in through the debugger, which the page's content security policy does not bind.
 */
export async function runAxe(page: Page, rules?: readonly string[]): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(SOURCE);
  const options: axe.RunOptions = { resultTypes: ['violations'] };
  if (rules) options.runOnly = { type: 'rule', values: [...rules] };
  const results = await page.evaluate((chosen) => window.axe.run(document, chosen), options);
  return results.violations.flatMap((violation) =>
    violation.nodes.map((node) => {
      const place = node.target.flat().join(' ');
      return `${violation.impact ?? 'unrated'} ${violation.id}: ${violation.help} at ${place} in ${node.html}`;
    }),
  );
}

declare global {
  interface Window {
    axe: typeof axe;
  }
}
