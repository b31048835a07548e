import axe from 'axe-core';
import type { Page } from 'playwright-core';

/**
 * Runs the accessibility check on the page as it stands; returns one readable line for each element at fault, none when
 * all is well. The check's source goes in through the debugger, which the page's content security policy does not bind.
 */
export async function runAxe(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  const results = await page.evaluate(() => window.axe.run(document, { resultTypes: ['violations'] }));
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
