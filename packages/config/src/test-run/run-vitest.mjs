import { join } from 'node:path';
import { runCommand } from './run-command.mjs';
import { countTests, reportPath } from './test-reports.mjs';

const AT_ONCE = 2;

/** Runs the tests of the named workspaces, two at a time; a skipped test counts as a failure of the whole. */
export async function runVitest(root, workspaces) {
  const waiting = [...workspaces];
  const failures = [];
  const work = async () => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      const result = await runOne(root, next, workspaces.length > 1);
      if (!result.ok) failures.push(next);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  if (failures.length > 0) return { ok: false, message: `Tests failed in ${failures.join(', ')}.` };
  const { skipped } = countTests(root);
  return skipped === 0
    ? { ok: true }
    : { ok: false, message: `${skipped} tests are skipped: make them run, or delete them.` };
}

async function runOne(root, workspace, buffered) {
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
  const report = `--outputFile.json=${reportPath(root, workspace)}`;
  const args = [vitest, 'run', '--allowOnly=false', '--reporter=default', '--reporter=json', report];
  const result = await runCommand(process.execPath, args, { cwd: join(root, workspace), buffered });
  if (buffered) process.stdout.write(`\n${workspace}\n${result.output}`);
  return result;
}
