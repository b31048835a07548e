import { clearReports, countTests } from './test-reports.mjs';

/**
 * Runs the steps in order and stops at the first that fails; prints each with its seconds, then all of them again, and
 * last `N passed, N failed` over all tests. A failed step without a failed test (lint, say) counts as one failed.
 * Returns the exit code.
 */
export async function runSteps(root, steps, { print, now }) {
  clearReports(root);
  const lines = [];
  let failure;
  for (const step of steps) {
    print(`\n== ${step.name}`);
    const started = now();
    failure = await failureOf(step);
    lines.push(`${failure === undefined ? 'ok    ' : 'FAILED'} ${seconds(now() - started)}  ${step.name}`);
    print(lines[lines.length - 1]);
    if (failure !== undefined) break;
  }
  const { passed, failed } = countTests(root);
  print(`\n== summary\n${lines.join('\n')}`);
  if (failure !== undefined) print(failure);
  print(`${passed} passed, ${Math.max(failed, failure === undefined ? 0 : 1)} failed`);
  return failure === undefined ? 0 : 1;
}

async function failureOf(step) {
  try {
    const result = await step.run();
    return result.ok ? undefined : (result.message ?? `${step.name} failed.`);
  } catch (error) {
    return `${step.name} broke off: ${error instanceof Error ? error.stack : error}`;
  }
}

const seconds = (milliseconds) => `${(milliseconds / 1000).toFixed(1).padStart(6)} s`;
