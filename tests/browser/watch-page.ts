import type { BrowserContext } from 'playwright-core';

const VIOLATION_CHANNEL = 'halfshaftTestViolation';

/** Tells `complain` of every console error, uncaught error and policy violation of the context's pages. */
export async function watchPage(context: BrowserContext, complain: (line: string) => void): Promise<void> {
  context.on('console', (message) => {
    if (message.type() === 'error') complain(`console error: ${message.text()} (${message.location().url})`);
  });
  context.on('weberror', (error) => complain(`uncaught error: ${error.error().message}`));
  // The console tells of most violations, but not of those that a policy only reports.
  await context.exposeBinding(VIOLATION_CHANNEL, (_source, text: string) => complain(text));
  await context.addInitScript((channel) => {
    document.addEventListener('securitypolicyviolation', (event) => {
      const report: unknown = Reflect.get(window, channel);
      if (typeof report !== 'function') return;
      report(
        `policy violation: ${event.violatedDirective} blocks ${event.blockedURI} (${event.documentURI})`,
      );
    });
  }, VIOLATION_CHANNEL);
}
