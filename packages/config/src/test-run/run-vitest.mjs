import { join } from 'node:path';
import { runCommand } from './run-command.mjs';
import { tellFailure } from './tell-failure.mjs';
import { countTests, reportPath } from './test-reports.mjs';

const AT_ONCE = 2;

/**
 * Runs Vitest once for each `{ folder, name?, options? }`, two at a time; runs of one folder need a name each. A skipped
 * test counts as a failure of the whole. What failed is told once more in the message.
 */
export async function runVitest(root, runs) {
  const waiting = [...runs];
  const failures = [];
  const work = async () => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      const result = await runOne(root, next);
      if (!result.ok) failures.push({ name: next.name ?? next.folder, ...result });
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  if (failures.length > 0) return { ok: false, message: failures.map(failureInWords).join('\n\n') };
  const { skipped } = countTests(root);
  return skipped === 0
    ? { ok: true }
    : { ok: false, message: `${skipped} tests are skipped: make them run, or delete them.` };
}

function failureInWords({ name, message, output }) {
  return `Tests failed in ${name} (${message}):\n${tellFailure(output)}`;
}

async function runOne(root, { folder, name = folder, options = [] }) {
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
  const report = `--outputFile.json=${reportPath(root, name)}`;
  const reporters = ['--reporter=default', '--reporter=json', report];
  const args = [vitest, 'run', '--allowOnly=false', ...reporters, ...options];
  const result = await runCommand(process.execPath, args, {
    cwd: join(root, folder),
    buffered: true,
    env: { TEST_PICTURES: 'no' },
  });
  process.stdout.write(`\n${name}\n${result.output}`);
  return result;
}
